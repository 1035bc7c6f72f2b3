/** One exercise: its dose in big type beside its figures, how far, its numbers, its words. */
import type { LeafletLabels } from '../../../messages/en/labels.ts';
import type { Exercise } from '../../../programme/programme.ts';
import { html, nothing, type Html } from '../html.ts';
import { cellsNamed, numbersHtml, woven, type Columns, type Woven } from './cells.ts';
import { figureHtml } from './figure.ts';
import { headingHtml, listHtml, proseHtml } from './prose.ts';

/** The `place`-th exercise of the session, counted from 1; the place is its address in the page. */
export function exerciseHtml(
  exercise: Exercise,
  place: number,
  columns: Columns,
  labels: LeafletLabels,
): Html {
  const id = exerciseId(place);
  const dose = woven(exercise.doseWords, cellsNamed(exercise, 'sets', 'repetitions', 'holdSeconds'));
  const howFar = exercise.howFar.slice(0, 1).map((line) => woven(line, cellsNamed(exercise, 'howFar')));
  const told = [dose, ...howFar].flatMap(({ cells }) => cells);
  return html`<article
    class="exercise hang"
    id="${id}"
    data-exercise="${exercise.card}"
    aria-labelledby="${id}-heading"
  >
    <div class="dose-side">
      <h3 id="${id}-heading"><bdi>${exercise.title}</bdi></h3>
      <p class="dose">${doseHtml(exercise.dose)}</p>
      <p>${dose.text}</p>
      <p class="side">${exercise.side}</p>
      ${betweenHtml(exercise)}
    </div>
    <div class="text">
      ${exercise.figures === null ? nothing : figureHtml(exercise.figures)}
      ${howFarHtml(howFar, exercise, labels)}
      <div class="halves">
        <div class="words">${proseHtml(exercise.body, 4)}${cautionsHtml(exercise.cautions, labels)}</div>
        ${numbersHtml(exercise, told, columns, labels.dose)}
      </div>
    </div>
  </article> `;
}

/** The days of what is no part of the next session. */
export function betweenHtml({ between }: Exercise): Html {
  return between === null
    ? nothing
    : html`<p class="between"><span class="label">${between.label}</span> ${between.text}</p> `;
}

export function exerciseId(place: number): string {
  return `exercise-${place}`;
}

/** The dose with its figures large and a word after them small: size only, not a letter changed. */
export function doseHtml(dose: string): Html {
  const [, figures = dose, unit = ''] = /^(.*\d)(\D+)$/.exec(dose) ?? [];
  return unit === '' ? html`${figures}` : html`${figures}<span class="unit">${unit}</span>`;
}

/** The most useful landmark large, the others under it. */
function howFarHtml(first: readonly Woven[], { howFar }: Exercise, labels: LeafletLabels): Html {
  if (howFar.length === 0) return nothing;
  const lines = [...first.map(({ text }) => text), ...howFar.slice(1).map((line) => html`${line}`)];
  return html`<div class="how-far">${headingHtml(labels.howFar, 4)}${listHtml(lines, false)}</div> `;
}

export function cautionsHtml(cautions: Exercise['cautions'], labels: LeafletLabels): Html {
  if (cautions.length === 0) return nothing;
  const lines = cautions.map((caution) => html`${caution}`);
  return html`${headingHtml(labels.watchFor, 4)}${listHtml(lines, false)}`;
}
