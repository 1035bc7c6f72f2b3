/** The library that comes with the program is good, and stays so. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { lineFinder, problemText } from '../../src/content/problemText.ts';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { checkLibrary } from '../../src/lint/library.ts';
import { isoDate, type IsoDate } from '../../src/units/date.ts';
import { fileOf } from '../content/sample.ts';

const files = readdirSync('content', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.md'))
  .map((file) => fileOf(file.replaceAll('\\', '/'), readFileSync(`content/${file}`, 'utf8')));

// The day the cards were last looked through; from their next review on, `check` asks for it.
const DAY = isoDate('2026-11-25') as IsoDate;

describe('the shipped library', () => {
  it('has nothing that check warns of', () => {
    const { library, placeOf } = readLibrary(files);
    if (library === null) throw new Error('the shipped library must be without errors');
    const lineOf = lineFinder(files);
    const printed = checkLibrary(library, DAY, placeOf).map((problem) =>
      problemText(problem, lineOf(problem.file, problem.line)),
    );
    expect(printed.join('\n\n')).toBe('');
  });
});
