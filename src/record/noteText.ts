/** The plain note to paste into the clinic's own system. */
import type { Programme } from '../programme/programme.ts';

/** `note.txt`: the note's lines, a line feed after each. */
export function noteText({ record }: Programme): string {
  return record.note.map((line) => `${line}\n`).join('');
}
