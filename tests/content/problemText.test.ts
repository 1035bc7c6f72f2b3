import { describe, expect, it } from 'vitest';
import { errorAt, sortProblems, type Problem } from '../../src/content/problem.ts';
import { lineFinder, problemText, type ProblemPaint } from '../../src/content/problemText.ts';
import { fileOf } from './sample.ts';

function at(line: number, column: number, file = 'a.md'): Problem {
  return errorAt({ file, line, column }, 'wrong-word', {
    path: 'k',
    found: 'x',
    expected: 'y',
    fix: 'write y',
  });
}

/** The two lines with the excerpt and its caret. */
function excerpt(line: string, column: number): string {
  return problemText(at(1, column), line).split('\n').slice(1, 3).join('\n');
}

describe('problemText', () => {
  it('keeps the caret under the place behind tabs', () => {
    expect(excerpt('\tk: x', 5)).toBe('        k: x\n           ^');
  });

  it('keeps it behind wide and combining characters, and behind those of two units', () => {
    expect(excerpt('語: x', 4)).toBe('    語: x\n        ^');
    expect(excerpt('e\u0301: x', 5)).toBe('    e\u0301: x\n       ^');
    expect(excerpt('🦦: x', 5)).toBe('    🦦: x\n        ^');
  });

  it('puts it behind the last character where something is missing', () => {
    expect(excerpt('k:', 3)).toBe('    k:\n      ^');
  });

  it('cuts a long line around the place', () => {
    const line = `${'a'.repeat(500)}X${'b'.repeat(500)}`;
    const [text = '', caret = ''] = excerpt(line, 501).split('\n');
    expect(text.length).toBeLessThanOrEqual(4 + 102);
    expect(text.startsWith('    …a')).toBe(true);
    expect(text.endsWith('b…')).toBe(true);
    expect(text[caret.indexOf('^')]).toBe('X');
  });

  it('prints no character that a terminal would obey', () => {
    const text = problemText(at(1, 3), 'k \u001b[31m\u202e\u0007');
    expect(text).toContain('k <U+001B>[31m<U+202E><U+0007>');
  });

  it('shows no excerpt where there is no line', () => {
    expect(problemText(at(1, 1), null)).toBe('a.md:1:1: error wrong-word k is x; must be y.\nFix: write y.');
  });

  it('paints severity, excerpt and caret, and nothing else', () => {
    const paint: ProblemPaint = {
      severity: (text, severity) => `<${severity}>${text}</>`,
      caret: (text) => `<caret>${text}</>`,
      quiet: (text) => `<quiet>${text}</>`,
    };
    expect(problemText(at(1, 4), 'k: x', paint).split('\n')).toEqual([
      'a.md:1:4: <error>error</> wrong-word k is x; must be y.',
      '<quiet>    k: x</>',
      '       <caret>^</>',
      'Fix: write y.',
    ]);
  });
});

describe('lineFinder', () => {
  it('finds lines by number, and null where there is none', () => {
    const lineOf = lineFinder([fileOf('a.md', '\ufeffone\r\ntwo')]);
    expect([lineOf('a.md', 1), lineOf('a.md', 2), lineOf('a.md', 3), lineOf('b.md', 1)]).toEqual([
      'one',
      'two',
      null,
      null,
    ]);
  });
});

describe('sortProblems', () => {
  it('sorts by file, line and column as numbers', () => {
    const sorted = sortProblems([at(10, 1), at(2, 11), at(2, 2), at(1, 1, 'B.md'), at(1, 1, 'a-b.md')]);
    expect(sorted.map(({ file, line, column }) => `${file}:${line}:${column}`)).toEqual([
      'B.md:1:1',
      'a-b.md:1:1',
      'a.md:2:2',
      'a.md:2:11',
      'a.md:10:1',
    ]);
  });
});

describe('a long line', () => {
  it('is looked at around the place only, and keeps its caret there', () => {
    const line = `${'🦦'.repeat(50_000)}X${'b'.repeat(50_000)}`;
    const [text = '', caret = ''] = excerpt(line, 100_001).split('\n');
    expect(text.startsWith('    …🦦')).toBe(true);
    expect(text.endsWith('b…')).toBe(true);
    // An otter takes two columns of the screen and two units of the text.
    expect(text[caret.indexOf('^')]).toBe('X');
    const before = performance.now();
    for (let time = 0; time < 50; time += 1) excerpt('x'.repeat(250_000), 125_000);
    expect(performance.now() - before).toBeLessThan(1000);
  });

  it('shows what a name or a value would do to a terminal', () => {
    const problem = {
      ...at(1, 1, 'a\u001b[2J\nb.md'),
      path: 'k\u202e',
      found: 'x\u0007',
      fix: 'write \u009b1m',
    };
    expect(problemText(problem, null)).toBe(
      'a<U+001B>[2J<U+000A>b.md:1:1: error wrong-word k<U+202E> is x<U+0007>; must be y.\nFix: write <U+009B>1m.',
    );
  });
});
