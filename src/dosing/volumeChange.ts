/** Steps in how much is done: repetitions, seconds of a hold, sets, tempo, days. */
import type { ProgressionEntry, Prescribed } from './rung.ts';
import {
  END,
  HOLD_GRAIN_SECONDS,
  LEAST_SETS,
  eased,
  stopped,
  tries,
  type Standing,
  type StepRules,
  type Tries,
} from './step.ts';
import { tensionSeconds } from './work.ts';

// What a step asks for where the progression does not say: repetitions, seconds, sets, seconds a way, days [choice].
const BY = { repetitions: 4, hold: 5, sets: 1, tempo: 1, days: 1 } as const;

/** More repetitions in a set, to 20 unless the protocol says otherwise. */
export function repetitions(entry: ProgressionEntry, { at, rules }: Standing): Tries {
  const now = at.dose.repetitions as number;
  const end = entry.to ?? rules.repetitionsFirst;
  if (now >= end) return END;
  const wished = Math.min(end, now + Math.max(1, Math.floor(entry.by ?? BY.repetitions)));
  return tries('repetitions', wished, counted(at, wished));
}

function* counted(at: Prescribed, wished: number): Iterable<Prescribed> {
  for (let count = wished; count > (at.dose.repetitions ?? 0); count--)
    yield { ...at, dose: { ...at.dose, repetitions: count } };
}

/** Longer holds. */
export function hold(entry: ProgressionEntry, { at }: Standing): Tries {
  const now = at.dose.holdSeconds as number;
  if (entry.to === null) return stopped('noTarget', now);
  if (now >= entry.to) return END;
  const wished = Math.min(entry.to, now + (entry.by ?? BY.hold));
  return tries('hold', wished, held(at, wished));
}

// From 15 to 20 seconds is a third more, so that a set has to go for it.
function* held(at: Prescribed, wished: number): Iterable<Prescribed> {
  const now = at.dose.holdSeconds as number;
  for (let sets = at.dose.sets; sets >= Math.min(LEAST_SETS, at.dose.sets); sets--) {
    for (let seconds = wished; seconds > now; seconds -= HOLD_GRAIN_SECONDS)
      yield { ...at, dose: { ...at.dose, sets, holdSeconds: seconds } };
  }
}

/** More sets. */
export function sets(entry: ProgressionEntry, { at, rules }: Standing): Tries {
  if (entry.to === null) return stopped('noTarget', at.dose.sets);
  if (at.dose.sets >= entry.to) return END;
  const wished = Math.min(entry.to, at.dose.sets + Math.max(1, Math.floor(entry.by ?? BY.sets)));
  return tries('sets', wished, moreSets(at, wished, rules));
}

// Three sets to four are a third more: each then a little shorter, yet more work in all than before.
function* moreSets(at: Prescribed, wished: number, rules: StepRules): Iterable<Prescribed> {
  for (let count = wished; count > at.dose.sets; count--) {
    for (const next of eased({ ...at, dose: { ...at.dose, sets: count } }, rules)) {
      if (tensionSeconds(next.dose) > tensionSeconds(at.dose)) yield next;
    }
  }
}

/** Slower or quicker repetitions. `to` and `by` are seconds each way. */
export function tempo(entry: ProgressionEntry, { at, rules }: Standing): Tries {
  const { goSeconds, holdSeconds, backSeconds } = at.dose.tempo;
  if (entry.to === null) return stopped('noTarget', goSeconds + backSeconds);
  const [by, to] = [entry.by ?? BY.tempo, entry.to];
  const towards = (now: number) => (now < to ? Math.min(to, now + by) : Math.max(to, now - by));
  const next = { goSeconds: towards(goSeconds), holdSeconds, backSeconds: towards(backSeconds) };
  if (goSeconds === to && backSeconds === to) return END;
  return tries(
    'tempo',
    next.goSeconds + next.backSeconds,
    eased({ ...at, dose: { ...at.dose, tempo: next } }, rules),
  );
}

/** More days a week. */
export function days(entry: ProgressionEntry, { at, rules }: Standing): Tries {
  if (entry.to === null) return stopped('noTarget', at.daysPerWeek);
  if (at.daysPerWeek >= entry.to) return END;
  const wished = Math.min(entry.to, at.daysPerWeek + Math.max(1, Math.floor(entry.by ?? BY.days)));
  return tries('days', wished, moreDays(at, wished, rules));
}

// Two days to three are half as much again: the sessions become shorter so that the week does not jump.
function* moreDays(at: Prescribed, wished: number, rules: StepRules): Iterable<Prescribed> {
  for (let daysPerWeek = wished; daysPerWeek > at.daysPerWeek; daysPerWeek--) {
    for (let count = at.dose.sets; count >= Math.min(LEAST_SETS, at.dose.sets); count--)
      yield* eased({ ...at, daysPerWeek, dose: { ...at.dose, sets: count } }, rules);
  }
}
