/** One exercise: pain during it, and what was done of it. */
import type { LogEntry } from '../content/log/log.ts';
import type { EarlierExercise } from '../decisions/terms/earlier.ts';
import { painGate, type PainGate } from '../scheduling/morning.ts';
import type { IsoDate } from '../units/date.ts';
import type { Period } from './facts.ts';
import { isDone, isWhole } from './sessions.ts';
import { unwrittenBetween, unwrittenSessions } from './unwrittenWork.ts';
import { gentler, MOVES, type Because, type DoneDose, type ExerciseReview, type Move } from './terms.ts';

/** By its own entries alone. */
export function exerciseReview({ card, values }: EarlierExercise, period: Period): ExerciseReview {
  const occasions = occasionsOf(card, period);
  const { value: need } = period.protocol.goingOn.doneSessions;
  const lately = occasions.slice(-need);
  const because = lately.flatMap((occasion, index) =>
    painBecause(occasion, index === lately.length - 1, period),
  );
  const whole = occasions.filter(({ entries }) => entries.every((entry) => isWhole(entry, values)));
  const few: Because[] =
    whole.length >= need
      ? []
      : [
          {
            rule: 'missing-doneSessions',
            move: 'stay',
            inputs: { have: whole.length, need },
            source: sourceOf(period.protocol.goingOn.doneSessions, 'house rules 4'),
            entries: whole.flatMap(({ entries }) => entries),
          },
        ];
  const silent = betweenBecause(silentBetweenOf(card, period), period);
  const all = [...because, ...silent, ...few].toSorted(
    (a, b) => MOVES.indexOf(b.move) - MOVES.indexOf(a.move),
  );
  return {
    card,
    decision: all.reduce<Move>((worst, one) => gentler(worst, one.move), 'moveOn'),
    because: all,
    done: doneDose(occasions, period),
  };
}

/**
 * Planned sessions that no line speaks of, and that may have been the last to hurt in one of the exercises, in order.
 * What the log says two things of is asked for as such.
 */
export function silentSessions(period: Period): readonly IsoDate[] {
  const { earlier, log, protocol } = period;
  const days = earlier.exercises.flatMap(({ card }) => {
    const triedOn = occasionsOf(card, period).map(({ on }) => on);
    return unwrittenSessions(card, triedOn, protocol.goingOn.doneSessions.value, period);
  });
  return [...new Set(days)].filter((on) => !log.contradicted.includes(on)).sort();
}

/** Days on which work between the sessions was planned that counts, and no line speaks of it, in order: the last may have hurt. */
export function silentBetween(
  period: Period,
  counts: (card: string) => boolean = () => true,
): readonly IsoDate[] {
  const days = period.earlier.exercises
    .filter(({ card }) => counts(card))
    .flatMap(({ card }) => silentBetweenOf(card, period));
  return [...new Set(days)].filter((on) => !period.log.contradicted.includes(on)).sort();
}

function silentBetweenOf(card: string, period: Period): readonly IsoDate[] {
  const triedOn = occasionsOf(card, period).map(({ on }) => on);
  return unwrittenBetween(card, triedOn, period.protocol.goingOn.doneSessions.value, period);
}

/** A ground to stay where the work between the sessions is not written down. */
export function betweenBecause(days: readonly IsoDate[], { protocol }: Period): Because[] {
  const source = sourceOf(protocol.goingOn.doneSessions, 'house rules 4 and 5');
  return days.length === 0
    ? []
    : [{ rule: 'between-not-written', move: 'stay', inputs: { days }, source, entries: [] }];
}

export function sourceOf(
  { mark, cite }: { readonly mark: Because['source']['mark']; readonly cite?: string | undefined },
  otherwise: string,
): Because['source'] {
  return { cite: cite ?? otherwise, mark };
}

interface Occasion {
  readonly on: IsoDate;
  readonly entries: readonly LogEntry[];
  /** The worst pain that was written; null where none was. */
  readonly pain: number | null;
}

// A line about the session as a whole speaks of every exercise in it.
function occasionsOf(card: string, { entries }: Period): readonly Occasion[] {
  const found = new Map<string, LogEntry[]>();
  for (const entry of entries) {
    const isOwn = entry.kind === 'session' || entry.kind === 'between';
    if (!isOwn || (entry.card !== card && entry.card !== '') || !isTried(entry)) continue;
    const key = `${entry.date} ${entry.occasion} ${entry.kind}`;
    found.set(key, [...(found.get(key) ?? []), entry]);
  }
  return [...found.values()].map((own) => {
    const named = own.filter((entry) => entry.card === card);
    const pains = own.flatMap(({ painDuring }) => painDuring ?? []);
    return {
      on: (own[0] as LogEntry).date,
      entries: named.length > 0 ? named : own,
      pain: pains.length === 0 ? null : Math.max(...pains),
    };
  });
}

// Pain that stopped it before a set was whole is pain all the same.
function isTried(entry: LogEntry): boolean {
  return isDone(entry) || entry.painDuring !== null;
}

const MOVE_OF = { 'carry-on': 'moveOn', 'same-again': 'stay', 'ease-back': 'easeBack' } as const;

function painBecause({ entries, pain }: Occasion, isLast: boolean, period: Period): Because[] {
  if (pain === null)
    return [
      {
        rule: 'pain-not-written',
        move: 'stay',
        inputs: {},
        source: sourceOf(period.protocol.painRule.duringAtMost, 'house rules 5'),
        entries,
      },
    ];
  const { next, because } = gateOf(pain, period);
  if (next === 'carry-on' && !isLast) return [];
  // Easier numbers were used since where a later time was all right.
  const move = isLast ? MOVE_OF[next] : 'stay';
  const source = { cite: 'house rules 5', mark: because.mark };
  return [{ rule: because.code, move, inputs: because.inputs, source, entries }];
}

function gateOf(pain: number, { consult, protocol }: Period): PainGate {
  const { usualMorningPain: usualPain, irritability } = consult;
  return painGate(pain, { usualPain, irritability }, protocol.painRule);
}

// The last time it was tolerated; of the two legs what the weaker one did.
function doneDose(occasions: readonly Occasion[], period: Period): DoneDose {
  const last = occasions.findLast(
    ({ entries, pain }) => entries.some(isDone) && (pain === null || gateOf(pain, period).allowed),
  );
  const least = (of: 'sets' | 'repetitions' | 'seconds' | 'loadKg') => {
    const written = (last?.entries ?? []).flatMap((entry) => entry[of] ?? []);
    return written.length === 0 ? null : Math.min(...written);
  };
  return {
    on: last?.on ?? null,
    sets: least('sets'),
    repetitions: least('repetitions'),
    seconds: least('seconds'),
    loadKg: least('loadKg'),
  };
}
