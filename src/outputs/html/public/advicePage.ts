/** The page of one advice card, and the list of them all. */
import type { AdviceView, LibraryView } from '../../../catalogue/view.ts';
import { LIBRARY_LABELS } from '../../../messages/en/catalogue/libraryLabels.ts';
import type { PageAssets } from '../assets.ts';
import { html, nothing, type Html } from '../html.ts';
import { proseHtml } from '../parts/prose.ts';
import { hangHtml } from '../parts/section.ts';
import { publicHtml } from './frame.ts';
import { linkHtml } from './links.ts';
import { sourcesHtml } from './sources.ts';

const LABELS = LIBRARY_LABELS.advice;

export function adviceListHtml(view: LibraryView, assets: PageAssets): string {
  return publicHtml(
    {
      title: LABELS.title,
      up: '',
      place: 'advice',
      lead: html`<p class="lead">${LABELS.lead}</p>`,
      main: html`<ul class="titles">
        ${view.advice.map(
          (one) =>
            html`<li>
              <h2>${linkHtml('', 'advice', one)}</h2>
              <p>${one.shown}</p>
              ${originHtml(one)}
            </li> `,
        )}
      </ul>`,
    },
    view,
    assets,
  );
}

export function advicePageHtml(advice: AdviceView, view: LibraryView, assets: PageAssets): string {
  const { title, shown, body, sources } = advice;
  return publicHtml(
    {
      title,
      up: '../',
      place: null,
      lead: html`<p class="lead">${shown}</p>
        ${originHtml(advice)}`,
      main: html`${body.map(({ heading, blocks }, at) =>
        hangHtml(`part-${at + 1}`, heading, html`${proseHtml([{ heading: '', blocks }], 3, '../')}`),
      )}
      ${hangHtml('sources', LABELS.sources, sourcesHtml(sources))}`,
    },
    view,
    assets,
  );
}

function originHtml({ origin }: AdviceView): Html {
  return origin === '' ? nothing : html`<p class="origin">${origin}</p>`;
}
