/** Every code that content, the checks of a library and a programme raise has its printed texts here. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PROBLEM_CODES, type ProblemCode } from '../../src/content/problem.ts';

// Raised by rooms that have their own tests of the wording.
const NOT_OURS: readonly ProblemCode[] = ['letter-not-in-font', 'image'];

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
