/** A weight that is felt for, and what squeezes little: both begin within a step of what was shown (house rules 4 and 11.2). */
import { cellTexts } from '../../src/messages/en/patient/cells.ts';
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { decide } from '../../src/decisions/decide.ts';
import { growthFloorOf } from '../../src/decisions/candidates/growthFloor.ts';
import { isPosed } from '../../src/decisions/person/model.ts';
import { FULL_KIT, NO_KIT, person, RUNNER } from './person.ts';
import { programmeOf, workshop } from './shipped.ts';

const PAINLESS: Consult['tests'] = ['single-leg-bridge-raised', 'hip-hinge', 'split-squat'].map((test) => ({
  test,
  pain: 0,
}));
const STRONG: Partial<Consult> = {
  stage: 4,
  tests: [...PAINLESS, { test: 'single-leg-hinge', pain: 0 }],
  running: RUNNER,
  kit: FULL_KIT,
  minutesPerDay: 60,
};

const rungsOf = (different: Partial<Consult>) => {
  const made = decide(person(different), null, workshop);
  if ('refusals' in made) throw new Error(JSON.stringify(made.refusals));
  return made;
};

describe('a weight that is felt for', () => {
  it.each([3, 4] as const)('in stage %d is at first at most 1.3 times the exercise without one', (stage) => {
    const { shown, person: who } = rungsOf({ ...STRONG, stage });
    const felt = shown[0].prescriptions.filter(({ byFeel }) => byFeel);
    expect(felt.length).toBeGreaterThan(0);
    for (const { card, at } of felt) {
      if (!isPosed(card)) throw new Error(card.id);
      const peak = (kg: number) => who.model.sweepTo(card, at.rangeDeg, kg, at.dose.tempo)!.peak;
      const [bare, most] = [peak(0), peak(at.loadKg)];
      expect(at.loadKg).toBeGreaterThan(0);
      expect(Math.abs(most.hipMomentNm), card.id).toBeLessThanOrEqual(
        1.3 * Math.abs(bare.hipMomentNm) + 1e-6,
      );
      expect(most.compressionBw, card.id).toBeLessThanOrEqual(
        1.3 * Math.max(0.35, bare.compressionBw) + 1e-6,
      );
    }
  });

  it('is named with its greatest, and on the next heavier rung with the next', () => {
    const { shown, session } = rungsOf({ ...STRONG, stage: 4 });
    for (const one of shown.flatMap(({ prescriptions }) => prescriptions))
      if (one.byFeel) expect(cellTexts(one).loadKg).toMatch(/; at most (?!no weight)/);
    const feltSlots = shown[0].prescriptions.flatMap(({ byFeel, exercise }) =>
      byFeel ? [exercise.slot.name] : [],
    );
    const heaviest = (slot: string) =>
      Math.max(
        ...session.ladder.rungs.map(
          (rung) => rung.exercises.find(({ exercise }) => exercise === slot)!.loadKg,
        ),
      );
    const first = (slot: string) =>
      session.ladder.rungs[0].exercises.find(({ exercise }) => exercise === slot)!.loadKg;
    expect(feltSlots.filter((slot) => heaviest(slot) > first(slot))).not.toEqual([]);
  });

  it('of which the lightest is too much is left out', () => {
    const kit = { ...NO_KIT, kettlebellsKg: [40], bench: true, stepCm: [18] };
    const { shown } = rungsOf({ ...STRONG, stage: 3, kit });
    expect(shown[0].prescriptions.filter(({ byFeel }) => byFeel)).toEqual([]);
  });
});

describe('what squeezes and pulls little', () => {
  const prevention = (different: Partial<Consult>) =>
    programmeOf(
      person({
        protocol: 'runner-strength',
        stage: 'keepGoing',
        usualMorningPain: 0,
        irritability: 'low',
        tests: [{ test: 'split-squat', pain: 0 }],
        kit: { ...FULL_KIT, dumbbellsKg: [], platesKg: [], bottlesL: [], bands: [], kettlebellsKg: [12] },
        running: RUNNER,
        minutesPerDay: 60,
        ...different,
      }),
    );
  const bow = ({ exercises }: ReturnType<typeof programmeOf>) =>
    exercises.find(({ slot }) => slot === 'Heavy bow')?.cells.find(({ cell }) => cell === 'hipFlexionDeg')
      ?.value;

  it('a bow that nobody tested begins at 40 degrees, and opens on its ladder', () => {
    const programme = prevention({});
    expect(bow(programme)).toBe(40);
    expect(programme.record.stepsAhead.parts.map((part) => JSON.stringify(part)).join('')).toMatch(
      /Heavy bow: 40 to 45/,
    );
  });

  it('is smaller in a tendon that is easily stirred up', () => {
    const { person: who } = rungsOf({});
    const floor = (irritability: Consult['irritability']) =>
      growthFloorOf({ ...who, consult: { ...who.consult, irritability } });
    expect(floor('low')).toEqual({ compressionBw: 0.35, tensionBw: 0.75 });
    expect(floor('high')).toEqual({ compressionBw: 0.1, tensionBw: 0.1 });
  });
});
