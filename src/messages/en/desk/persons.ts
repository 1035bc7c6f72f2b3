/** The persons of a folder, a line each. */

export const PERSON_WORDS = {
  title: 'Persons in this folder',
  open: 'Open a folder',
  isThere: 'This desk has the folder that "loadleaf serve" was started on.',
  none: 'No consult lies in that folder: they are called by alias and revision, such as otter-r1.md.',
} as const;

/** Before somebody else is laid on the desk. */
export function notSavedYetText(file: string): string {
  return `${file} or its log is not saved yet: save it, or clear this desk first.`;
}

interface Line {
  readonly state: 'made' | 'stopped' | 'draft';
  readonly stage: { readonly chosen: string; readonly step: number } | null;
  readonly isEnded: boolean;
  readonly reviewOn: string | null;
  readonly lastLog: string | null;
}

/**
 * `line`: null until it is worked out.
 * @example personText('otter', 1, { state: 'made', stage: { chosen: '2', step: 1 }, isEnded: false, reviewOn: '2026-12-15', lastLog: null }, '2026-12-20')
 * // => 'otter, revision 1, stage 2, step 1, review 2026-12-15, due, no log'
 */
export function personText(alias: string, revision: number, line: Line | null, today: string): string {
  const head = `${alias}, revision ${revision}`;
  return line === null ? head : [head, standing(line), ...review(line, today), log(line)].join(', ');
}

function standing({ state, stage, isEnded }: Line): string {
  if (state === 'draft') return 'a draft';
  if (stage === null) return 'no programme from it';
  if (isEnded) return 'treatment ended';
  return `${stage.chosen === 'keepGoing' ? 'keep going' : `stage ${stage.chosen}`}, step ${stage.step}`;
}

function review({ reviewOn, isEnded }: Line, today: string): readonly string[] {
  if (reviewOn === null || isEnded) return [];
  return [`review ${reviewOn}`, ...(reviewOn <= today ? ['due'] : [])];
}

function log({ lastLog }: Line): string {
  return lastLog === null ? 'no log' : `last log ${lastLog}`;
}
