/** What the leaflet's own rule says to an entry of the log; empty where it says nothing. */
import type { LogRow } from '../../content/log/columns.ts';
import { morningAnswer, painAnswer } from '../../messages/en/patient/inUse.ts';
import {
  ANSWERS,
  kmAnswer,
  runPainAnswer,
  satAnswer,
  sittingPainAnswer,
} from '../../messages/en/patient/answers.ts';
import type { PacedExercise, SheetInUse } from '../../programme/sheetInUse.ts';
import { morningDecision, painGate, type PainGate } from '../../scheduling/morning.ts';
import { addDays, type IsoDate } from '../../units/date.ts';

export interface Answer {
  readonly words: string;
  /** It sends to the easier numbers. */
  readonly easier: boolean;
}

export const NO_ANSWER: Answer = { words: '', easier: false };

/** `entries`: of one exercise the legs, each an entry; else one. `rows`: all of the log. */
export function answerTo(entries: readonly LogRow[], rows: readonly LogRow[], sheet: SheetInUse): Answer {
  const [first] = entries;
  if (first === undefined) return NO_ANSWER;
  if (first.kind === 'morning') return toMorning(first, rows, sheet);
  const gate = worstGate(entries, sheet);
  const words = [painWords(first.kind, gate), amountWords(entries, sheet)].filter((one) => one !== '');
  // Only where nothing else is said of the next time.
  const goesOn = gate === null || gate.gate.next === 'carry-on';
  if (words.length > 0 && goesOn && first.kind !== 'run' && wholeOf(entries) === 'part')
    words.push(ANSWERS.part);
  if (words.length === 0) return { words: doneWords(entries), easier: false };
  const isExercise = first.kind === 'session' || first.kind === 'between';
  return { words: words.join(' '), easier: isExercise && gate?.gate.next === 'ease-back' };
}

interface Pain {
  readonly pain: number;
  readonly gate: PainGate;
}

// Of the two legs the one that hurt more.
function worstGate(entries: readonly LogRow[], { rules }: SheetInUse): Pain | null {
  const pains = entries.flatMap(({ painDuring }) => painDuring ?? []);
  if (pains.length === 0) return null;
  const pain = Math.max(...pains);
  return { pain, gate: painGate(pain, rules.person, rules.pain) };
}

function painWords(kind: LogRow['kind'], worst: Pain | null): string {
  if (worst === null) return '';
  if (kind === 'run') return runPainAnswer(worst.pain, worst.gate);
  return (kind === 'sitting' ? sittingPainAnswer : painAnswer)(worst.pain, worst.gate);
}

function amountWords(entries: readonly LogRow[], sheet: SheetInUse): string {
  const [first] = entries;
  if (first === undefined) return '';
  const { kind, date, minutes, km, card } = first;
  if (kind === 'sitting') {
    const budget = [...sheet.sitting].reverse().find(({ from }) => from <= date) ?? sheet.sitting[0];
    return minutes === null || budget === undefined
      ? ''
      : satAnswer(minutes, budget.uprightMinutes, budget.hardMinutes);
  }
  if (kind === 'run') {
    const planned = sheet.days.find(({ on }) => on === date)?.runKm ?? null;
    return km === null || planned === null ? '' : kmAnswer(km, planned);
  }
  const paced = sheet.exercises.find((one) => one.card === card);
  return paced !== undefined && entries.some((entry) => isMore(entry, paced)) ? ANSWERS.morePlanned : '';
}

function isMore(entry: LogRow, paced: PacedExercise): boolean {
  const over = (done: number | null, planned: number | null) =>
    done !== null && planned !== null && done > planned;
  return (
    over(entry.sets, paced.sets) ||
    over(entry.repetitions, paced.repetitions) ||
    over(entry.seconds, paced.holdSeconds) ||
    over(entry.loadKg, paced.loadKg ?? 0)
  );
}

function doneWords(entries: readonly LogRow[]): string {
  const whole = wholeOf(entries);
  if (whole === null) return '';
  return whole === 'no' && entries[0]?.kind === 'run' ? ANSWERS.noRun : ANSWERS[whole];
}

/** Of legs of which one was done and the other was not, a part was. */
function wholeOf(entries: readonly LogRow[]): NonNullable<LogRow['done']> | null {
  const done = entries.flatMap((entry) => entry.done ?? []);
  const [first] = done;
  if (first === undefined) return null;
  return done.every((one) => one === first) ? first : 'part';
}

function toMorning({ morning, date }: LogRow, rows: readonly LogRow[], sheet: SheetInUse): Answer {
  if (morning === null) return NO_ANSWER;
  const { person, morning: rules } = sheet.rules;
  const decision = morningDecision(
    morning,
    person.usualPain,
    morningsBefore(rows, sheet.startOn, date),
    rules,
  );
  const easier = decision.answer === 'ease-back' || decision.answer === 'contact';
  return { words: morningAnswer(morning, decision), easier };
}

/** The scores from the start to the day before, null where there is none. */
function morningsBefore(rows: readonly LogRow[], startOn: IsoDate, date: string): (number | null)[] {
  const scores = new Map(rows.map((row) => [row.kind === 'morning' ? row.date : '', row.morning]));
  const mornings: (number | null)[] = [];
  for (let on = startOn; on < date; on = addDays(on, 1)) mornings.push(scores.get(on) ?? null);
  return mornings;
}
