/** The end of treatment: what is asked, what is found, and the letter. */
import { describe, expect, it } from 'vitest';
import type { Consult, Protocol } from '../../src/content/library.ts';
import { dischargeCriteria } from '../../src/decisions/person/discharge.ts';
import { courseOf } from '../../src/decisions/stage/course.ts';
import { addDays } from '../../src/units/date.ts';
import { day, person, testedSet } from './person.ts';
import { sectionLines } from './leafletText.ts';
import { programmeOf, shipped } from './shipped.ts';

const READY: Partial<Consult> = {
  stage: 'keepGoing',
  usualMorningPain: 1,
  tests: [{ test: 'single-leg-hinge', pain: 1 }],
  goals: [{ what: 'run to work', doneTimes: 2 }],
  testedSets: [
    testedSet('romanian-deadlift', 20, 10, 2),
    testedSet('romanian-deadlift', 20, 11, 2, { side: 'left' }),
  ],
  sitting: { toleranceMinutes: 60, goalMinutes: 60 },
};

const criteria = (different: Partial<Consult>) => {
  const { record } = programmeOf(person({ ...READY, ...different }));
  const rows = record.findings.find(({ caption }) => caption === 'Before treatment ends')?.rows ?? [];
  return {
    met: rows.map(([, , met]) => met),
    remark: record.remarks.find((one) => one.startsWith('Discharge')),
  };
};

// Without a weight the repetitions of both sides are compared; strength within 10 % of the other side (house rules 10).
function repetitionsOf(right: number, left: number) {
  return [
    testedSet('single-leg-hinge', 0, right, 0),
    testedSet('single-leg-hinge', 0, left, 0, { side: 'left' }),
  ];
}

describe('the criteria', () => {
  it('are all met', () => {
    expect(criteria({})).toEqual({
      met: ['met', 'met', 'met', 'met'],
      remark: 'Discharge: all that is asked is met.',
    });
  });

  it.each<[string, Partial<Consult>, number, string]>([
    ['the goal done once', { goals: [{ what: 'run', doneTimes: 1 }] }, 0, 'not met'],
    ['the goal never recorded', { goals: [{ what: 'run' }] }, 0, 'not known'],
    ['mornings at 2', { usualMorningPain: 2 }, 1, 'not met'],
    [
      'a side a quarter behind',
      {
        testedSets: [
          testedSet('romanian-deadlift', 15, 10, 2),
          testedSet('romanian-deadlift', 20, 10, 2, { side: 'left' }),
        ],
      },
      2,
      'not met',
    ],
    ['one side tested', { testedSets: [testedSet('romanian-deadlift', 20, 10, 2)] }, 2, 'not known'],
    ['a side a tenth behind', { testedSets: repetitionsOf(9, 10) }, 2, 'met'],
    ['a side a ninth behind', { testedSets: repetitionsOf(8, 9) }, 2, 'not met'],
    [
      'without a weight repetitions count',
      {
        testedSets: [
          testedSet('single-leg-hinge', 0, 12, 0),
          testedSet('single-leg-hinge', 0, 13, 0, { side: 'left' }),
        ],
      },
      2,
      'met',
    ],
    ['sitting short of the goal', { sitting: { toleranceMinutes: 50, goalMinutes: 60 } }, 3, 'not met'],
  ])('%s', (_, different, index, met) => {
    const found = criteria(different);
    expect(found.met[index]).toBe(met);
    expect(found.remark === 'Discharge: all that is asked is met.').toBe(met === 'met');
  });

  it('name the entries that show them, a log among them', () => {
    const rows = dischargeCriteria({
      consult: person(READY),
      protocol: shipped.protocols.get('proximal-hamstring') as Protocol,
      clinic: shipped.clinic,
      logged: {
        longestRun: null,
        running: null,
        step: 1,
        grows: false,
        exercises: [],
        mornings: { written: 7, worst: 3, until: day('2026-01-01') },
      },
    });
    expect(rows[1]).toMatchObject({ found: 3, asked: 1, met: false });
    expect(rows.map(({ shownBy }) => shownBy.map((one) => one.of))).toEqual([
      ['goal'],
      ['usualMorning', 'loggedMornings'],
      ['sides'],
      ['sitting'],
    ]);
  });

  it('are shown before the end as well, and not in the early stages', () => {
    const shown = (stage: Consult['stage']) =>
      programmeOf(person({ stage, tests: [{ test: 'single-leg-hinge', pain: 1 }] })).record.findings.some(
        ({ caption }) => caption === 'Before treatment ends',
      );
    expect([shown(2), shown(4), shown('keepGoing')]).toEqual([false, true, true]);
  });
});

describe('the letter', () => {
  it('is there at the end alone, on one page', () => {
    expect(programmeOf(person({ stage: 4 })).letter).toBeNull();
    const { letter } = programmeOf(person(READY));
    const lines = letter === null ? [] : sectionLines(letter);
    expect(lines.length).toBeGreaterThan(8);
    expect(lines.length).toBeLessThanOrEqual(30);
    expect(lines.join(' ').length).toBeLessThan(3000);
  });

  it('gives each score first and last, with the least change that matters', () => {
    const outcomes = Array.from({ length: 12 }, (_, month) => ({
      on: addDays(person().seenOn, 30 * (month - 11)),
      visaH: 40 + month,
    }));
    const { letter } = programmeOf(person({ ...READY, outcomes }));
    const text = letter === null ? '' : sectionLines(letter).join('\n');
    const row = text.split('\n').find((line) => line.includes('VISA-H')) ?? '';
    expect(row).toMatch(/40 \(.*51 \(.*22 \(memory\)/);
    expect(text).not.toContain('45 (');
  });

  it('is none for a runner without pain', () => {
    const programme = programmeOf(
      person({ protocol: 'runner-strength', usualMorningPain: 0, tests: [{ test: 'split-squat', pain: 0 }] }),
    );
    expect(programme.letter).toBeNull();
    expect(programme.stage.chosen).toBe('keepGoing');
  });
});

describe('what a programme is for', () => {
  it.each([
    ['proximal-hamstring', 2, 'treatment'],
    ['proximal-hamstring', 'keepGoing', 'discharge'],
    ['runner-strength', 'keepGoing', 'prevention'],
    ['gluteal-tendon', 1, 'treatment'],
  ] as const)('%s, %s: %s', (id, stage, course) => {
    const protocol = shipped.protocols.get(id);
    expect(protocol && courseOf(protocol, stage)).toBe(course);
  });
});
