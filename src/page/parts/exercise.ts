/** One exercise: its dose in big type beside its figures, how far, its numbers, its words. */
import type { LeafletLabels } from '../../programme/phrases/labels.ts';
import type { CellName, Exercise } from '../../programme/programme.ts';
import { html, nothing, type Html } from '../html.ts';
import { numbersHtml } from './cells.ts';
import { figureHtml } from './figure.ts';
import { headingHtml, listHtml, proseHtml } from './prose.ts';

/** The `place`-th exercise of the session, counted from 1; the place is its address in the page. */
export function exerciseHtml(
  exercise: Exercise,
  place: number,
  columns: Readonly<Record<CellName, string>>,
  labels: LeafletLabels,
): Html {
  const id = exerciseId(place);
  return html`<article class="exercise hang" id="${id}" aria-labelledby="${id}-heading">
    <div class="dose-side">
      <h3 id="${id}-heading"><bdi>${exercise.title}</bdi></h3>
      <p class="dose">${doseHtml(exercise.dose)}</p>
      <p class="dose-words">${exercise.doseWords}</p>
      <p class="side">${exercise.side}</p>
    </div>
    <div class="text">
      ${exercise.figures === null ? nothing : figureHtml(exercise.figures)}${howFarHtml(exercise, labels)}
      <div class="halves">
        <div class="words">${proseHtml(exercise.body, 4)}${cautionsHtml(exercise, labels)}</div>
        ${numbersHtml(exercise, columns, labels.dose)}
      </div>
    </div>
  </article> `;
}

export function exerciseId(place: number): string {
  return `exercise-${place}`;
}

/** The dose with its figures large and a word after them small: size only, not a letter changed. */
export function doseHtml(dose: string): Html {
  const [, figures = dose, unit = ''] = /^(.*\d)(\D+)$/.exec(dose) ?? [];
  return unit === '' ? html`${figures}` : html`${figures}<span class="unit">${unit}</span>`;
}

function howFarHtml({ howFar }: Exercise, labels: LeafletLabels): Html {
  if (howFar.length === 0) return nothing;
  const lines = howFar.map((line) => html`${line}`);
  return html`<div class="how-far">${headingHtml(labels.howFar, 4)}${listHtml(lines, false)}</div> `;
}

function cautionsHtml({ cautions }: Exercise, labels: LeafletLabels): Html {
  if (cautions.length === 0) return nothing;
  const lines = cautions.map((caution) => html`${caution}`);
  return html`${headingHtml(labels.watchFor, 4)}${listHtml(lines, false)}`;
}
