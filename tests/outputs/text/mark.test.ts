/** One mark on everything that is made of one programme. */
import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { letterText } from '../../../src/outputs/text/letterText.ts';
import { marked } from '../../../src/outputs/text/mark.ts';
import { noteText } from '../../../src/outputs/text/noteText.ts';
import { recordJson } from '../../../src/outputs/text/recordJson.ts';
import { otter } from '../../fixtures/programme.ts';

const { mark } = marked(otter);

describe('the mark', () => {
  it('is the beginning of the hash of record.json without it', () => {
    const { mark: own, ...rest } = JSON.parse(recordJson(marked(otter))) as { mark: string };
    const text = `${JSON.stringify(rest, null, 2)}\n`;
    expect(own).toBe(mark);
    expect(createHash('sha256').update(text).digest('hex').slice(0, 8)).toBe(own);
  });

  it('does not change by being put on again', () => {
    expect(marked(marked(otter)).mark).toBe(mark);
  });

  it.each([
    ['a number', { ...otter, step: otter.step + 1 }],
    ['a sentence', { ...otter, opening: ['Another.'] }],
    ['a revision', { ...otter, revision: otter.revision + 1 }],
    ['a reason in the record', { ...otter, record: { ...otter.record, remarks: ['Another.'] } }],
  ])('is another one where %s is another', (_, other) => {
    expect(marked(other).mark).not.toBe(mark);
  });

  it('closes the last line of the note, which grows no line by it, and the letter', () => {
    const lines = noteText(marked(otter)).split('\n');
    expect(lines).toHaveLength(noteText(otter).split('\n').length);
    expect(lines.at(-2)).toBe(`${otter.record.note.at(-1)} Mark ${mark}.`);
    const letter = { id: 'letter', heading: 'End', parts: [] };
    expect(letterText(letter, marked(otter))).toBe(`End\n\nMark ${mark}\n`);
    expect(letterText(letter)).toBe('End\n');
  });
});
