/** The page of one exercise card. */
import { squeezeChart } from '../../../drawing/charts/squeezeChart.ts';
import type { CardView, CurveView, EstimateView, LibraryView } from '../../../catalogue/view.ts';
import { LIBRARY_LABELS } from '../../../messages/en/catalogue/libraryLabels.ts';
import type { PageAssets } from '../assets.ts';
import { html, nothing, type Html } from '../html.ts';
import { drawingHtml } from '../parts/drawing.ts';
import { figureHtml } from '../parts/figure.ts';
import { listHtml, proseHtml } from '../parts/prose.ts';
import { hangHtml } from '../parts/section.ts';
import { tableHtml } from '../parts/table.ts';
import { rulerHtml } from '../record/charts.ts';
import { publicHtml } from './frame.ts';
import { linkHtml, linksHtml } from './links.ts';
import { photosHtml } from './photos.ts';
import { sourcesHtml } from './sources.ts';

const LABELS = LIBRARY_LABELS.card;
const UP = '../';

// The scale of the record's charts.
const EMS_PER_MM = 0.3;
const CURVE_MM = 80;

export function cardPageHtml(card: CardView, view: LibraryView, assets: PageAssets): string {
  const { title, summary, origin, photos, cautions, rulers, evidence, reviewed } = card;
  return publicHtml(
    {
      title,
      up: UP,
      place: null,
      lead: html`<p class="lead">${summary}</p>
        ${origin === '' ? nothing : html`<p class="origin">${origin}</p>`}`,
      main: html`<div class="plate">
          ${card.figures === null ? nothing : figureHtml(card.figures, title)}
          <section aria-labelledby="glance-heading">
            <h2 id="glance-heading" class="unseen">${LABELS.glance}</h2>
            ${factsHtml(card)}
          </section>
        </div>
        ${hangHtml('how', LABELS.howTo, html`${proseHtml(card.body, 3, UP)}`)}
        ${hangHtml(
          'watch',
          LABELS.watchFor,
          listHtml(
            cautions.map((one) => html`${one}`),
            false,
          ),
        )}
        ${hangHtml('photos', LABELS.photos, photosHtml(photos))}
        ${hangHtml('bend', LABELS.bend, html`${rulers.map(({ caption, ruler }) => html`${caption === '' ? nothing : html`<p class="chart-caption">${caption}</p> `}${rulerHtml(ruler)}`)}`)}
        ${hangHtml('estimates', LABELS.estimates, estimateHtml(card.estimate))}
        ${hangHtml('neighbours', LABELS.neighbours, neighboursHtml(card))}
        ${hangHtml('uses', LABELS.uses, usesHtml(card))}
        ${hangHtml(
          'evidence',
          LABELS.evidence,
          html`${sourcesHtml(evidence)}
            <p class="quiet">${reviewed}</p>`,
        )}`,
    },
    view,
    assets,
  );
}

function factsHtml({ facts }: CardView): Html {
  return html`<dl class="facts">
    ${facts.map(
      ({ label, text }) =>
        html`<dt>${label}</dt>
          <dd>${text}</dd> `,
    )}
  </dl> `;
}

function estimateHtml({ sentences, curve, tables }: EstimateView): Html {
  return html`${sentences.map((sentence) => html`<p>${sentence}</p> `)}
  ${curve === null ? nothing : curveHtml(curve)} ${tables.map((one) => tableHtml(one))}`;
}

function curveHtml(curve: CurveView): Html {
  return html`<div class="chart">
    ${drawingHtml(squeezeChart(curve, CURVE_MM), curve.alt, CURVE_MM * EMS_PER_MM)}
  </div> `;
}

function neighboursHtml({ neighbours }: CardView): Html {
  if (neighbours.length === 0) return nothing;
  return html`<dl class="facts">
    ${neighbours.map(
      ({ heading, cards }) =>
        html`<dt>${heading}</dt>
          <dd>${linksHtml(UP, 'exercises', cards)}</dd> `,
    )}
  </dl> `;
}

/** One place alone compares with nothing: its parts stand under one another. */
function useHtml({ protocol, stage, slot }: CardView['uses'][number]): Html {
  const [protocolWord, stageWord, slotWord] = LABELS.usesColumns;
  return html`<dl class="facts">
    <dt>${protocolWord}</dt>
    <dd>${linkHtml(UP, 'protocols', protocol)}</dd>
    <dt>${stageWord}</dt>
    <dd>${stage}</dd>
    <dt>${slotWord}</dt>
    <dd>${slot}</dd>
  </dl> `;
}

function usesHtml({ uses }: CardView): Html {
  if (uses.length === 0) return html`<p class="quiet">${LABELS.noUses}</p>`;
  const [protocol, stage, slot] = LABELS.usesColumns;
  const [only] = uses;
  if (uses.length === 1 && only !== undefined) return useHtml(only);
  return html`<table class="uses">
    <caption class="unseen">
      ${LABELS.uses}
    </caption>
    <thead>
      <tr>
        <th scope="col">${protocol}</th>
        <th scope="col">${stage}</th>
        <th scope="col">${slot}</th>
      </tr>
    </thead>
    <tbody>
      ${uses.map(
        (use) =>
          html`<tr>
            <th scope="row">${linkHtml(UP, 'protocols', use.protocol)}</th>
            <td>${use.stage}</td>
            <td>${use.slot}</td>
          </tr> `,
      )}
    </tbody>
  </table> `;
}
