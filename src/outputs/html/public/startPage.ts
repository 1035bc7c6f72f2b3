/** The first page of the public folder: what is here, and ways into it. */
import type { LibraryView } from '../../../catalogue/view.ts';
import { LIBRARY_LABELS } from '../../../messages/en/catalogue/libraryLabels.ts';
import type { PageAssets } from '../assets.ts';
import { html, nothing, type Html } from '../html.ts';
import { hangHtml } from '../parts/section.ts';
import { cardFigure, figurePath } from './cardFigure.ts';
import { ADDRESSES, indexWith, publicHtml } from './frame.ts';
import { linkHtml, pagePath } from './links.ts';

const LABELS = LIBRARY_LABELS.start;

export function startPageHtml(view: LibraryView, assets: PageAssets): string {
  const { lead, counts, ways } = view.front;
  const { ways: names } = LIBRARY_LABELS;
  return publicHtml(
    {
      title: LABELS.title,
      up: '',
      place: 'start',
      lead: html`${lead.map((sentence) => html`<p>${sentence}</p> `)}`,
      main: html`${rowHtml(view, assets)}
        <ul class="doors">
          <li><a href="${ADDRESSES.exercises}">${counts.exercises}</a></li>
          <li><a href="${ADDRESSES.protocols}">${counts.protocols}</a></li>
          <li><a href="${ADDRESSES.advice}">${counts.advice}</a></li>
        </ul>
        ${ways.map(({ heading, entries }, at) => hangHtml(`way-${at + 1}`, heading, waysHtml(entries)))}
        ${hangHtml(
          'protocols',
          names.protocols,
          html`<ul>
            ${view.protocols.map((one) => html`<li>${linkHtml('', 'protocols', one)}</li> `)}
          </ul>`,
        )}
        ${hangHtml(
          'also',
          LABELS.also,
          html`<ul>
            <li><a href="${ADDRESSES.numbers}">${names.numbers}</a></li>
            <li><a href="${ADDRESSES.glossary}">${names.glossary}</a></li>
            <li><a href="${ADDRESSES.authors}">${names.authors}</a></li>
            <li><a href="style/index.html">${LABELS.style}</a></li>
          </ul>`,
        )}`,
    },
    view,
    assets,
  );
}

function waysHtml(entries: LibraryView['front']['ways'][number]['entries']): Html {
  return html`<ul class="ways-in">
    ${entries.map(
      ({ label, filter, value, count }) =>
        html`<li>
          <a href="${indexWith(filter, value)}">${label}</a> <span class="quiet">${count}</span>
        </li> `,
    )}
  </ul>`;
}

/** Each figure leads to its card. */
function rowHtml({ front: { row, rowCaption }, cards }: LibraryView, { picture }: PageAssets): Html {
  const figures = row.flatMap(({ card, squeeze }) => {
    const figure = cards.filter(({ id }) => id === card.id).map((one) => cardFigure(one, picture))[0] ?? null;
    if (figure === null) return [];
    return [
      html`<li>
        <a href="${pagePath('exercises', card.id)}"
          ><img src="${figurePath(card.id)}" alt="" width="${figure.widthPx}" height="${figure.heightPx}" />
          <bdi>${card.title}</bdi></a
        >
        <span class="quiet">${squeeze}</span>
      </li> `,
    ];
  });
  if (figures.length === 0) return nothing;
  return html`<figure class="row">
    <ol>
      ${figures}
    </ol>
    <figcaption class="quiet">${rowCaption}</figcaption>
  </figure>`;
}
