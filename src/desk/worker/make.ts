/** From a consult's text to its programme, or to the Problems that stand against it: as `build` does, in the same order. */
import { FOLDERS } from '../../content/kind.ts';
import { readLogs } from '../../content/log/readLogs.ts';
import { firstPlace, problemOf } from '../../content/place.ts';
import { errorAt, sortProblems, type Problem } from '../../content/problem.ts';
import { readConsults, type ConsultsReading } from '../../content/readConsults.ts';
import { decide, type Decided } from '../../decisions/decide.ts';
import { logAlarms } from '../../decisions/screen/alarms.ts';
import { screenEffects } from '../../decisions/screen/screen.ts';
import { photosTooLarge } from '../../outputs/html/photosTooLarge.ts';
import { letterProblems } from '../../outputs/pdf/letterProblems.ts';
import { letterRefusals } from '../../outputs/pdf/letters.ts';
import { STILL_DRAFT } from '../../messages/en/desk/review.ts';
import { marked } from '../../outputs/text/mark.ts';
import { assembleFrom, startOf } from '../../programme/assemble.ts';
import { beforeOf } from '../../programme/revisions.ts';
import type { Programme } from '../../programme/programme.ts';
import { wordedAlarm, wordedStop } from '../../programme/worded.ts';
import type { Refusal } from '../../units/refusal.ts';
import { sourceOf, type DeskFile } from '../deskData.ts';
import type { Bench } from './bench.ts';

/** The consult in hand and the other revisions of that person. */
export interface Sheet {
  /** Its name in the folder, without the folder. */
  readonly name: string;
  readonly text: string;
  readonly others: readonly DeskFile[];
}

export type Made =
  | { readonly programme: Programme & { readonly mark: string }; readonly decided: Decided }
  | { readonly problems: readonly Problem[] };

export function makeSheet({ name, text, others }: Sheet, bench: Bench): Made {
  const own = `${FOLDERS.consult}/${name}`;
  const files = [{ file: own, text }, ...others.filter(({ file }) => file !== own)].map(sourceOf);
  const reading = readConsults(files, bench.known);
  const alias = reading.aliases.get(own) ?? '';
  const asProblem = problemMaker(reading, bench);
  const isDraft = reading.drafts.some(({ file }) => file === own);
  if (isDraft) return { problems: draftProblems(own, reading) };
  const consult = reading.current.find((one) => one.alias === alias);
  if (consult === undefined) return { problems: problemsOf(alias, reading, bench, asProblem) };
  const { logs } = readLogs(files, bench.known, new Set([alias]));
  const alarms = logAlarms(logs, [consult], bench.known.clinic);
  if (alarms.length > 0) return { problems: sortProblems(alarms.map(wordedAlarm)) };
  const { workshop } = bench;
  const before = beforeOf(consult, { consults: reading.consults, logs }, workshop);
  const { earlier, review } = startOf(consult, before, workshop);
  const decided = decide(consult, earlier, workshop);
  const made = assembleFrom(consult, decided, { previous: before.previous, review }, workshop);
  if ('refusals' in made || 'refusals' in decided)
    return { problems: sortProblems(('refusals' in made ? made.refusals : []).map(asProblem)) };
  const { programme } = made;
  const photos = photosTooLarge(programme, (card) => bench.photoBytes[card] ?? 0, bench.library.clinic);
  if (photos !== null) return { problems: [asProblem(photos)] };
  const letters = letterProblems(letterRefusals(programme, bench.letters), {
    files: [...bench.files, ...files],
    placeOf: firstPlace(bench.placeOf, reading.placeOf),
    asProblem,
  });
  return letters.length > 0 ? { problems: letters } : { programme: marked(programme), decided };
}

/** A draft is checked and never built; that it is one stands against it last of all. */
function draftProblems(own: string, { draftProblems: all }: ConsultsReading): readonly Problem[] {
  const problems = all.filter(({ file }) => file === own);
  return problems.length > 0
    ? problems
    : [errorAt({ file: own, line: 1, column: 1 }, 'missing-key', STILL_DRAFT)];
}

function problemMaker(reading: ConsultsReading, { placeOf }: Bench): (refusal: Refusal) => Problem {
  const place = firstPlace(placeOf, reading.placeOf);
  return (refusal) =>
    problemOf(refusal, (kind, ...where) => (kind === 'consult' ? reading.placeOf : place)(kind, ...where));
}

function problemsOf(
  alias: string,
  reading: ConsultsReading,
  { known }: Bench,
  asProblem: (refusal: Refusal) => Problem,
): readonly Problem[] {
  const own = [...reading.problems, ...reading.draftProblems].filter(
    ({ file }) => (reading.aliases.get(file) ?? '') === alias,
  );
  const all = stops(alias, reading, known.clinic);
  // Of a form that is on its way most items were not asked yet; what was answered yes is told at once.
  const told = own.every(isMissing) ? all.filter(({ isYes }) => isYes) : all;
  return sortProblems([...own, ...told.map(({ refusal }) => asProblem(refusal))]);
}

/** A key that is not there yet. */
export function isMissing({ code, path, expected }: Problem): boolean {
  return (
    code === 'missing-key' ||
    code === 'no-front-matter' ||
    (path === 'tests' && expected.startsWith('at least'))
  );
}

interface Stop {
  readonly refusal: Refusal;
  readonly isYes: boolean;
}

/** What of the screen stops every programme, whatever else is still to be written. */
function stops(
  alias: string,
  { stoppedScreens }: ConsultsReading,
  clinic: Bench['known']['clinic'],
): readonly Stop[] {
  return (stoppedScreens.get(alias) ?? []).flatMap((screen) => {
    if (screen === null) return [];
    const effects = screenEffects(screen, clinic ?? { emergency: {} });
    if (!('refusals' in effects)) return [];
    const yes = Object.entries(screen.screen).flatMap(([item, answer]) => (answer === 'yes' ? [item] : []));
    return effects.refusals
      .map(wordedStop)
      .map((refusal) => ({ refusal, isYes: yes.includes(String(refusal.path[1])) }));
  });
}
