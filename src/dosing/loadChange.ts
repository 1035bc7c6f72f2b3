/** Steps to a heavier load, as the kit can make it. */
import { gentlerRatio } from './maximum.ts';
import { LAST_REPETITION_MAXIMUM, REPETITION_MAXIMA } from './progression.ts';
import type { ProgressionEntry, Prescribed } from './rung.ts';
import {
  END,
  cardOf,
  eased,
  stopped,
  tries,
  type LadderExercise,
  type Standing,
  type StepRules,
  type Tries,
} from './step.ts';
import { repetitions } from './volumeChange.ts';

// Binary dust: 1.1 x 20 is 22.000000000000004, but 1.1 x 10 need not reach 11.
const DUST_KG = 1e-9;

/**
 * Goes on to the heaviest load within 10 % at the same repetitions; in a repetition-maximum dose to the next lower
 * maximum, with no more load than it allows. Where the kit's next load is further off, repetitions come first; before the
 * first weight only as far as the minutes leave room for them.
 * A ladder of maxima has ended at its last one, once a load taken down for the range is back at `heaviestKg`.
 */
export function load(entry: ProgressionEntry, standing: Standing): Tries {
  const { exercise, at, heaviestKg, rules } = standing;
  if (typeof exercise.feltGrowth === 'number') return greatest(entry, standing, exercise.feltGrowth);
  const last = lastMaximum(exercise, at);
  if (last !== null && (at.dose.repetitions ?? 0) <= last && at.loadKg >= heaviestKg) return END;
  const end = entry.to ?? Infinity;
  if (at.loadKg >= end) return END;
  const heavier = cardOf(exercise, at).loadsKg.filter((kg) => kg > at.loadKg && kg <= end);
  const [next] = heavier;
  if (next === undefined) return stopped('kit', at.loadKg);
  const atMostKg = exercise.atMostKg ?? Infinity;
  if (next > atMostKg) return stopped('testedLoad', next);
  const then = last === null ? at.dose.repetitions : nextMaximum(at.dose.repetitions ?? last, last);
  const factor = then === at.dose.repetitions ? 1 + rules.fineLoadShare : maximumRatio(at, then ?? 1);
  const fine = heavier.filter((kg) => kg <= Math.min(atMostKg, at.loadKg * factor + DUST_KG)).reverse();
  if (fine[0] !== undefined) return tries('load', fine[0], loaded(fine, then, at, rules));
  return coarseLoad(next, standing);
}

/**
 * What is felt for is bounded by the repetitions in hand: its greatest goes on as far as a step's growth lets it, in
 * kilograms too, since little squeeze and moment say nothing of what the hands and the knee are used to. The next weight
 * of the kit may be further off than that.
 */
function greatest(entry: ProgressionEntry, { exercise, at }: Standing, growth: number): Tries {
  const end = Math.min(entry.to ?? Infinity, exercise.atMostKg ?? Infinity);
  const heavier = cardOf(exercise, at).loadsKg.filter((kg) => kg > at.loadKg && kg <= end);
  const [next] = heavier;
  if (next === undefined) return stopped('kit', at.loadKg);
  const atMostKg = Math.max(next, at.loadKg * growth + DUST_KG);
  const within = heavier.filter((kg) => kg <= atMostKg).toReversed();
  return tries(
    'load',
    within[0] ?? next,
    within.map((loadKg) => ({ ...at, loadKg })),
  );
}

// The repetitions at which a ladder of maxima ends; null for every other kind of dose.
function lastMaximum({ progression, start }: LadderExercise, { dose }: Prescribed): number | null {
  if (dose.kind !== 'repetition-maximum') return null;
  const named = progression.find((entry) => entry.change === 'repetitions')?.to ?? null;
  return named !== null && named < (start.dose.repetitions ?? 0) ? named : LAST_REPETITION_MAXIMUM;
}

// A kit step over 10 %: repetitions first, then the next load with few of them. A hold has but its seconds to give.
function coarseLoad(next: number, standing: Standing): Tries {
  const { at, rules } = standing;
  const { repetitions: now } = at.dose;
  const nextLoad = tries(
    'load',
    next,
    loaded([next], now === null ? null : rules.repetitionsBack, at, rules),
  );
  if (now === null || now >= rules.repetitionsFirst) return nextLoad;
  const more = repetitions({ change: 'repetitions', by: null, to: rules.repetitionsFirst }, standing);
  const first = at.loadKg === 0 && now > rules.repetitionsBack;
  // Without a weight a short day would never come to the first one.
  return more.kind === 'tries' && first ? { ...more, forLackOfMinutes: nextLoad } : more;
}

function* loaded(
  loads: readonly number[],
  then: number | null,
  at: Prescribed,
  rules: StepRules,
): Iterable<Prescribed> {
  for (const loadKg of loads) yield { ...at, loadKg, dose: { ...at.dose, repetitions: then } };
  const loadKg = loads.at(-1) ?? at.loadKg;
  yield* eased({ ...at, loadKg, dose: { ...at.dose, repetitions: then } }, rules);
}

function nextMaximum(now: number, last: number): number {
  return Math.min(now, Math.max(last, REPETITION_MAXIMA.find((maximum) => maximum < now) ?? last));
}

function maximumRatio({ dose }: Prescribed, then: number): number {
  const reserve = dose.reserve ?? 0;
  return gentlerRatio((dose.repetitions ?? then) + reserve, then + reserve);
}
