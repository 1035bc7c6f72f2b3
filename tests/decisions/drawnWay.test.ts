/** Whether the body rises, sinks or does neither in cards that are only drawn: what their pace is told by. */
import { expect, it } from 'vitest';
import { pictureFor } from '../../src/decisions/candidates/scene.ts';
import { modelOf } from '../../src/decisions/person/model.ts';
import { shipped } from '../programme/shipped.ts';

const model = modelOf({ massKg: 70, heightM: 1.75 });

it.each([
  ['offset-squat', 'down'],
  ['offset-bridge', 'up'],
  ['standing-leg-swings', 'out'],
  ['side-step', 'out'],
])('%s: %s', (id, way) => {
  const card = shipped.exercises.get(id)!;
  expect(card.movement).toBeNull();
  expect(pictureFor(card, null, null, model, 'right')?.way).toBe(way);
});
