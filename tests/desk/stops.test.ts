/** What a screen stops is told whatever else is wrong, and of a form on its way only what was answered yes; a draft is still to be asked. */
import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { makeSheet, makeSteps } from '../../src/desk/worker/make.ts';
import { bench } from './shippedBench.ts';

const heron = readFileSync('content/consults/heron-r1.md', 'utf8');

const BROKEN = heron.replace(/massKg: .*/, 'massKg: much');
const BEGUN = heron.replace(/massKg: .*\n/, '').replace(/minutesPerDay: .*\n/, '');
const DRAFT = heron.replace('---\n', '---\ndraft: yes\n');
const young = (text: string) =>
  text.replace(/ageYears: .*/, 'ageYears: 15').replace('suddenOnsetUnder18: no', 'suddenOnsetUnder18: yes');

it.each([
  ['a yes under 18 beside a value that is none', young(BROKEN), 'screen.suddenOnsetUnder18', true],
  ['a yes under 18 on a form on its way', young(BEGUN), 'screen.suddenOnsetUnder18', true],
  [
    'a yes under 18 in a head that is no YAML',
    young(heron).replace('screen:\n', ''),
    'screen.suddenOnsetUnder18',
    true,
  ],
  ['a yes under 18 in a draft', young(DRAFT), 'screen.suddenOnsetUnder18', true],
  ['what was not asked, in a draft', DRAFT.replace('fever: no', 'fever: notAsked'), 'screen.fever', true],
  [
    'what was not asked, beside a value that is none',
    BROKEN.replace('fever: no', 'fever: notAsked'),
    'screen.fever',
    true,
  ],
  [
    'what was not asked, on a form on its way',
    BEGUN.replace('fever: no', 'fever: notAsked'),
    'screen.fever',
    false,
  ],
])('%s', (_, text, path, isTold) => {
  const made = makeSheet({ name: 'heron-r1.md', text, others: [] }, bench);
  const paths = 'problems' in made ? made.problems.map((one) => one.path) : [];
  expect(paths).not.toEqual([]);
  expect(paths.includes(path)).toBe(isTold);
});

it('is made in steps, and comes to the same', () => {
  const sheet = { name: 'heron-r1.md', text: heron, others: [] };
  const steps = makeSteps(sheet, bench);
  let count = 0;
  let last = steps.next();
  for (; last.done !== true; last = steps.next()) count += 1;
  expect(count).toBeGreaterThanOrEqual(4);
  expect(last.value).toEqual(makeSheet(sheet, bench));
});
