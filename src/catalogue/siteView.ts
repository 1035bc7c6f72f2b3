/** Where the site is published, and what changed in the library when: by the dates of its files, never by the clock. */
import { FOLDERS } from '../content/kind.ts';
import type { Library } from '../content/library.ts';
import type { IsoDate } from '../units/date.ts';
import type { FeedEntry, SiteView } from './view.ts';
import type { Messages } from '../messages/messages.ts';

export function siteView(say: Messages, library: Library): SiteView | null {
  const { site, name } = library.clinic;
  if (site === undefined) return null;
  const all = entriesOf(say, library);
  const changedOn = new Map<string, IsoDate>();
  for (const { page, on } of all) if (on > (changedOn.get(page) ?? '')) changedOn.set(page, on);
  return {
    address: site.url + site.pathPrefix,
    pathPrefix: site.pathPrefix,
    changedOn,
    feed: all.sort(newestFirst).slice(0, site.feedEntries),
    feedTitle: say.feedTitle(name),
  };
}

interface Dated {
  readonly id: string;
  readonly title: string;
  readonly changed: readonly { readonly on: IsoDate; readonly what: string }[];
  readonly reviewedOn?: IsoDate | undefined;
}

function entriesOf(say: Messages, { exercises, advice, protocols, pages }: Library): FeedEntry[] {
  return [
    ...[...exercises.values()].flatMap((one) => entries(say, FOLDERS.exercise, one)),
    ...[...advice.values()].flatMap((one) => entries(say, FOLDERS.advice, one)),
    ...[...protocols.values()].flatMap((one) => entries(say, FOLDERS.protocol, one)),
    ...pages.flatMap((one) => entries(say, FOLDERS.page, one)),
  ];
}

function entries(say: Messages, folder: string, { id, title, changed, reviewedOn }: Dated): FeedEntry[] {
  const page = `${folder}/${id}`;
  const own = changed.map(({ on, what }) => ({ page, title, on, what }));
  return reviewedOn === undefined ? own : [...own, { page, title, on: reviewedOn, what: say.FEED_REVIEWED }];
}

function newestFirst(a: FeedEntry, b: FeedEntry): number {
  if (a.on !== b.on) return a.on > b.on ? -1 : 1;
  if (a.page !== b.page) return a.page < b.page ? -1 : 1;
  return a.what < b.what ? -1 : 1;
}
