/** The steps to come: a sentence, when to go on, and the numbers, set back behind the present ones. */
import type { LeafletLabels } from '../../../messages/en/labels.ts';
import type { Prescription, StepTable } from '../../../programme/programme.ts';
import { html, nothing, type Html } from '../html.ts';
import { amountsHtml, type Columns } from './cells.ts';
import { linked, NO_PLACES, type Places } from './linked.ts';
import { listHtml } from './prose.ts';
import { hangHtml } from './section.ts';

/** All steps but the present one, whose numbers stand with the exercises. */
export function stepsHtml(
  steps: readonly StepTable[],
  labels: LeafletLabels,
  places: Places = NO_PLACES,
): Html {
  const coming = steps.filter(({ present }) => !present).map((step) => stepHtml(step, labels, places));
  return hangHtml('steps', labels.steps, html`${coming}`, 'steps');
}

function stepHtml(step: StepTable, labels: LeafletLabels, places: Places): Html {
  return html`<div class="step">
    <h3>${step.heading}</h3>
    <p class="strong">${linked(step.change, places)}</p>
    ${goOnHtml(step, labels)}
    <div class="preview">
      ${step.prescriptions.length === 1 ? oneHtml(step, labels, places) : allHtml(step, labels, places)}
    </div>
  </div> `;
}

/** A row for each exercise. */
function allHtml(step: StepTable, labels: LeafletLabels, places: Places): Html {
  return html`<table>
    <caption>
      ${step.caption}
    </caption>
    <thead>
      <tr>
        <th scope="col">${labels.exercise}</th>
        <th scope="col">${labels.amount}</th>
      </tr>
    </thead>
    <tbody>
      ${step.prescriptions.map(
        (prescription) =>
          html`<tr>
            <th scope="row"><bdi>${linked(prescription.title, places)}</bdi></th>
            <td>${amountHtml(prescription, step.columns, labels)}</td>
          </tr> `,
      )}
    </tbody>
  </table> `;
}

/** A single exercise is compared with nothing. */
function oneHtml(
  { caption, prescriptions, columns }: StepTable,
  labels: LeafletLabels,
  places: Places,
): Html {
  return html`<h4>${caption}</h4>
    ${prescriptions.map(
      (prescription) =>
        html`<p><bdi>${linked(prescription.title, places)}</bdi></p>
          ${amountHtml(prescription, columns, labels)}`,
    )}`;
}

function goOnHtml({ goOnWhen }: StepTable, labels: LeafletLabels): Html {
  if (goOnWhen.length === 0) return nothing;
  const conditions = goOnWhen.map((condition) => html`${condition}`);
  return html`<p>${labels.goOnWhen}</p>
    ${listHtml(conditions, false)}`;
}

/** What is new at once, what stays folded under it. */
function amountHtml({ cells, news }: Prescription, columns: Columns, { asBefore }: LeafletLabels): Html {
  const kept = cells.filter(({ cell }) => !news.includes(cell));
  const isNothingKept = kept.every(({ text }) => text === '');
  if (isNothingKept) return amountsHtml(cells, columns);
  return html`${amountsHtml(
      cells.filter(({ cell }) => news.includes(cell)),
      columns,
    )}
    <details>
      <summary>${asBefore}</summary>
      ${amountsHtml(kept, columns)}
    </details>`;
}
