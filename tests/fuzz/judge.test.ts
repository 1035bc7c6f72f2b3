/** The judges of `npm run fuzz`, on what they must find: one fault each, put into what is in order. */
import { describe, expect, it } from 'vitest';
import { chanceOf } from '../../fuzz/chance.ts';
import type { Family, Verdict } from '../../fuzz/family.ts';
import { flagsOf } from '../../fuzz/flags.ts';
import { tableOf } from '../../fuzz/figures.ts';
import { lawFaults, problemFaults } from '../../fuzz/judge.ts';
import { mutantOf, valuesIn } from '../../fuzz/mutant.ts';
import { runFamily } from '../../fuzz/run.ts';
import { strangers } from '../../fuzz/strangers.ts';
import type { Problem } from '../../src/content/problem.ts';
import type { Programme } from '../../src/programme/programme.ts';
import { SAMPLE, fileOf } from '../content/sample.ts';
import { FULL_KIT, person, RUNNER } from '../programme/person.ts';
import { programmeOf } from '../programme/shipped.ts';

const CONSULT = person({ kit: FULL_KIT, running: RUNNER });
const GOOD = programmeOf(CONSULT);

describe('the laws', () => {
  it('stand against nobody who is in order', () => {
    expect(lawFaults(GOOD, CONSULT)).toEqual([]);
  });

  const steps = (change: (cell: Programme['steps'][0]['prescriptions'][0]['cells'][0]) => object) =>
    ({
      ...GOOD,
      steps: GOOD.steps.map((step, index) => ({
        ...step,
        prescriptions: step.prescriptions.map((one) => ({
          ...one,
          cells: one.cells.map((cell) => ({ ...cell, ...(index === 0 ? {} : change(cell)) })),
        })),
      })),
    }) as Programme;

  it.each([
    ['a day less', { ...GOOD, plan: GOOD.plan.slice(1) }, 'every day is planned'],
    [
      'a log that leaves out a day',
      { ...GOOD, log: { ...GOOD.log, days: GOOD.log.days.slice(1) } },
      'what is printed of a day is planned',
    ],
    [
      'another next session',
      { ...GOOD, nextSession: { ...GOOD.nextSession, when: 'Some day' } },
      'the next session is the first',
    ],
    [
      'more minutes than there are',
      { ...GOOD, nextSession: { ...GOOD.nextSession, minutesValue: 1000 } },
      'within the day',
    ],
    ['a cell without a rule', steps(() => ({ rule: '' })), 'every cell has its reason'],
    [
      'a bend beyond the stage',
      steps(({ cell }) => (cell === 'hipFlexionDeg' ? { value: 179 } : {})),
      'under the caps',
    ],
    [
      'a weight ten times as heavy',
      steps(({ cell }) => (cell === 'loadKg' ? { value: 150 } : {})),
      'grows slowly',
    ],
  ])('%s breaks one', (_, programme, law) => {
    expect(lawFaults(programme as Programme, CONSULT).map((fault) => fault.split(': ')[0])).toContain(law);
  });
});

describe('a Problem', () => {
  const files = [fileOf('consults/a-r1.md', 'one\ntwo\n')];
  const problem: Problem = {
    code: 'wrong-word',
    severity: 'error',
    file: 'consults/a-r1.md',
    line: 2,
    column: 4,
    path: 'side',
    found: 'lefft',
    expected: 'left, right or both',
    fix: 'write left',
  };

  it('with a place and a cure is in order', () => {
    expect(problemFaults([problem], files)).toEqual([]);
  });

  it.each([
    ['of another file', { file: 'consults/b-r1.md', line: 1, column: 1 }],
    ['beyond the last line', { line: 9 }],
    ['beyond the end of its line', { column: 5 }],
    ['without a cure', { fix: '' }],
    ['with words of a program', { fix: 'write undefined' }],
    ['of an unknown code', { code: 'slip' as Problem['code'] }],
  ])('%s is not', (_, change) => {
    expect(problemFaults([{ ...problem, ...change }], files)).toHaveLength(1);
  });
});

describe('a page', () => {
  it.each([
    ['<iframe src="x"></iframe>'],
    ['<p onclick="x">a</p>'],
    ['<p title="a"onfocus=1 >a</p>'],
    ['<a href="javascript:1">a</a>'],
    ['<a href=" //elsewhere.example">a</a>'],
    ['<meta http-equiv="refresh" content="0">'],
  ])('with %s has a stranger', (markup) => {
    expect(strangers(`<main><p>a</p>${markup}</main>`)).toHaveLength(1);
  });

  it('with such words as text has none', () => {
    expect(strangers('<p title="onclick= javascript:">&lt;iframe&gt; onclick=1</p>')).toEqual([]);
  });
});

describe('chance', () => {
  it('gives the same mutant for the same seed and number, and others for others', () => {
    const text = SAMPLE['consults/otter-r1.md'];
    const values = valuesIn([text]);
    const mutant = (seed: number, number: number) =>
      mutantOf(text, values, [text], chanceOf(seed, 'consults', number));
    expect(mutant(7, 120)).toBe(mutant(7, 120));
    const many = Array.from({ length: 40 }, (_, number) => mutant(7, number));
    expect(new Set(many).size).toBeGreaterThan(25);
    expect(many).not.toEqual(Array.from({ length: 40 }, (_, number) => mutant(8, number)));
  });
});

describe('a run', () => {
  const seen: number[] = [];
  const family: Family = {
    name: 'tries',
    what: 'numbers',
    open: async () => ({
      attempt: async (chance): Promise<Verdict> => {
        seen.push(chance.below(1000));
        if (seen.length === 2) throw new Error('broke');
        return { end: 'built', tried: '', faults: seen.length === 3 ? ['wrong'] : [] };
      },
      close: () => undefined,
    }),
  };

  it('begins at a number, counts what is thrown and what is wrong, and says which', async () => {
    const told: string[] = [];
    const flags = { seconds: 60, seed: 7, from: 120, cases: 4 };
    const figures = await runFamily(family, flags, (number, { faults: [fault = ''] }) =>
      told.push(`${number} ${fault.split('\n')[0]}`),
    );
    expect(told).toEqual(['120 ', '121 thrown: Error: broke', '122 wrong', '123 ']);
    expect(figures).toMatchObject({ family: 'tries', cases: 4, refused: 1, built: 3, failed: 2, next: 124 });
    expect(seen[2]).toBe(chanceOf(7, 'tries', 122).below(1000));
    expect(tableOf([{ ...figures, seconds: 1.2 }])).toBe(
      [
        'family  cases  refused  built  failed  seconds  next',
        'tries       4        1      3       2        1   124',
      ].join('\n'),
    );
  });
});

describe('its flags', () => {
  it('are those that were given', () => {
    expect(flagsOf('--family disks --seconds 5 --seed 7 --from 120 --cases 3 --show'.split(' '))).toEqual({
      families: ['disks'],
      seconds: 5,
      seed: 7,
      from: 120,
      cases: 3,
      show: true,
    });
  });

  it.each([
    ['--family nobody', /^There is no family nobody: consults, /],
    ['--seed x', /^--seed needs a whole number/],
    ['--fast', /^There is no --fast: /],
  ])('%s is not taken', (words, said) => {
    expect(flagsOf(words.split(' '))).toMatch(said);
  });
});
