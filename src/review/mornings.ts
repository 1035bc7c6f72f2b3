/** The mornings of the period, each judged as the leaflet told the person to (house rules 5). */
import type { LogEntry } from '../content/log/log.ts';
import { morningBands, morningDecision, type MorningDecision } from '../scheduling/morning.ts';
import { addDays, daysBetween, type IsoDate } from '../units/date.ts';
import type { Because } from './terms.ts';
import type { Period } from './facts.ts';

export interface Morning {
  readonly on: IsoDate;
  /** The worst of the day; null where none was written down. */
  readonly score: number | null;
  /** Null without a score. */
  readonly decision: MorningDecision | null;
}

/** Every day from the start to the day before the review, and that day itself where it has a score. */
export function morningsOf(period: Period): readonly Morning[] {
  return judged(scoresOf(period), period);
}

/** The same with each unwritten morning as bad as the protocol takes it for: what is earned by these is earned whatever it was. */
export function worstMorningsOf(period: Period): readonly Morning[] {
  const { unwrittenCheckAs } = period.protocol.goingOn;
  return judged(
    scoresOf(period).map((score) => score ?? unwrittenCheckAs.value),
    period,
  );
}

function scoresOf({ entries, from, until }: Period): readonly (number | null)[] {
  const scores = new Map<IsoDate, number>();
  for (const { kind, date, morning } of entries)
    if (kind === 'morning' && morning !== null) scores.set(date, Math.max(morning, scores.get(date) ?? 0));
  const days = daysBetween(from, until) + (scores.has(until) ? 1 : 0);
  return Array.from({ length: Math.max(0, days) }, (_, index) => scores.get(addDays(from, index)) ?? null);
}

function judged(series: readonly (number | null)[], { from, consult, protocol }: Period): readonly Morning[] {
  const { usualMorningPain: usual } = consult;
  return series.map((score, index) => ({
    on: addDays(from, index),
    score,
    decision:
      score === null ? null : morningDecision(score, usual, series.slice(0, index), protocol.morningCheck),
  }));
}

export interface MorningsSaid {
  /** What the last morning that was written down asks for. */
  readonly now: Because | null;
  /** The last morning that asked for less, where a later one no longer does. */
  readonly badUntil: IsoDate | null;
  /** The last morning that asked for less, or ended two weeks above usual: what was done before it earns nothing. */
  readonly unsettledUntil: IsoDate | null;
  /** Bars moving on without asking for less. */
  readonly bars: readonly Because[];
}

/** What the mornings as a whole say. */
export function morningsSaid(mornings: readonly Morning[], period: Period): MorningsSaid {
  const last = mornings.findLast(({ decision }) => decision !== null);
  const above = daysAboveUsual(mornings, period);
  const bad = mornings.findLast(({ decision }) => isBad(decision));
  return {
    now: last === undefined || last.decision === null ? null : becauseOf(last.decision, last.on, period),
    badUntil: bad === undefined || bad === last ? null : bad.on,
    unsettledUntil: mornings.findLast(({ on, decision }) => isBad(decision) || above.has(on))?.on ?? null,
    bars: aboveUsual(mornings, above, period),
  };
}

function isBad(decision: MorningDecision | null): boolean {
  return decision?.answer === 'ease-back' || decision?.answer === 'contact';
}

const MOVE_OF = {
  'carry-on': 'moveOn',
  'same-again': 'stay',
  'ease-back': 'easeBack',
  contact: 'beSeen',
} as const;

function becauseOf({ answer, because }: MorningDecision, on: IsoDate, period: Period): Because {
  const [first] = because;
  const code = first?.code ?? 'within-usual';
  return {
    rule: code,
    move: MOVE_OF[answer],
    inputs: first?.inputs ?? {},
    source: { cite: 'house rules 5', mark: first?.mark ?? 'choice' },
    entries: morningEntries(period, addDays(on, 1 - daysShown(code, period)), on),
  };
}

// As many mornings as the rule looks at.
function daysShown(code: string, { protocol }: Period): number {
  const { contactAfterDays, contactWhenRisingDays } = protocol.morningCheck;
  if (code === 'rising') return contactWhenRisingDays.value;
  if (code === 'not-settled') return contactAfterDays.value;
  return code === 'over-usual-twice' ? 2 : 1;
}

export function morningEntries({ entries }: Period, from: IsoDate, to: IsoDate): readonly LogEntry[] {
  return entries.filter(({ kind, date }) => kind === 'morning' && date >= from && date <= to);
}

function aboveUsual(mornings: readonly Morning[], above: ReadonlySet<IsoDate>, period: Period): Because[] {
  const on = mornings.at(-1)?.on;
  if (on === undefined || !above.has(on)) return [];
  const { contactWhenRisingDays, carryOnOver } = period.protocol.morningCheck;
  const days = contactWhenRisingDays.value;
  return [
    {
      rule: 'above-usual',
      move: 'stay',
      inputs: { days, usual: period.consult.usualMorningPain, over: carryOnOver.value },
      source: { cite: contactWhenRisingDays.cite ?? 'house rules 5', mark: contactWhenRisingDays.mark },
      entries: morningEntries(period, addDays(on, 1 - days), on),
    },
  ];
}

/**
 * Days that end two weeks above usual, by now as much as one morning may be, though they rise no more: more pain at the
 * beginning must not make a rise look level, and let it go on. A morning without a score counts like the one before it.
 */
function daysAboveUsual(mornings: readonly Morning[], { consult, protocol }: Period): ReadonlySet<IsoDate> {
  const { contactWhenRisingDays, carryOnOver } = protocol.morningCheck;
  const [days, usual] = [contactWhenRisingDays.value, consult.usualMorningPain];
  const half = Math.floor(days / 2);
  const known: number[] = [];
  const above = new Set<IsoDate>();
  for (const { on, score } of mornings) {
    const value = score ?? known.at(-1);
    if (value === undefined) continue;
    known.push(value);
    const last = known.slice(-days);
    const isAbove = mean(last.slice(0, half)) > usual && mean(last.slice(half)) >= usual + carryOnOver.value;
    if (last.length === days && isAbove) above.add(on);
  }
  return above;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Up to this score the person carries on. */
export function carryOnTo({ consult, protocol }: Period): number {
  return morningBands(consult.usualMorningPain, protocol.morningCheck).carryOnTo;
}
