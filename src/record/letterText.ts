/** The letter at the end of treatment as plain text, to print or to paste. */
import type { Part, Section } from '../programme/programme.ts';

/** `letter.txt`: heading and parts, a blank line between them. */
export function letterText({ heading, parts }: Section): string {
  return `${[heading, ...parts.map(partText)].join('\n\n')}\n`;
}

function partText(part: Part): string {
  if (part.kind === 'paragraph') return part.text;
  if (part.kind === 'list')
    return part.entries.map((entry, at) => `${part.ordered ? `${at + 1}.` : '-'} ${entry}`).join('\n');
  const { caption, columns, rows } = part.table;
  return [
    caption,
    ...rows.map((row) => row.map((text, at) => `${columns[at] ?? ''}: ${text}`).join('; ')),
  ].join('\n');
}
