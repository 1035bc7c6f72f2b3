/** Which figures of the model put a neighbour above or below a card. Truths of the trade, each with its reason. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { ExerciseCard } from '../../src/content/library.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { referenceBody } from '../../src/decisions/person/body.ts';
import { figuresOf, quickFigures } from '../../src/lint/figures.ts';
import { misplacedNeighbours } from '../../src/lint/neighbours.ts';
import { fileOf } from '../content/sample.ts';

const reading = readLibrary(
  readdirSync('content', { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.md'))
    .map((file) => fileOf(file.replaceAll('\\', '/'), readFileSync(`content/${file}`, 'utf8'))),
);
const library = reading.library!;
const body = referenceBody(library.clinic);

function codesWith(id: string, change: Pick<Partial<ExerciseCard>, 'easier' | 'harder'>): string[] {
  const card = { ...library.exercises.get(id)!, easier: null, harder: null, ...change };
  const alone = [...library.exercises].map(
    ([key, other]) => [key, key === id ? card : { ...other, easier: null, harder: null }] as const,
  );
  const changed = { ...library, exercises: new Map(alone) };
  return misplacedNeighbours(changed, reading.placeOf).map(({ code }) => code);
}

describe('easier', () => {
  it.each([
    ['bridge-from-floor', 'single-leg-bridge-from-floor', 'one leg carries what two did'],
    ['hip-hinge', 'romanian-deadlift', 'a deeper bow squeezes more'],
    ['short-split-squat', 'reverse-lunge', 'a deep lunge bends the hip to 100°'],
    ['assisted-nordic', 'slow-ball-curl', 'the ball curl bends the hip a little, the lean not at all'],
  ])('%s: %s is not, for %s', (id, easier) => {
    expect(codesWith(id, { easier })).toEqual(['easier-is-harder']);
  });

  it.each([
    ['slow-towel-curl', 'slow-prone-curl', 'the bed carries the thigh, so its moment is no work'],
    ['rucksack-hinge', 'hip-hinge', '12 % cannot be told apart'],
    ['single-leg-calf-raise', 'calf-raise', 'a few newton metres at the hip say nothing'],
    ['strides', 'single-leg-hip-thrust', 'a card without a pose has no figures'],
  ])('%s: %s may be, for %s', (id, easier) => {
    expect(codesWith(id, { easier })).toEqual([]);
  });
});

describe('harder', () => {
  it.each([
    ['single-leg-hinge', 'hip-hinge', 'it asks for less of everything'],
    ['deep-nordic-lowering', 'nordic-lowering', 'it asks for less of everything'],
  ])('%s: %s is not, for %s', (id, harder) => {
    expect(codesWith(id, { harder })).toEqual(['harder-is-easier']);
  });

  it('may squeeze less when it pulls more: a kneeling lean after a ball curl', () => {
    expect(codesWith('slow-ball-curl', { harder: 'assisted-nordic' })).toEqual([]);
  });
});

describe('quick figures', () => {
  const posed = [...library.exercises.values()].filter(({ movement }) => movement !== null);

  it.each(posed.map((card) => [card.id, card] as const))(
    'of %s are those of the whole movement',
    (_, card) => {
      const [quick, full] = [quickFigures(card, body)!, figuresOf(card, body)!];
      for (const [figure, within] of [
        ['compressionBw', 0.02],
        ['tensionBw', 0.02],
        ['hipMomentNm', 1],
        ['demand', 0.02],
      ] as const) {
        expect(quick[figure]).toBeLessThanOrEqual(full[figure] + 1e-9);
        expect(full[figure] - quick[figure]).toBeLessThanOrEqual(within);
      }
    },
  );

  it('are none without a pose', () => {
    const card = library.exercises.get('strides')!;
    expect([quickFigures(card, body), figuresOf(card, body)]).toEqual([null, null]);
  });
});
