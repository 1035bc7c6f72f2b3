/** RFC 4180 (2005), the five examples of section 2, and sixty random texts, against the reader of the standard library of Python [read]. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { csvLines, type Separator } from '../../src/content/log/csvLines.ts';

interface Reference {
  readonly reader: string;
  readonly cases: readonly {
    readonly text: string;
    readonly separator: Separator;
    readonly cells: readonly (readonly string[])[];
  }[];
}
const { reader, cases } = JSON.parse(readFileSync('tests/published/csv-python.json', 'utf8')) as Reference;

describe(`cells of a text, as ${reader} reads them`, () => {
  it.each(cases.map((one, index) => [index, one] as const))('text %i', (_, { text, separator, cells }) => {
    const lines = csvLines(text, separator);
    expect(lines.map((line) => line.cells.map((cell) => cell.text))).toEqual(cells);
    expect(lines.every(({ broken }) => broken === null)).toBe(true);
    for (const { cells: own } of lines)
      for (const { offset, quoted } of own) expect(text[offset] === '"').toBe(quoted);
  });
});
