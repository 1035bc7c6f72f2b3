/** One exercise: its dose in big type beside its figures, how far, its numbers, its words. */
import type { LeafletLabels } from '../../../messages/en/labels.ts';
import type { Exercise } from '../../../programme/programme.ts';
import type { LeafletPhoto } from '../assets.ts';
import { html, nothing, type Html } from '../html.ts';
import { numbersHtml, said, type Columns, type Said } from './cells.ts';
import { figureHtml } from './figure.ts';
import { leafletPhotosHtml } from './photos.ts';
import { headingHtml, listHtml, proseHtml } from './prose.ts';

/** The `place`-th exercise of the session, counted from 1; the place is its address in the page. */
export function exerciseHtml(
  exercise: Exercise,
  place: number,
  columns: Columns,
  labels: LeafletLabels,
  photos: readonly LeafletPhoto[] = [],
): Html {
  const id = exerciseId(place);
  const dose = said(exercise.doseParts, exercise);
  const howFar = exercise.howFar.slice(0, 1).map((text) => said([{ text, cell: 'howFar' }], exercise));
  const told = [dose, ...howFar].flatMap(({ cells }) => cells);
  return html`<article
    class="exercise hang"
    id="${id}"
    data-exercise="${exercise.card}"
    aria-labelledby="${id}-heading"
  >
    <div class="dose-side">
      <h3 id="${id}-heading"><bdi>${exercise.title}</bdi></h3>
      <p class="dose">${doseHtml(exercise)}</p>
      <p>${dose.text}</p>
      <p class="side">${exercise.side}</p>
      ${betweenHtml(exercise)}
    </div>
    <div class="text">
      ${exercise.figures === null ? nothing : figureHtml(exercise.figures, exercise.title)}
      ${howFarHtml(howFar, exercise, labels)}
      <div class="halves">
        <div class="words">${proseHtml(exercise.body, 4)}${cautionsHtml(exercise.cautions, labels)}</div>
        ${numbersHtml(exercise, told, columns, labels.dose)}${leafletPhotosHtml(photos, labels)}
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

/** The dose with its figures large and what follows them small: size only. */
export function doseHtml({ doseSign: { figures, sign, unit } }: Exercise): Html {
  const small = `${sign}${unit}`;
  return small === '' ? html`${figures}` : html`${figures}<span class="unit">${small}</span>`;
}

/** The most useful landmark large, the others under it. */
function howFarHtml(first: readonly Said[], { howFar }: Exercise, labels: LeafletLabels): Html {
  if (howFar.length === 0) return nothing;
  const lines = [...first.map(({ text }) => text), ...howFar.slice(1).map((line) => html`${line}`)];
  return html`<div class="how-far">${headingHtml(labels.howFar, 4)}${listHtml(lines, false)}</div> `;
}

export function cautionsHtml(cautions: Exercise['cautions'], labels: LeafletLabels): Html {
  if (cautions.length === 0) return nothing;
  const lines = cautions.map((caution) => html`${caution}`);
  return html`${headingHtml(labels.watchFor, 4)}${listHtml(lines, false)}`;
}
