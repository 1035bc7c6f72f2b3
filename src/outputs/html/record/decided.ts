/** Each exercise of the record: how far and what decided it, the squeeze in words, the numbers folded away. */
import type { RecordLabels } from '../../../messages/en/labels.ts';
import type { Prescription, Programme, ProgrammeRecord } from '../../../programme/programme.ts';
import type { ModelEstimate } from '../../../decisions/candidates/estimate.ts';
import { html, nothing, type Html } from '../html.ts';
import { listHtml } from '../parts/prose.ts';
import { tableHtml } from '../parts/table.ts';
import { reasonsHtml } from './reasons.ts';
import { rulerHtml } from './charts.ts';

type Decided = ProgrammeRecord['exercises'][number];

export function decidedHtml({ alias, record, steps }: Programme, labels: RecordLabels): Html {
  const present = steps.find((step) => step.present);
  if (present === undefined) throw new TypeError(`${alias}: no step is the present one`);
  return html`${record.exercises.map((decided, at) => {
    const prescription = prescriptionOf(decided, at, present.prescriptions);
    const id = `decided-${at + 1}`;
    return html`<article class="decided" aria-labelledby="${id}">
      <div>
        <h3 id="${id}"><bdi>${decided.title}</bdi></h3>
        <p>${squeezeText(decided.estimate, labels)}</p>
      </div>
      <div class="text">
        ${decided.ruler === null ? nothing : rulerHtml(decided.ruler)}
        <p>${labels.decidedBy} ${labels.decided[decided.decidedBy]}. ${decided.because}</p>
        ${remarksHtml(decided.remarks)}${estimateHtml(decided.estimate, labels)}
        <details>
          <summary>${labels.cells}</summary>
          ${reasonsHtml(prescription.cells, present.columns, decided.title, labels)}
        </details>
      </div>
    </article> `;
  })}`;
}

/** The prescription at the same place, for a card may stand in two slots. */
function prescriptionOf({ card }: Decided, at: number, prescriptions: readonly Prescription[]): Prescription {
  const found = prescriptions[at];
  if (found?.card === card) return found;
  throw new TypeError(
    `the record's exercise ${at + 1} is ${card}, the step's is ${found?.card ?? 'missing'}`,
  );
}

function squeezeText(estimate: ModelEstimate | null, labels: RecordLabels): string {
  return estimate === null ? labels.noEstimate : labels.squeeze[estimate.squeeze];
}

function estimateHtml(estimate: ModelEstimate | null, labels: RecordLabels): Html {
  if (estimate === null) return nothing;
  const { heading, ...names } = labels.estimate;
  const keys = Object.keys(names) as (keyof typeof names)[];
  const rows = keys.map((key) => [names[key], fixed(estimate[key], DECIMALS[key])]);
  return html`<details>
    <summary>${heading}</summary>
    <p class="quiet">${labels.estimateNote}</p>
    ${tableHtml({ caption: heading, columns: [labels.cell, labels.value], rows })}
  </details> `;
}

// As many as the model is worth (mechanics, section 12): shown, never reckoned with.
const DECIMALS: Readonly<Record<Exclude<keyof RecordLabels['estimate'], 'heading'>, number>> = {
  hipFlexionDeg: 0,
  trunkLeanDeg: 0,
  tensionBw: 2,
  compressionBw: 2,
  compressionVerticalOnlyBw: 2,
  hipMomentNm: 0,
  kneeMomentNm: 0,
  demand: 2,
  tensionTimeBwS: 1,
  compressionTimeBwS: 1,
};

/** Adding 0 keeps a rounded -0 from showing its sign. */
function fixed(value: number, decimals: number): string {
  return (Number(value.toFixed(decimals)) + 0).toFixed(decimals);
}

function remarksHtml(remarks: readonly string[]): Html {
  if (remarks.length === 0) return nothing;
  return listHtml(
    remarks.map((remark) => html`${remark}`),
    false,
  );
}
