/** Every code that content and the checks of a library raise has its printed texts here. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PROBLEM_CODES, type ProblemCode } from '../../src/content/problem.ts';

// Raised by rooms that have their own tests of the wording.
const NOT_OURS: readonly ProblemCode[] = [
  'screen-block',
  'no-card-for-slot',
  'nothing-fits',
  'letter-not-in-font',
  'image',
  'load-not-in-kit',
  'no-free-day',
];

const sources = readdirSync('tests/problems')
  .filter((file) => file.endsWith('.test.ts'))
  .map((file) => readFileSync(`tests/problems/${file}`, 'utf8'))
  .join('\n');

describe('the closed list of codes', () => {
  it.each(PROBLEM_CODES.filter((code) => !NOT_OURS.includes(code)))('%s has its printed text', (code) => {
    expect(sources).toContain(`describe('${code}'`);
    expect(sources).toMatch(new RegExp(`: (error|warning) ${code} `));
  });
});
