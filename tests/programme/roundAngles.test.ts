/** A patient reads angles to 5 degrees, rounded down to the gentle end; the record keeps them whole (house rules 3). */
import { describe, expect, it } from 'vitest';
import { person, testedSet } from './person.ts';
import { programmeOf } from './shipped.ts';

const stepUp = programmeOf(
  person({
    stage: 3,
    kit: { ...person().kit, stepCm: [11] },
    tests: [
      { test: 'single-leg-bridge-raised', pain: 1 },
      { test: 'hip-hinge', pain: 1 },
    ],
    testedSets: [testedSet('step-up', 4, 10, 4)],
  }),
);
const bent = (programme: typeof stepUp, card: string) => {
  const exercise = programme.exercises.find((one) => one.card === card);
  const cell = exercise?.cells.find((one) => one.cell === 'hipFlexionDeg');
  const scene = exercise?.figures?.scene;
  const frames = scene?.view === 'side' ? scene.frames : [];
  return {
    value: Number(cell?.value),
    text: cell?.text,
    pictured: frames.map((one) => one.hipFlexionDeg ?? 0),
  };
};

describe('the bend over a step of 11 cm', () => {
  const { value, text, pictured } = bent(stepUp, 'step-up');

  it('is no round number, and stays so in the record', () => {
    expect(value % 5).not.toBe(0);
  });

  it('is read as the round number below it, beside the picture too', () => {
    expect(text).toBe(`about ${Math.floor(value / 5) * 5}°`);
    expect(pictured.length).toBeGreaterThan(0);
    expect(pictured.every((deg) => deg % 5 === 0 && deg <= value)).toBe(true);
  });
});

it('a number of the clinician stands as it was written', () => {
  const own = programmeOf(
    person({ overrides: [{ path: 'hip-hinge.hipFlexionDeg', value: 37, reason: 'as it was comfortable' }] }),
  );
  expect(bent(own, 'hip-hinge').text).toBe('about 37°');
});
