/** The word beside an estimate, at its borders: up to the first stage's cap low, up to the second's middle, above it high. */
import { describe, expect, it } from 'vitest';
import type { Protocol } from '../../src/content/library.ts';
import { marginOf } from '../../src/mechanics/cap.ts';
import { estimateOf } from '../../src/decisions/candidates/estimate.ts';
import { wordOf } from '../../src/catalogue/scale.ts';
import { isPosed, modelOf } from '../../src/decisions/person/model.ts';
import { boundsOf, personOf } from '../../src/decisions/person/person.ts';
import { person } from './person.ts';
import { shipped } from './shipped.ts';

const NO_EFFECTS = { noRunning: [], lightHolds: [], shortHolds: [], under18: false } as const;
const hamstring = shipped.protocols.get('proximal-hamstring')!;

/** The protocol with other squeeze caps in its first two stages. */
const withCaps = (first: number, second: number): Protocol => ({
  ...hamstring,
  stages: hamstring.stages.map((stage, i) => ({
    ...stage,
    caps: { ...stage.caps, compressionBw: [first, second][i] ?? stage.caps.compressionBw },
  })),
});

describe.each([
  ['hip-hinge', 'one support'],
  ['short-split-squat', 'two supports, so times the factor for them'],
])('the squeeze of %s (%s)', (id) => {
  const card = shipped.exercises.get(id)!;
  if (!isPosed(card)) throw new Error(`${id} has no pose`);
  const at = {
    exercise: id,
    card: id,
    rangeDeg: null,
    loadKg: 0,
    daysPerWeek: 3,
    dose: {
      kind: 'slow' as const,
      sets: 3,
      repetitions: 8,
      holdSeconds: null,
      tempo: card.tempo,
      restSeconds: 60,
      timesPerDay: 1,
      reserve: 3,
    },
  };
  const who = (protocol: Protocol) => personOf(person(), shipped, protocol, NO_EFFECTS, modelOf);
  const word = (first: number, second: number) => {
    const one = who(withCaps(first, second));
    return estimateOf(card, at, one, boundsOf(one, 2, one.protocol.stages[1]!, false))!.squeeze;
  };
  const peakBw = who(hamstring).model.sweepTo(card, null, 0, card.tempo)!.peak.compressionBw;
  const heldBw = marginOf(card.movement, hamstring.stages[1]!) * peakBw;

  it.each([
    // first cap over the squeeze, second cap over it | word
    [1, 2, 'low'],
    [0.999, 1, 'middle'],
    [0.5, 0.999, 'high'],
  ])('with caps of %d and %d times it is %s', (first, second, expected) => {
    expect(word(first * heldBw, second * heldBw)).toBe(expected);
  });
});

describe('the words of the public index', () => {
  it.each([
    // body weights | word, for caps of 0.35 and 0.8 (house rules 3)
    [0.35, 'low'],
    [0.351, 'middle'],
    [0.8, 'middle'],
    [0.801, 'high'],
    [null, 'unknown'],
  ])('%d is %s', (squeezeBw, expected) => {
    expect(wordOf(squeezeBw, { low: 0.35, middle: 0.8 })).toBe(expected);
  });
});
