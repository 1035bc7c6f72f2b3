/** Pages of nothing but words and tables: how the numbers are made, the authors' reference, the glossary. */
import type { LibraryView, PlainPage } from '../../../catalogue/view.ts';
import { LIBRARY_LABELS } from '../../../messages/en/catalogue/libraryLabels.ts';
import type { Section } from '../../../messages/shapes.ts';
import type { PageAssets } from '../assets.ts';
import { html } from '../html.ts';
import { sectionHtml } from '../parts/section.ts';
import { publicHtml } from './frame.ts';

export function numbersPageHtml(view: LibraryView, assets: PageAssets): string {
  return plainHtml(view.numbers, 'numbers', view, assets);
}

export function authorsPageHtml(view: LibraryView, assets: PageAssets): string {
  return plainHtml(view.authors, 'authors', view, assets);
}

export function glossaryPageHtml(view: LibraryView, assets: PageAssets): string {
  const { title, lead } = LIBRARY_LABELS.glossary;
  return publicHtml(
    {
      title,
      up: '',
      place: 'glossary',
      lead: html`<p class="lead">${lead}</p>`,
      main: html`<dl class="facts glossary">
        ${view.glossary.map(
          ({ term, meaning }) =>
            html`<dt>${term}</dt>
              <dd>${meaning}</dd> `,
        )}
      </dl>`,
    },
    view,
    assets,
  );
}

function plainHtml(
  { title, lead, sections }: PlainPage,
  place: 'numbers' | 'authors',
  view: LibraryView,
  assets: PageAssets,
): string {
  return publicHtml(
    {
      title,
      up: '',
      place,
      lead: html`<p class="lead">${lead}</p>`,
      main: html`${sections.map((section) => sectionHtml(section, hasTable(section) ? 'broad' : ''))}`,
    },
    view,
    assets,
  );
}

function hasTable({ parts }: Section): boolean {
  return parts.some(({ kind }) => kind === 'table');
}
