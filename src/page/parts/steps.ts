/** The steps to come: a sentence, when to go on, and the numbers, set back behind the present ones. */
import type { LeafletLabels } from '../../programme/phrases/labels.ts';
import type { Prescription, StepTable } from '../../programme/programme.ts';
import { html, type Html } from '../html.ts';
import { amountsHtml } from './cells.ts';
import { hangHtml } from './section.ts';
import { listHtml } from './prose.ts';

/** All steps but the present one, whose numbers stand with the exercises. */
export function stepsHtml(steps: readonly StepTable[], labels: LeafletLabels): Html {
  const coming = steps.filter((step) => !step.present);
  return hangHtml('steps', labels.steps, html`${coming.map((step) => stepHtml(step, labels))}`, 'steps');
}

function stepHtml(step: StepTable, labels: LeafletLabels): Html {
  const when = listHtml(
    step.goOnWhen.map((condition) => html`${condition}`),
    false,
  );
  return html`<div class="step">
    <h3>${step.heading}</h3>
    <p class="strong">${step.change}</p>
    ${
      step.goOnWhen.length === 0
        ? ''
        : html`<p>${labels.goOnWhen}</p>
            ${when}`
    }
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
        ${step.prescriptions.map((prescription) => rowHtml(prescription, step))}
      </tbody>
    </table>
  </div> `;
}

function rowHtml(prescription: Prescription, { columns }: StepTable): Html {
  return html`<tr>
    <th scope="row"><bdi>${prescription.title}</bdi></th>
    <td>${amountsHtml(prescription, columns)}</td>
  </tr> `;
}
