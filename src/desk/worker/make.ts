/** From a consult's text to its programme, or to the Problems that stand against it: as `build` does, in the same order. */
import { FOLDERS } from '../../content/kind.ts';
import { readLogs } from '../../content/log/readLogs.ts';
import { firstPlace, problemOf } from '../../content/place.ts';
import { sortProblems, type Problem } from '../../content/problem.ts';
import { readConsults, type ConsultsReading } from '../../content/readConsults.ts';
import { decide, type Decided } from '../../decisions/decide.ts';
import { logAlarms } from '../../decisions/screen/alarms.ts';
import { photosTooLarge } from '../../outputs/html/photosTooLarge.ts';
import { letterProblems } from '../../outputs/pdf/letterProblems.ts';
import { letterRefusals } from '../../outputs/pdf/letters.ts';
import { marked } from '../../outputs/text/mark.ts';
import { assembleFrom, startOf } from '../../programme/assemble.ts';
import { beforeOf } from '../../programme/revisions.ts';
import type { Programme } from '../../programme/programme.ts';
import { wordedAlarm } from '../../programme/worded.ts';
import type { Refusal } from '../../units/refusal.ts';
import { sourceOf, type DeskFile } from '../deskData.ts';
import type { Bench } from './bench.ts';
import { draftProblems, problemsOf, withdrawnProblems, type Refusing } from './refused.ts';

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

export function makeSheet(sheet: Sheet, bench: Bench): Made {
  const steps = makeSteps(sheet, bench);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
  }
}

/** The same in steps of some milliseconds, so that it can be given up for a newer text. */
export function* makeSteps(
  { name, text, others }: Sheet,
  bench: Bench,
): Generator<undefined, Made, undefined> {
  const own = `${FOLDERS.consult}/${name}`;
  const files = [{ file: own, text }, ...others.filter(({ file }) => file !== own)].map(sourceOf);
  const reading = readConsults(files, bench.known);
  const alias = reading.aliases.get(own) ?? '';
  const asProblem = problemMaker(reading, bench);
  const refused: Refusing = { alias, reading, clinic: bench.known.clinic, asProblem };
  const newer = withdrawnProblems(refused);
  const isDraft = reading.drafts.some(({ file }) => file === own);
  if (isDraft) return { problems: sortProblems([...draftProblems(own, reading), ...newer]) };
  const consult = reading.current.find((one) => one.alias === alias);
  if (consult === undefined) return { problems: sortProblems([...problemsOf(refused), ...newer]) };
  if (newer.length > 0) return { problems: newer };
  const { logs } = readLogs(files, bench.known, new Set([alias]));
  const alarms = logAlarms(logs, [consult], bench.known.clinic);
  if (alarms.length > 0) return { problems: sortProblems(alarms.map(wordedAlarm)) };
  yield;
  const { workshop } = bench;
  const before = beforeOf(consult, { consults: reading.consults, logs }, workshop);
  const { earlier, review } = startOf(consult, before, workshop);
  yield;
  const decided = decide(consult, earlier, workshop);
  yield;
  const made = assembleFrom(consult, decided, { previous: before.previous, review }, workshop);
  if ('refusals' in made || 'refusals' in decided)
    return { problems: sortProblems(('refusals' in made ? made.refusals : []).map(asProblem)) };
  yield;
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

function problemMaker(reading: ConsultsReading, { placeOf }: Bench): (refusal: Refusal) => Problem {
  const place = firstPlace(placeOf, reading.placeOf);
  return (refusal) =>
    problemOf(refusal, (kind, ...where) => (kind === 'consult' ? reading.placeOf : place)(kind, ...where));
}
