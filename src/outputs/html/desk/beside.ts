/** What the clinician sees beside the consult: the leaflet as it will be, and why it is so. Pieces of page and record. */
import { labelsOf } from '../../../messages/en/labels.ts';
import { weekdayText } from '../../../messages/en/plain.ts';
import type { Programme } from '../../../programme/programme.ts';
import type { LeafletPhotos } from '../assets.ts';
import { html, nothing, type Html } from '../html.ts';
import { leafletMain } from '../leaflet.ts';
import { tableHtml } from '../parts/table.ts';
import { ladderHtml, rulerHtml } from '../record/charts.ts';

export interface Beside {
  readonly week: string;
  readonly leaflet: string;
  readonly why: string;
  readonly ladder: string;
  readonly passedOver: string;
}

/** `photos`: the clinic's own, where it shows them on leaflets. */
export function besideOf(programme: Programme, photos: LeafletPhotos = new Map()): Beside {
  return {
    week: weekHtml(programme).markup,
    leaflet: leafletMain(programme, photos).markup,
    why: whyHtml(programme).markup,
    ladder: ladderHtml(programme.record.ladder).markup,
    passedOver: passedOverHtml(programme).markup,
  };
}

/** Seven columns, in the order of the record. */
function weekHtml({ record: { week } }: Programme): Html {
  return html`<ol class="weekstrip">
      ${week.days.map(
        ({ weekday, entries }) =>
          html`<li>
            <b>${weekdayText(weekday)}</b>
            ${entries.map((entry) => html`<span>${entry}</span> `)}
          </li> `,
      )}
    </ol>
    ${listOf(week.gaveUp)}`;
}

/** How far each exercise goes on the ruler of the guarded angle, and what decided it. */
function whyHtml({ record, language }: Programme): Html {
  const labels = labelsOf(language).record;
  return html`${record.exercises.map(
    ({ title, ruler, decidedBy, because, remarks, estimate }) =>
      html`<div class="whyone">
        <h4><bdi>${title}</bdi></h4>
        <p>${estimate === null ? labels.noEstimate : labels.squeeze[estimate.squeeze]}</p>
        ${ruler === null ? nothing : rulerHtml(ruler)}
        <p>${labels.decidedBy} ${labels.decided[decidedBy]}. ${because}</p>
        ${listOf(remarks)}
      </div> `,
  )}${listOf(record.remarks)}`;
}

function passedOverHtml({ record, language }: Programme): Html {
  const labels = labelsOf(language).record;
  const columns = [labels.card, labels.slot, labels.stageColumn, labels.because];
  const rows = record.passedOver.map(({ title, slot, stage, because }) => [title, slot, `${stage}`, because]);
  return rows.length === 0 ? nothing : tableHtml({ caption: labels.passedOver, columns, rows });
}

function listOf(sentences: readonly string[]): Html {
  if (sentences.length === 0) return nothing;
  return html`<ul>
    ${sentences.map((sentence) => html`<li>${sentence}</li> `)}
  </ul> `;
}
