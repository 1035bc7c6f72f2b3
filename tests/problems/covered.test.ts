/** Every code that content raises has its printed texts here. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PROBLEM_CODES, type ProblemCode } from '../../src/content/problem.ts';

// Raised by other rooms, or by `check`, which has its own tests of wording.
const NOT_OURS: readonly ProblemCode[] = [
  'screen-block',
  'no-card-for-slot',
  'pose-cannot-close',
  'nothing-fits',
  'letter-not-in-font',
  'image',
  'load-not-in-kit',
  'no-free-day',
  'review-overdue',
  'card-unused',
  'words-against-angle',
  'easier-is-harder',
  'harder-is-easier',
  'card-length',
  'long-sentence',
  'reading-grade',
  'trade-word',
  'banned-word',
  'evidence-weak',
  'stage-leaves-out',
];

const sources = readdirSync('tests/problems')
  .filter((file) => file.endsWith('.test.ts'))
  .map((file) => readFileSync(`tests/problems/${file}`, 'utf8'))
  .join('\n');

describe('the closed list of codes', () => {
  it.each(PROBLEM_CODES.filter((code) => !NOT_OURS.includes(code)))('%s has its printed text', (code) => {
    expect(sources).toContain(`describe('${code}'`);
    expect(sources).toContain(`: error ${code} `);
  });
});
