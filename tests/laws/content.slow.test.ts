/** Laws of reading: whatever an author's file holds, reading it ends in values or in Problems that lie inside the file. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Kind } from '../../src/content/kind.ts';
import type { Problem } from '../../src/content/problem.ts';
import { problemText } from '../../src/content/problemText.ts';
import { readConsults } from '../../src/content/readConsults.ts';
import { readFile } from '../../src/content/readFile.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import type { SourceFile } from '../../src/content/source.ts';
import { fileOf, filesWith, SAMPLE, spoilt } from '../content/sample.ts';
import { NAUGHTY } from './naughty.ts';

const SEED = 20260302;
const kinds = fc.constantFrom<Kind>('exercise', 'advice', 'protocol', 'clinic', 'consult');
const OTTER = SAMPLE['consults/otter-r1.md'];
const BRIDGE = SAMPLE['exercises/bridge.md'];

function expectInside({ bytes }: SourceFile, problems: readonly Problem[]): void {
  const lines = new TextDecoder().decode(bytes).split(/\r?\n/);
  for (const problem of problems) {
    const line = lines[problem.line - 1];
    expect(line, JSON.stringify(problem)).toBeDefined();
    expect(problem.column).toBeGreaterThanOrEqual(1);
    expect(problem.column).toBeLessThanOrEqual((line ?? '').length + 1);
    expect(problemText(problem, line ?? null)).toContain('\nFix: ');
  }
}

function expectRead(file: SourceFile, kind: Kind): void {
  const reading = readFile(file, kind);
  expectInside(file, reading.problems);
  if (reading.value === null) expect(reading.problems.length).toBeGreaterThan(0);
}

describe('reading never throws, and every Problem lies inside its file', () => {
  it('for any bytes', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), kinds, (bytes, kind) => {
        expectRead({ file: 'exercises/any.md', bytes, link: 'no' }, kind);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  it('for any text between the hyphens and after them', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'binary', maxLength: 120 }),
        fc.string({ maxLength: 200 }),
        kinds,
        (head, body, kind) => {
          expectRead(fileOf('exercises/any.md', `---\n${head}\n---\n${body}`), kind);
        },
      ),
      { seed: SEED, numRuns: 300 },
    );
  });

  it('for text made of the signs of YAML and Markdown', () => {
    const signs = fc.constantFrom(
      ...'-:?[]{}#&*!|>\'"%@`,~<>()_=+\\ \n\t',
      'a',
      '1',
      '  ',
      '\n- ',
      '\n## ',
      ': ',
      '---\n',
    );
    fc.assert(
      fc.property(
        fc.array(signs, { maxLength: 60 }),
        fc.array(signs, { maxLength: 60 }),
        kinds,
        (head, body, kind) => {
          expectRead(fileOf('exercises/any.md', `---\n${head.join('')}\n---\n${body.join('')}`), kind);
        },
      ),
      { seed: SEED, numRuns: 500 },
    );
  });

  it('for a good file with a piece cut out, doubled or replaced', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...Object.entries(SAMPLE)),
        fc.nat(4000),
        fc.nat(40),
        fc.string({ unit: 'binary', maxLength: 6 }),
        kinds,
        ([file, text], from, length, by, kind) => {
          const at = from % text.length;
          expectRead(fileOf(file, text.slice(0, at) + by + text.slice(at + length)), kind);
        },
      ),
      { seed: SEED, numRuns: 400 },
    );
  });

  it.each(NAUGHTY)('for %j in a value, plain and quoted, in a key and in a body', (text) => {
    const texts = [
      OTTER.replace('clinician: M. Vale', () => `clinician: ${text}`),
      OTTER.replace('clinician: M. Vale', () => `clinician: ${JSON.stringify(text)}`),
      OTTER.replace('clinician: M. Vale', () => `clinician: M. Vale\n${JSON.stringify(text)}: 1`),
      OTTER.replace('Seen by video.', () => text),
    ];
    for (const each of texts) {
      const file = fileOf('consults/otter-r1.md', each);
      expectInside(file, readFile(file, 'consult').problems);
    }
    const card = fileOf(
      'exercises/bridge.md',
      BRIDGE.replace('Keep the pelvis level.', () => JSON.stringify(text)),
    );
    expectInside(card, readFile(card, 'exercise').problems);
  });
});

describe('reading is the same', () => {
  it('with CRLF as with LF, with and without byte order mark, in whatever order the files come', () => {
    const plain = readLibrary(filesWith());
    const windows = Object.fromEntries(
      Object.entries(SAMPLE).map(([file, text]) => [file, `\ufeff${text.replaceAll('\n', '\r\n')}`]),
    );
    const other = readLibrary(filesWith(windows).reverse());
    expect(plain.problems).toEqual([]);
    expect(other.problems).toEqual([]);
    expect(other.library).toEqual(plain.library);
    const consults = (files: readonly SourceFile[]) => readConsults(files, plain.known).consults;
    expect(consults(filesWith(windows))).toEqual(consults(filesWith()));
  });

  it('with CRLF, place by place', () => {
    const text = spoilt('consults/otter-r1.md', 'massKg: 68', 'massKg: 700').replace('Seen by', 'Seen `by`');
    const unix = readFile(fileOf('consults/otter-r1.md', text), 'consult');
    const windows = readFile(fileOf('consults/otter-r1.md', text.replaceAll('\n', '\r\n')), 'consult');
    expect(unix.problems.length).toBe(2);
    expect(windows.problems).toEqual(unix.problems);
  });
});

describe('a number is taken as written or not at all', () => {
  it('massKg between 30 and 250 arrives unchanged, every other is a Problem', () => {
    fc.assert(
      fc.property(fc.double({ min: -1000, max: 1000, noNaN: true }), (massKg) => {
        const text = spoilt('consults/otter-r1.md', 'massKg: 68', `massKg: ${massKg}`);
        const { value, problems } = readFile(fileOf('consults/otter-r1.md', text), 'consult');
        if (massKg >= 30 && massKg <= 250) expect(value?.massKg).toBe(massKg);
        else expect(problems.map(({ code }) => code)).toEqual(['out-of-range']);
      }),
      { seed: SEED, numRuns: 100 },
    );
  });
});
