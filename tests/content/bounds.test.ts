/** Every reader has a limit before it works: what no author writes is refused at once, with its place and a cure. */
import { describe, expect, it } from 'vitest';
import { readConsults } from '../../src/content/readConsults.ts';
import { readFile } from '../../src/content/readFile.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { lineFinder, problemText } from '../../src/content/problemText.ts';
import { fileOf, filesWith, SAMPLE } from './sample.ts';

const { known } = readLibrary(filesWith());
const FILE = 'consults/otter-r1.md';
const times = (count: number, text: (index: number) => string, between = '\n') =>
  Array.from({ length: count }, (_, index) => text(index)).join(between);
const headed = (head: string, body = '') => `---\n${head}\n---\n${body}`;

/** The Problems as they are printed, and how long that took. */
function told(text: string): {
  readonly codes: readonly string[];
  readonly print: string;
  readonly ms: number;
} {
  const files = [fileOf(FILE, text)];
  const before = performance.now();
  const { problems } = readConsults(files, known);
  const lineOf = lineFinder(files);
  const print = problems.map((one) => problemText(one, lineOf(one.file, one.line))).join('\n\n');
  return { codes: problems.map(({ code }) => code), print, ms: performance.now() - before };
}

// Far more than it takes on a slow machine, far less than without the limit: seconds to minutes.
const SOON_MS = 3000;

describe('a head', () => {
  it.each([
    ['of 20,000 unknown keys', times(20_000, (index) => `k${index}: 1`)],
    ['of 20,000 keys in one line', `kit: {${times(20_000, (index) => `k${index}: 1`, ', ')}}`],
    ['of a list of 50,000', `tests: [${times(50_000, () => '1', ', ')}]`],
    ['of 5,000 groups', `tests:\n${times(5_000, () => '  - { test: x, pain: 99, side: q }')}`],
    ['of 60,000 brackets', `a: ${times(60_000, () => '[]', '')}`],
  ])('%s is refused before it is parsed', (_, head) => {
    const { codes, print, ms } = told(headed(head));
    expect(codes).toEqual(['too-large']);
    expect(print).toMatch(/:\d+:\d+: error too-large found more than 10000 keys, list entries and lines;/);
    expect(ms).toBeLessThan(SOON_MS);
  });

  it.each([
    ['of 4,900 unknown keys', times(4_900, (index) => `massK${index}: 1`)],
    ['of 1,600 groups, each wrong twice', `tests:\n${times(1_600, () => '  - { test: x, pain: 99 }')}`],
  ])('%s is told of in its first hundred Problems', (_, head) => {
    const { codes, ms } = told(headed(head));
    expect(codes).toHaveLength(100);
    expect(ms).toBeLessThan(SOON_MS);
  });
});

describe('a body', () => {
  it.each([
    ['of brackets', '['.repeat(200_000)],
    ['of marks of emphasis', '*a **b'.repeat(35_000)],
    ['of definitions', times(8_000, (index) => `[a${index}]: b`)],
  ])('%s is refused before it is parsed', (_, body) => {
    const { problems } = readFile(fileOf('advice/one.md', headed('title: One', body)), 'advice');
    expect(problems.filter(({ code }) => code === 'too-large')).toMatchObject([{ line: 4, column: 1 }]);
    expect(problems.filter(({ code }) => code === 'prose' || code === 'heading')).toEqual([]);
  });
});

describe('a line of a message', () => {
  it('is cut around its place, however long the line of the file', () => {
    const { codes, print, ms } = told(SAMPLE[FILE].replace('alias: otter', `alias: ${'x'.repeat(200_000)}!`));
    expect(codes.length).toBeGreaterThan(0);
    for (const line of print.split('\n')) expect(line.length).toBeLessThan(2000);
    expect(ms).toBeLessThan(SOON_MS);
  });

  it('is cut where a key is long', () => {
    const { print } = told(headed(`? ${'k'.repeat(200_000)}\n: 1`));
    for (const line of print.split('\n')) expect(line.length).toBeLessThan(2000);
  });
});

describe('a file that was too long to be read', () => {
  it('is told of by its length, as one that was read', () => {
    const unread = { file: FILE, bytes: new Uint8Array(), link: 'no' as const, unreadBytes: 100 * 2 ** 20 };
    expect(readConsults([unread], known)).toMatchObject({
      stopped: ['otter'],
      problems: [{ code: 'too-large', found: '102400 kB', expected: 'at most 256 kB' }],
    });
  });
});
