import { describe, expect, it } from 'vitest';
import { letterText } from '../../../src/outputs/text/letterText.ts';
import { noteText } from '../../../src/outputs/text/noteText.ts';
import { recordJson } from '../../../src/outputs/text/recordJson.ts';
import type { Programme } from '../../../src/programme/programme.ts';
import { otter } from '../../fixtures/programme.ts';

describe('record.json', () => {
  const text = recordJson(otter);
  const read = JSON.parse(text) as Programme;

  it('is the whole programme: nothing but the last digits of its floats is lost', () => {
    const rounded = JSON.parse(
      JSON.stringify(otter, (_, value: unknown) =>
        typeof value === 'number' ? Number(value.toFixed(4)) + 0 : value,
      ),
    ) as Programme;
    expect(read).toEqual(rounded);
  });

  it('keeps every cell as it is', () => {
    const cells = (one: Programme) =>
      one.steps.flatMap(({ prescriptions }) => prescriptions.map((p) => p.cells));
    expect(cells(read)).toEqual(JSON.parse(JSON.stringify(cells(otter))));
  });

  it('does not depend on the order in which keys were set', () => {
    const turned = Object.fromEntries(Object.entries(otter).reverse()) as unknown as Programme;
    expect(recordJson(turned)).toBe(text);
  });

  it('has no number of more than four decimals, and ends with a line feed', () => {
    expect(text).not.toMatch(/\d\.\d{5}/);
    expect(text).not.toMatch(/-0[,\n]/);
    expect(text.endsWith('}\n')).toBe(true);
  });

  it.each([
    // A posture's metres: a tenth of a millimetre is kept, what is smaller is not.
    [0.12344, '0.1234'],
    [0.12346, '0.1235'],
    [1.00004, '1'],
    [-0.00004, '0'],
    [2.5, '2.5'],
  ])('writes %d as %s', (number, text) => {
    expect(recordJson({ ...otter, step: number })).toMatch(
      new RegExp(`"step": ${text.replace('.', '\\.')},?\n`),
    );
  });

  it('refuses a number that is none', () => {
    expect(() => recordJson({ ...otter, step: Number.NaN })).toThrow(/NaN in a programme/);
  });
});

describe('note.txt', () => {
  it('is the lines of the note', () => {
    expect(noteText(otter).split('\n')).toEqual([...otter.record.note, '']);
  });

  it('has the 12 to 15 lines that are pasted', () => {
    const lines = noteText(otter).trim().split('\n').length;
    expect(lines).toBeGreaterThanOrEqual(12);
    expect(lines).toBeLessThanOrEqual(15);
  });
});

describe('letter.txt', () => {
  it('is the letter part by part, tables a line a row', () => {
    const letter = {
      id: 'letter',
      heading: 'End of treatment: stoat',
      parts: [
        { kind: 'paragraph', text: 'Treatment ends today.', weight: 'normal' },
        {
          kind: 'table',
          table: {
            caption: 'Scores',
            columns: ['On', 'Found', 'VISA-H'],
            rows: [
              ['1 June', '2 % behind', '92'],
              ['1 July', '-', '95'],
            ],
          },
        },
        { kind: 'list', ordered: false, entries: ['Send back: pain that rises.'] },
      ],
    } as const;
    expect(letterText(letter)).toBe(
      'End of treatment: stoat\n\nTreatment ends today.\n\nScores:\n- 1 June; found 2 % behind; VISA-H 92\n- 1 July; VISA-H 95\n\n- Send back: pain that rises.\n',
    );
  });
});
