/** One verdict an activity: whole leaflets, of the cases and of people made up here, are read for pairs that clash. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { CASES, caseMade } from './outcome.ts';
import { day, person, RUNNER } from './person.ts';
import { programmeOf } from './shipped.ts';
import { contradictions } from './verdicts.ts';

describe('every whole case', () => {
  it.each(CASES)('%s', (name) => {
    const made = caseMade(name);
    expect('printed' in made ? [] : contradictions(made.programme)).toEqual([]);
  });
});

const STAGES = [1, 2, 3, 4] as const;
const RUNNING: Readonly<Record<string, Consult['running']>> = {
  'keeps running': RUNNER,
  'hills and speed': { ...RUNNER, hills: true, speed: true },
  'walks into running': { ...RUNNER, decision: 'walk-run' },
  'none for now': { ...RUNNER, decision: 'none' },
  'after weeks off': { ...RUNNER, weeklyKm: 0, longestIn30DaysKm: 0, weeksOff: 8 },
};

describe('every stage', () => {
  const doesNow = ['walking', 'yoga', 'pilates', 'stretching', 'cycling', 'gardening'].map((what) => ({
    what,
    times: 1,
  }));

  it.each(STAGES.flatMap((stage) => Object.keys(RUNNING).map((runs) => [stage, runs] as const)))(
    'stage %s, %s',
    (stage, runs) => {
      const programme = programmeOf(
        person({ stage, running: RUNNING[runs] as Consult['running'], doesNow, usualMorningPain: 1 }),
      );
      expect(contradictions(programme)).toEqual([]);
    },
  );

  it.each(
    STAGES.flatMap((stage) =>
      ['exercise class', 'lifting at work', 'hill walking', 'orienteering', 'rowing'].map(
        (what) => [stage, what] as const,
      ),
    ),
  )('stage %s, %s', (stage, what) => {
    const programme = programmeOf(person({ stage, doesNow: [{ what, times: 1 }], usualMorningPain: 1 }));
    expect(contradictions(programme)).toEqual([]);
  });

  it.each([3, 4, 5])('usual pain %s', (usualMorningPain) => {
    expect(contradictions(programmeOf(person({ running: RUNNER, usualMorningPain, doesNow })))).toEqual([]);
  });
});

describe('where nothing hurts', () => {
  it('nothing is left that the stretching section welcomes', () => {
    const programme = programmeOf(
      person({
        protocol: 'runner-strength',
        usualMorningPain: 0,
        tests: [{ test: 'split-squat', pain: 0 }],
        running: { ...RUNNER, hills: true, speed: true },
        doesNow: ['yoga', 'stretching', 'gym legs', 'deadlifts'].map((what) => ({ what, times: 1 })),
      }),
    );
    expect(contradictions(programme)).toEqual([]);
    expect(JSON.stringify(programme.activities)).not.toContain('Leave');
  });
});

describe('what was not recorded', () => {
  it('is not told as found: nothing written down of what changed', () => {
    const opening = (changedBefore: Consult['changedBefore']) =>
      programmeOf(person({ changedBefore })).opening.join(' ');
    expect(opening([])).toContain('has not been written down');
    expect(opening([])).not.toContain('No one thing started it');
    expect(opening(['nothing-known'])).toContain('No one thing started it');
  });

  it('is not told as tested: the screen decided', () => {
    const note = programmeOf(
      person({
        screen: { ...person().screen, recentInjection: 'yes' },
        clearances: [
          { flag: 'recentInjection', by: 'doctor', on: day('2026-11-23'), decision: 'light holds' },
        ],
      }),
    ).record.note.join('\n');
    expect(note).toContain('the screen allows light holds only');
    expect(note).not.toContain('as proposed from the tests');
  });

  it('is not told as a review: nothing is reviewed at the end of treatment', () => {
    const dates = (stage: Consult['stage']) =>
      programmeOf(person({ stage, usualMorningPain: 0, tests: [{ test: 'hip-hinge', pain: 0 }] })).dates;
    expect(dates('auto')).toContain('Next review on');
    expect(dates('keepGoing')).toBe('Start on 24 November. A last look on 15 December 2026.');
  });
});
