/** What stands against a consult of which no programme is made: its own Problems, and what its screen stops. */
import type { Said } from '../../content/readScreen.ts';
import { errorAt, sortProblems, type Problem } from '../../content/problem.ts';
import type { ConsultsReading } from '../../content/readConsults.ts';
import { withdrawals } from '../../decisions/screen/withdrawal.ts';
import { notAskedYet, STILL_DRAFT } from '../../messages/en/desk/review.ts';
import { wordedStops, wordedWithdrawal } from '../../programme/worded.ts';
import type { Refusal } from '../../units/refusal.ts';
import type { Bench } from './bench.ts';

/** Of one person. */
export interface Refusing {
  readonly alias: string;
  readonly reading: ConsultsReading;
  readonly clinic: Bench['known']['clinic'];
  readonly asProblem: (refusal: Refusal) => Problem;
}

/** A draft is checked and never built: what it leaves open is still to be asked, and that it is one comes last of all. */
export function draftProblems(
  own: string,
  { drafts, draftProblems: all }: ConsultsReading,
): readonly Problem[] {
  const problems = all.filter(({ file }) => file === own).map(asMissing);
  const top = { file: own, line: 1, column: 1 };
  const open = drafts.filter(({ file }) => file === own).flatMap(({ said }) => notAsked(said));
  const still = problems.length > 0 ? [] : [errorAt(top, 'missing-key', STILL_DRAFT)];
  return [...problems, ...open.map((path) => errorAt(top, 'missing-key', notAskedYet(path))), ...still];
}

/** The next revision's draft has the keys of what must be asked again, and nothing in them. */
function asMissing(problem: Problem): Problem {
  return problem.code === 'wrong-type' && problem.found === 'empty'
    ? { ...problem, code: 'missing-key' }
    : problem;
}

/** Where no item was asked, the screen as a whole. */
function notAsked({ screen }: Said): readonly string[] {
  if (screen === null) return [];
  const items = Object.entries(screen).filter(([, answer]) => answer === 'notAsked');
  return items.length === Object.keys(screen).length ? ['screen'] : items.map(([item]) => `screen.${item}`);
}

/** A yes that stops every programme, in a draft or in a file whose keys cannot be read: its lines say so all the same. */
export function withdrawnProblems({ alias, reading, clinic, asProblem }: Refusing): readonly Problem[] {
  const inUse = new Map(reading.current.map((one) => [one.alias, one.revision]));
  return withdrawals([...reading.drafts, ...reading.unreadable], inUse, clinic)
    .filter((one) => one.alias === alias)
    .map(({ refusal }) => asProblem(wordedWithdrawal(refusal)));
}

export function problemsOf({ alias, reading, clinic, asProblem }: Refusing): readonly Problem[] {
  const own = [...reading.problems, ...reading.draftProblems].filter(
    ({ file }) => (reading.aliases.get(file) ?? '') === alias,
  );
  const screens = reading.stoppedScreens.get(alias) ?? [];
  const all = screens.flatMap((screen) => (screen === null ? [] : wordedStops(screen, clinic)));
  // Of a form that is on its way most items were not asked yet; what was answered yes is told at once.
  const told = own.every(isMissing) ? all.filter(({ isYes }) => isYes) : all;
  return sortProblems([...own, ...told.map(({ refusal }) => asProblem(refusal))]);
}

/** A key that is not there yet. */
export function isMissing({ code, path, found }: Problem): boolean {
  return code === 'missing-key' || code === 'no-front-matter' || (path === 'tests' && found === '[]');
}
