/** A protocol that goes by weeks: with what pain one goes on, the dates of every rung, and what cannot be made. */
import { describe, expect, it } from 'vitest';
import type { Consult, Protocol } from '../../src/content/library.ts';
import { assembleProgramme } from '../../src/programme/assemble.ts';
import { entryPainAtMost, goOnPain } from '../../src/decisions/screen/goOnPain.ts';
import { addDays } from '../../src/units/date.ts';
import { day, NO_KIT, person } from './person.ts';
import { programmeOf, shipped, workshop } from './shipped.ts';

const GLUTEAL = shipped.protocols.get('gluteal-tendon') as Protocol;
const HAMSTRING = shipped.protocols.get('proximal-hamstring') as Protocol;

const outerHip = (more: Partial<Consult> = {}) =>
  person({
    protocol: 'gluteal-tendon',
    stage: 1,
    reviewOn: day('2026-12-15'),
    tests: [{ test: 'single-leg-stand', pain: 4 }],
    ...more,
  });

describe('pain with which one goes on, where the protocol asks for 3 or less', () => {
  it.each([
    // usual, irritability: at most, no more than usual
    [0, 'low', 3, false],
    [2, 'moderate', 3, false],
    [3, 'moderate', 3, false],
    [4, 'moderate', 4, true],
    [6, 'low', 6, true],
    [2, 'high', 2, true],
    [0, 'high', 0, true],
  ] as const)('usual %i, irritability %s: %i', (usualMorningPain, irritability, atMost, usualOnly) => {
    const consult = outerHip({ usualMorningPain, irritability });
    expect(goOnPain(consult, GLUTEAL, 3)).toEqual({ atMost, usualOnly });
  });

  it('is never below what is usual for the person, whatever a protocol asks', () => {
    expect(goOnPain(outerHip({ usualMorningPain: 3, irritability: 'low' }), GLUTEAL, 1).atMost).toBe(3);
  });

  it('is printed in the words of the pain rule, and the record says why it is not the number of the protocol', () => {
    const words = (usualMorningPain: number) => {
      const { steps, record } = programmeOf(outerHip({ usualMorningPain, irritability: 'moderate' }));
      return [steps[1]?.goOnWhen[1], record.remarks.find((text) => text.startsWith('Going on:')) ?? ''];
    };
    expect(words(2)).toEqual(['the exercises of the step before hurt 3 or less', '']);
    const [leaflet, remark] = words(4);
    expect(leaflet).toContain(
      'no more than is usual for you, 4 out of 10, and it had settled by the evening',
    );
    expect(remark).toContain('no more than usual here (4)');
  });

  it.each([
    // usual: at most in a test, by weeks and by tests
    [2, 3, 3],
    [4, 4, 3],
    [6, 5, 3],
  ])('opens the next week at usual %i with a test of %i', (usualMorningPain, byWeeks, byTests) => {
    const consult = outerHip({ usualMorningPain, irritability: 'moderate' });
    expect(entryPainAtMost(consult, GLUTEAL, 3)).toBe(byWeeks);
    expect(entryPainAtMost(consult, HAMSTRING, 3)).toBe(byTests);
  });

  it('proposes the next week to who did this one as the leaflet asks', () => {
    const proposed = (pain: number) =>
      programmeOf(
        outerHip({
          stage: 'auto',
          usualMorningPain: 4,
          irritability: 'moderate',
          tests: [{ test: 'week-one-exercises', pain }],
        }),
      ).stage.chosen;
    expect([proposed(4), proposed(5)]).toEqual([2, 1]);
  });
});

