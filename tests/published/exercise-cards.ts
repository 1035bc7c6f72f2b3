/** The exercise cards of the model's specification, section 15: plausible angles chosen there, not measured techniques. */
import type { Movement } from '../../src/mechanics/movement.ts';
import table from './exercise-cards.json' with { type: 'json' };

export interface CardFixture {
  readonly name: string;
  readonly loadKg: number;
  readonly movement: Movement;
}

export const cards = table as unknown as readonly CardFixture[];

export function cardNamed(name: string): CardFixture {
  const card = cards.find((candidate) => candidate.name === name);
  if (!card) throw new Error(`no card named ${name}`);
  return card;
}
