/** The steps to come: a sentence, when to go on, and the numbers, set back behind the present ones. */
import type { LeafletLabels } from '../../programme/phrases/labels.ts';
import type { Prescription, StepTable } from '../../programme/programme.ts';
import { html, nothing, type Html } from '../html.ts';
import { amountsHtml, type Columns } from './cells.ts';
import { listHtml } from './prose.ts';
import { hangHtml } from './section.ts';

/** All steps but the present one, whose numbers stand with the exercises. */
export function stepsHtml(steps: readonly StepTable[], labels: LeafletLabels): Html {
  const coming = steps.flatMap((step, at) =>
    step.present ? [] : [stepHtml(step, steps.slice(0, at).reverse(), labels)],
  );
  return hangHtml('steps', labels.steps, html`${coming}`, 'steps');
}

/** One coming step; `before` are the steps it follows, the last first, so that what is new can stand out. */
function stepHtml(step: StepTable, before: readonly StepTable[], labels: LeafletLabels): Html {
  return html`<div class="step">
    <h3>${step.heading}</h3>
    <p class="strong">${step.change}</p>
    ${goOnHtml(step, labels)}
    <table class="preview">
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
        ${step.prescriptions.map((prescription) =>
          rowHtml(prescription, lastOf(prescription, before), step.columns),
        )}
      </tbody>
    </table>
  </div> `;
}

function goOnHtml({ goOnWhen }: StepTable, labels: LeafletLabels): Html {
  if (goOnWhen.length === 0) return nothing;
  const conditions = goOnWhen.map((condition) => html`${condition}`);
  return html`<p>${labels.goOnWhen}</p>
    ${listHtml(conditions, false)}`;
}

/** The exercise as it was last: a step shows only the exercises it changes. */
function lastOf({ card, slot }: Prescription, before: readonly StepTable[]): Prescription | undefined {
  return before
    .flatMap(({ prescriptions }) => prescriptions)
    .find((one) => one.card === card && one.slot === slot);
}

function rowHtml(prescription: Prescription, before: Prescription | undefined, columns: Columns): Html {
  return html`<tr>
    <th scope="row"><bdi>${prescription.title}</bdi></th>
    <td>${amountsHtml(prescription, before, columns)}</td>
  </tr> `;
}
