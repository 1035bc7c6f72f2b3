/** What other programs read of a published site: its map (sitemaps.org 0.9) and its feed (Atom, RFC 4287). */
import type { FeedEntry, LibraryView, SiteView } from '../../../catalogue/view.ts';
import { html, trusted } from '../html.ts';
import { FEED_FILE, hasFeed, SITEMAP_FILE } from './frame.ts';

/** None where nobody said where the site is published. `paths`: those of the pages, below the public folder. */
export function siteFiles(
  view: LibraryView,
  paths: readonly string[],
): readonly (readonly [path: string, text: string])[] {
  const { site } = view;
  if (site === null) return [];
  return [
    [SITEMAP_FILE, sitemapXml(site, paths)],
    ...(hasFeed(view) ? [[FEED_FILE, feedXml(site, view)] as const] : []),
  ];
}

function sitemapXml({ address, changedOn }: SiteView, paths: readonly string[]): string {
  const entries = [...paths].sort().map((path) => {
    const on = changedOn.get(path.replace(/\.html$/, ''));
    return html`<url
      ><loc>${address + path.replace(/(^|\/)index\.html$/, '$1')}</loc
      >${on === undefined ? trusted('') : html`<lastmod>${on}</lastmod>`}</url
    > `;
  });
  return html`${XML}<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9"> ${entries}</urlset> `.markup;
}

const XML = trusted('<?xml version="1.0" encoding="utf-8"?>\n');

// A day has no hour in our files; Atom asks for one (RFC 4287 3.3).
function moment({ on }: FeedEntry): string {
  return `${on}T00:00:00Z`;
}

function feedXml({ address, feed, feedTitle }: SiteView, { clinic }: LibraryView): string {
  const [newest] = feed;
  const own = address + FEED_FILE;
  const entries = feed.map(
    (entry) =>
      html`<entry>
        <id>${entryId(address, entry, feed)}</id>
        <title>${entry.title}</title>
        <link href="${address}${entry.page}.html" />
        <updated>${moment(entry)}</updated>
        <summary>${entry.what}</summary>
      </entry> `,
  );
  return html`${XML}<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en">
      <id>${own}</id>
      <title>${feedTitle}</title>
      <link rel="self" type="application/atom+xml" href="${own}" />
      <link href="${address}" />
      <updated>${newest === undefined ? '' : moment(newest)}</updated>
      <author><name>${clinic.name}</name></author>
      ${entries}</feed
    > `.markup;
}

/** The page, the day, and which of the changes of that day it is: for ever the same as long as the file says the same. */
function entryId(address: string, entry: FeedEntry, feed: readonly FeedEntry[]): string {
  const ofDay = feed.filter(({ page, on }) => page === entry.page && on === entry.on);
  const number = ofDay.indexOf(entry);
  return `${address}${entry.page}.html#${entry.on}${number === 0 ? '' : `-${number + 1}`}`;
}
