/** One slip each in an otherwise good consult: each stops its own programme with its code, its place and a cure. */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { shippedClinic } from './workbench.ts';

const SLIPS = [
  // what is wrong                     from                          to                           code
  ['a mass of 700 kg', 'massKg: 61', 'massKg: 700', 'out-of-range'],
  ['a date that does not exist', /startOn: .*/, 'startOn: 2026-02-30', 'not-a-date'],
  ['a review before the start', /reviewOn: .*/, 'reviewOn: 2026-11-01', 'does-not-fit'],
  ['pain of 12', 'pain: 2', 'pain: 12', 'out-of-range'],
  ['a hip bend of 200 degrees', /painFreeHipFlexionDeg: .*/, 'painFreeHipFlexionDeg: 200', 'out-of-range'],
  ['a card that is not there', 'card: hip-hinge', 'card: hip-hing', 'no-such-card'],
  ['an unknown key', 'massKg: 61', 'massKg: 61\nmasKg: 61', 'unknown-key'],
  ['a missing key', 'country: GB\n', '', 'missing-key'],
  ['a wrong type', 'ageYears: 38', 'ageYears: old', 'wrong-type'],
  ['a screen item of yes', 'footDrop: no', 'footDrop: yes', 'screen-block'],
  ['a screen item left out', '  footDrop: no\n', '', 'screen-block'],
  ['a longest run over the week', 'longestIn30DaysKm: 9', 'longestIn30DaysKm: 90', 'does-not-fit'],
  ['300 steps a minute', 'stepsPerMin: 162', 'stepsPerMin: 300', 'out-of-range'],
  ['60 repetitions', 'repetitions: 10', 'repetitions: 60', 'out-of-range'],
  ['0 repetitions', 'repetitions: 10', 'repetitions: 0', 'out-of-range'],
  ['too few minutes', /minutesPerDay: .*/, 'minutesPerDay: 5', 'implausible'],
  ['a step the ladder does not have', 'step: 1', 'step: 60', 'does-not-fit'],
] as const;

it('stops the programme of every consult with a slip, and only those', async () => {
  const own = shippedClinic();
  const shelf = join(own.top, 'slips');
  mkdirSync(shelf);
  const sample = readFileSync(join(own.content, 'consults/otter-r1.md'), 'utf8');
  writeFileSync(join(shelf, 'heron-r1.md'), readFileSync(join(own.content, 'consults/heron-r1.md')));
  SLIPS.forEach(([what, from, to], index) => {
    const text = sample.replace(from, to);
    expect(text, what).not.toBe(sample);
    writeFileSync(join(shelf, `slip-${index}-r1.md`), text.replace('alias: otter', `alias: slip-${index}`));
  });
  const run = await own.run('build', '--json', '--consults', shelf);
  own.remove();
  const answer = JSON.parse(run.out) as {
    problems: { code: string; file: string; line: number; fix: string }[];
    programmes: { alias: string }[];
  };
  expect(run.exit).toBe(65);
  expect(answer.programmes.map(({ alias }) => alias)).toEqual(['heron']);
  const found = SLIPS.map(([what], index) => [
    what,
    answer.problems.find(({ file }) => file === `consults/slip-${index}-r1.md`)?.code,
  ]);
  expect(found).toEqual(SLIPS.map(([what, , , code]) => [what, code]));
  expect(answer.problems.every(({ line, fix }) => line > 0 && fix !== '')).toBe(true);
});

it('tells of every file in one run, however many are wrong, of the library and of the consults', async () => {
  const own = shippedClinic();
  own.edit('exercises/front-plank.md', /^title: .*$/m, 'title: 3');
  own.edit('exercises/side-plank-on-knees.md', /^nextReviewOn: .*$/m, 'nextReviewOn: 2026-09-02');
  own.edit('exercises/hip-hinge.md', /range:\n {4}- -?\d+\n {4}- -?\d+/, 'range:\n    - 110\n    - 120');
  own.edit('consults/otter-r1.md', 'card: hip-hinge', 'card: hip-hing');
  own.edit('consults/heron-r1.md', 'footDrop: no', 'footDrop: notAsked');
  const told = async (...words: string[]) => {
    const run = await own.run(...words, '--json', '--on', '2026-10-01');
    const { problems } = JSON.parse(run.out) as { problems: { code: string; file: string }[] };
    return [run.exit, ...problems.map(({ code, file }) => `${file} ${code}`)];
  };
  const ofConsults = ['consults/heron-r1.md screen-block', 'consults/otter-r1.md no-such-card'];
  expect(await told('check')).toEqual([
    65,
    ...ofConsults,
    'exercises/front-plank.md wrong-type',
    'exercises/hip-hinge.md pose-cannot-close',
    'exercises/side-plank-on-knees.md review-overdue',
  ]);
  expect(await told('build')).toEqual([65, ...ofConsults, 'exercises/front-plank.md wrong-type']);
  expect(await told('build', 'otter')).toEqual([
    65,
    'consults/otter-r1.md no-such-card',
    'exercises/front-plank.md wrong-type',
  ]);
  own.remove();
});
