/** A page of the clinic's own: its text, and the frame round whatever stands in it. */
import type { LibraryView, PageView } from '../../../catalogue/view.ts';
import type { PageAssets } from '../assets.ts';
import { html, nothing, trusted } from '../html.ts';
import { proseHtml } from '../parts/prose.ts';
import { hangHtml } from '../parts/section.ts';
import { publicHtml } from './frame.ts';

const UP = '../';

/** The text under its headings. */
export function ownText({ body }: PageView): string {
  const parts = body.map(({ heading, blocks }, at) => {
    const prose = html`${proseHtml([{ heading: '', blocks }], 3, UP)}`;
    return heading === '' ? prose : hangHtml(`part-${at + 1}`, heading, prose);
  });
  return html`${parts}`.markup;
}

/** `content`: the text, with the clinic's own layout round it where there is one. */
export function ownFrameHtml(page: PageView, content: string, view: LibraryView, assets: PageAssets): string {
  const { id, title, lead } = page;
  return publicHtml(
    {
      title,
      up: UP,
      place: null,
      own: id,
      lead: lead === '' ? nothing : html`<p class="lead">${lead}</p>`,
      main: trusted(content),
    },
    view,
    assets,
  );
}

/** The page as it is without a layout of the clinic's own. */
export function ownPageHtml(page: PageView, view: LibraryView, assets: PageAssets): string {
  return ownFrameHtml(page, ownText(page), view, assets);
}

/** What a layout may show, escaped already. */
export function layoutData(page: PageView, { pages, clinic }: LibraryView) {
  const text = (one: string) => html`${one}`.markup;
  return {
    title: text(page.title),
    lead: text(page.lead),
    up: UP,
    clinic: { name: text(clinic.name), contact: clinic.contact.map(text) },
    menu: pages.map(({ id, menu }) => ({
      name: text(menu),
      url: `${UP}pages/${id}.html`,
      isHere: id === page.id,
    })),
  };
}
