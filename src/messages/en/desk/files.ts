/** What is said where files are opened and saved at the desk. */

export function savedText(file: string): string {
  return `${file} is saved.`;
}

/** @example tooLargeText('a.csv', 300 * 1024, 256 * 1024) // => 'a.csv has 300 kB, and at most 256 kB are read. Nothing was opened.' */
export function tooLargeText(file: string, bytes: number, most: number): string {
  return `${file} has ${Math.ceil(bytes / 1024)} kB, and at most ${most / 1024} kB are read. Nothing was opened.`;
}

/** Where a consult is longer than any is. */
export function consultTooLargeText(file: string, bytes: number, most: number): string {
  return `${file} is ${Math.ceil(bytes / 1024)} kB; a consult has at most ${most / 1024} kB. Nothing was opened.`;
}

/** `problem`: null where nothing more is known. */
export function notOpenedText(
  file: string,
  problem: { readonly found: string; readonly expected: string; readonly fix: string } | null,
): string {
  const { found, expected, fix } = problem ?? { found: 'no text', expected: 'text', fix: '' };
  return `${file} was not opened: ${found}; must be ${expected}. ${fix}`;
}

/** @example laidText('otter-r1.md') // => 'otter-r1.md lies on the desk.' */
export function laidText(file: string): string {
  return `${file} lies on the desk.`;
}

export function notSavedText(file: string, why: string): string {
  return `${file} could not be saved: ${why}`;
}

/** @example earlierText('otter', 2) // => 'Revision 2 goes on from the one before: open otter-r1.md and those before it as well.' */
export function earlierText(alias: string, revision: number): string {
  return `Revision ${revision} goes on from the one before: open ${alias}-r${revision - 1}.md and those before it as well.`;
}

/** A log has one line for each thing done: the other one's lines are put in by opening it. */
export function logClashText(file: string): string {
  return `${file} was changed meanwhile. Nothing was written: open it here, which adds its lines to these, and save again.`;
}

export const FILE_WORDS = {
  bar: 'Consult file',
  open: 'Open a consult',
  save: 'Save',
  asFile: 'Consult as a file',
  undo: 'Undo',
  redo: 'Redo',
  clear: 'Clear this desk',
  cleared: 'The desk is clear.',
  isSaved: ', saved',
  isNotSaved: ', not saved',
  clash: 'Changed meanwhile',
  clashLead: 'The file was changed meanwhile. Nothing was written.',
  there: 'there',
  here: 'here',
  overwrite: 'Write mine over it',
  takeTheirs: 'Take the other one',
  leaveBoth: 'Leave both',
} as const;