describe('every rung before the review', () => {
  const start = day('2026-11-24');

  it.each([2, 3, 4, 5, 6, 7])('has its date, one a week, over %i weeks of the last stage', (weeks) => {
    const { steps, plan, growth } = programmeOf(
      outerHip({ stage: 3, startOn: start, reviewOn: addDays(start, 7 * weeks) }),
    );
    // Six weeks of it, so six rungs.
    const rungs = Math.min(weeks, 6);
    const expected = Array.from({ length: rungs }, (_, index) => index + 1);
    expect(steps.map(({ step }) => step)).toEqual(expected);
    expect(plan.map(({ step }) => step)).toEqual(plan.map(({ week }) => Math.min(week, 6)));
    expect(growth.slice(1, rungs).every(({ because }) => because === 'rung')).toBe(true);
  });

  it('prints the days once where only the step is another, and each step beside its week', () => {
    const { week } = programmeOf(outerHip({ stage: 3, startOn: start, reviewOn: addDays(start, 42) }));
    const tables = week.parts.flatMap((part) => (part.kind === 'table' ? [part.table] : []));
    expect(tables.map(({ caption }) => caption)).toEqual([
      '24 November to 30 November',
      '1 December to 4 January: the same days, with the next steps',
    ]);
    expect(tables[1]?.rows).toEqual([
      ['1 December to 7 December', 'Step 2'],
      ['8 December to 14 December', 'Step 3'],
      ['15 December to 21 December', 'Step 4'],
      ['22 December to 28 December', 'Step 5'],
      ['29 December to 4 January', 'Step 6'],
    ]);
  });

  it('prints what is new of a rung, and of a stage everything', () => {
    const { steps } = programmeOf(outerHip({ reviewOn: day('2026-12-22') }));
    const [, , stage, rung] = steps;
    expect(stage?.change).toMatch(/^Weeks 3 to 8/);
    expect(rung?.change).toMatch(/^New: .* All else stays\. If it is not settled by then, stay on step 3/);
    expect(rung?.prescriptions.length).toBeLessThan(stage?.prescriptions.length ?? 0);
    expect(rung?.prescriptions.every(({ news }) => news.length > 0)).toBe(true);
  });

  it('goes on from the step there is: a third week of the last stage has four left', () => {
    const { steps } = programmeOf(outerHip({ stage: 3, step: 3, reviewOn: addDays(start, 70) }));
    expect(steps.map(({ step }) => step)).toEqual([3, 4, 5, 6]);
  });
});

describe('a rung that cannot be made', () => {
  const needsBand: Protocol = {
    ...GLUTEAL,
    stages: GLUTEAL.stages.map((stage, index) =>
      index !== 2
        ? stage
        : {
            ...stage,
            slots: stage.slots.map((slot) =>
              slot.cards.includes('band-side-slide')
                ? { ...slot, needed: true, cards: ['band-side-slide'] }
                : slot,
            ),
          },
    ),
  };
  const protocols = new Map([...shipped.protocols, ['gluteal-tendon', needsBand] as const]);

  it('ends the plan on the step before, and the record says what stood against it', () => {
    const consult = outerHip({ kit: NO_KIT, reviewOn: day('2026-12-22') });
    const made = assembleProgramme(consult, null, {
      ...workshop,
      library: { ...workshop.library, protocols },
    });
    if (!('programme' in made)) throw new Error('a programme is made');
    const { steps, plan, record } = made.programme;
    expect(steps.map(({ step }) => step)).toEqual([1, 2]);
    expect(plan.at(-1)?.step).toBe(2);
    const said = record.remarks.find((text) => text.startsWith('The plan stays on step 2'));
    expect(said).toContain('due from 2026-12-08');
    expect(said).toContain('there is no band in the house');
  });

  it('is not said where everything can be made', () => {
    const { record } = programmeOf(outerHip({ reviewOn: day('2026-12-22') }));
    expect(record.remarks.join(' ')).not.toContain('The plan stays on');
  });

  it('says of a later stage where its own steps end, and of a card what stood against it', () => {
    const { record } = programmeOf(outerHip({ kit: NO_KIT }));
    expect(record.remarks.join(' ')).toContain(
      'Weeks 3 to 8, mostly one leg. Side slides with a band: sets end',
    );
    expect(record.passedOver).toContainEqual(
      expect.objectContaining({ card: 'band-side-slide', stage: 3, limit: 'kit' }),
    );
  });
});
