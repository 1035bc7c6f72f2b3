/** The plain note to paste into the clinic's own system. */
import { madeText, type Made } from '../../messages/en/clinician/made.ts';
import { labelsOf } from '../../messages/en/labels.ts';
import type { Programme } from '../../programme/programme.ts';

/**
 * `note.txt`: the note's lines, a line feed after each; the last one ends with what was made of the programme (`made`, left
 * out where nothing was) and the mark of the leaflet it speaks of.
 */
export function noteText({ record, language, mark }: Programme, made?: Made): string {
  const told = made === undefined ? '' : ` ${madeText(made)}`;
  const ending = mark === undefined ? '' : ` ${labelsOf(language).leaflet.mark} ${mark}.`;
  return `${record.note.join('\n')}${told}${ending}\n`;
}
