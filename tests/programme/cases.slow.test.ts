/**
 * Whole cases: invented people, from the consult file to what the leaflet, the record and `explain` say of them. Each
 * was read line by line as a physiotherapist would. A mismatch writes `out-changed` beside `out` to be compared and,
 * when it is right, moved over it; never in CI.
 */
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { CASES, expectedOf, outcomeOf, type Outcome } from './outcome.ts';

function writeChanged(name: string, outcome: Outcome): void {
  const folder = join('tests/cases', name, 'out-changed');
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  for (const [file, text] of outcome) writeFileSync(join(folder, file), text);
}

/** What each refused case is refused for: code and field. */
const REFUSED = {
  emergency: ['saddleNumbness', 'footDrop', 'fever', 'oralSteroid'].map(
    (item) => `screen-block screen.${item}`,
  ),
  'no-reason-given': ['does-not-fit stage'],
  'sudden-and-young': ['screen-block screen.suddenOnsetUnder18'],
  'usual-pain-eight': ['does-not-fit usualMorningPain'],
};

const inCi = process.env['CI'] !== undefined;

describe('whole cases', () => {
  it('are at least twelve people who get a programme', () => {
    const written = CASES.filter((name) => expectedOf(name).has('note.txt'));
    expect(written.length).toBeGreaterThanOrEqual(12);
  });

  // A case that is refused for a slip of its own file shows nothing of what it was made for.
  it('are refused only where the refusal is what they show', () => {
    const refused = CASES.flatMap((name): [string, string[]][] => {
      const problems = outcomeOf(name).get('problems.txt');
      return problems === undefined ? [] : [[name, [...new Set(problems.match(/(?<=: error )\S+ \S+/g))]]];
    });
    expect(Object.fromEntries(refused)).toEqual(REFUSED);
  });

  it.each(CASES)('%s', (name) => {
    const outcome = outcomeOf(name);
    const expected = expectedOf(name);
    const same =
      outcome.size === expected.size && [...outcome].every(([file, text]) => expected.get(file) === text);
    if (!same && !inCi) writeChanged(name, outcome);
    for (const [file, text] of outcome) expect(text, file).toBe(expected.get(file));
    expect([...outcome.keys()].sort()).toEqual([...expected.keys()].sort());
  });
});
