/** The letter at the end of treatment as plain text, to print or to paste. */
import { labelsOf } from '../../messages/en/labels.ts';
import type { Programme } from '../../programme/programme.ts';
import type { Part, Section } from '../../messages/shapes.ts';

/** `letter.txt`: heading and parts, a blank line between them; last the mark of the make it belongs to. */
export function letterText(
  { heading, parts }: Section,
  { mark, language }: Pick<Programme, 'mark' | 'language'> = { language: 'en' },
): string {
  const last = mark === undefined ? [] : [`${labelsOf(language).leaflet.mark} ${mark}`];
  return `${[heading, ...parts.map(partText), ...last].join('\n\n')}\n`;
}

/** The first cell heads the row; what was not recorded is left out beside it. */
function rowText([head = '', ...cells]: readonly string[], [, ...columns]: readonly string[]): string {
  const texts = cells.flatMap((text, at) => (text === '-' ? [] : [`${asWithin(columns[at] ?? '')} ${text}`]));
  return [head, ...texts].join('; ');
}

// A column's heading within a sentence; an abbreviation keeps its capitals.
function asWithin(heading: string): string {
  return /^[A-Z][a-z]/.test(heading) ? heading.charAt(0).toLowerCase() + heading.slice(1) : heading;
}

function partText(part: Part): string {
  if (part.kind === 'paragraph') return part.text;
  if (part.kind === 'list')
    return part.entries.map((entry, at) => `${part.ordered ? `${at + 1}.` : '-'} ${entry}`).join('\n');
  const { caption, columns, rows } = part.table;
  return [`${caption}:`, ...rows.map((row) => `- ${rowText(row, columns)}`)].join('\n');
}
