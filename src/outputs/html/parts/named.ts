/** Exercises the leaflet names besides the present ones, each with its own address. */
import type { LeafletLabels } from '../../../messages/en/labels.ts';
import type { NamedExercise, Programme } from '../../../programme/programme.ts';
import { html, nothing, type Html } from '../html.ts';
import { cautionsHtml, exerciseId } from './exercise.ts';
import { lastFigureHtml } from './figure.ts';
import type { Places } from './linked.ts';
import { proseHtml } from './prose.ts';
import { hangHtml } from './section.ts';

/** All of them under one heading; none when every name is that of a present exercise. */
export function namedHtml({ heading, exercises }: Programme['named'], labels: LeafletLabels): Html {
  const content = html`${exercises.map((one) => oneHtml(one, labels))}`;
  return hangHtml('also-named', heading, content, 'named');
}

/** Where each exercise that has a name on this leaflet stands. */
export function placesOf({ exercises, named }: Programme): Places {
  return new Map([
    ...named.exercises.map(({ title, card }): [string, string] => [title, namedId(card)]),
    ...exercises.map(({ title }, at): [string, string] => [title, exerciseId(at + 1)]),
  ]);
}

function namedId(card: string): string {
  return `named-${card}`;
}

function oneHtml(
  { card, title, where, side, figures, body, cautions }: NamedExercise,
  labels: LeafletLabels,
): Html {
  const id = namedId(card);
  return html`<article class="one" id="${id}" aria-labelledby="${id}-heading">
    <h3 id="${id}-heading"><bdi>${title}</bdi></h3>
    <p class="quiet">${where}</p>
    <p class="side">${side}</p>
    ${figures === null ? nothing : lastFigureHtml(figures, title)}
    <div class="words">${proseHtml(body, 4)}${cautionsHtml(cautions, labels)}</div>
  </article> `;
}
