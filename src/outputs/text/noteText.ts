/** The plain note to paste into the clinic's own system. */
import { labelsOf } from '../../messages/en/labels.ts';
import type { Programme } from '../../programme/programme.ts';

/** `note.txt`: the note's lines, a line feed after each; the last one ends with the mark of the leaflet it speaks of. */
export function noteText({ record, language, mark }: Programme): string {
  const ending = mark === undefined ? '' : ` ${labelsOf(language).leaflet.mark} ${mark}.`;
  return `${record.note.join('\n')}${ending}\n`;
}
