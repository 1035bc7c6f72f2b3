/** The session of one person in one stage: its exercises and the ladder they climb. */
import type { ProgressionEntry, Slot } from '../../content/library.ts';
import { ladderOfSteps, type Ladder } from '../../dosing/ladder.ts';
import type { Prescribed, Rung } from '../../dosing/rung.ts';
import type { LadderCard, LadderExercise } from '../../dosing/step.ts';
import type { WeekPlan } from '../../scheduling/plan.ts';

import { lighterBy, longestHoldSeconds } from '../candidates/firstDose.ts';
import { candidateFrom, isCardLimit, type Candidate } from '../candidates/candidate.ts';
import type { Kept } from './fitDays.ts';
import { measureFor } from '../candidates/measure.ts';
import { boundsFor, isBeyond } from '../person/ownStage.ts';
import { boundsOf, cardOf, type Bounds, type Person } from '../person/person.ts';
import type { NoRoom } from '../terms/noWholeStage.ts';
import { growthFloorOf } from '../candidates/growthFloor.ts';

/** One exercise of the session: what fills the slot, the harder cards it may go on to, and its part in the ladder. */
export interface SessionExercise {
  readonly slot: Slot;
  /** The chosen card first, then the harder ones, each as it fits this person. */
  readonly fits: readonly [Candidate, ...Candidate[]];
  readonly ladder: LadderExercise;
}

export interface Session {
  readonly exercises: readonly SessionExercise[];
  readonly ladder: Extract<Ladder, { rungs: readonly unknown[] }>;
}

/** The session and its ladder from the first step of the stage, or why there is none. */
export function sessionFor(
  kept: readonly Kept[],
  person: Person,
  bounds: Bounds,
  plan: WeekPlan,
): Session | NoRoom {
  const opened = boundsOf(person, bounds.name, bounds.stage, true);
  const exercises = exercisesOf(kept, person, opened, plan);
  const ladder = ladderOfSteps(
    exercises.map((one) => one.ladder),
    ladderLimits(person, bounds),
    measureFor(person, opened, bounds),
  );
  if (!('none' in ladder)) return { exercises, ladder };
  const [fault] = ladder.why;
  return { reason: 'no-room', limit: fault?.limit ?? 'unknown', slot: fault?.exercise ?? null };
}

// No exercise climbs onto a card that stands in the session already, or that another one may climb to.
function exercisesOf(
  kept: readonly Kept[],
  person: Person,
  opened: Bounds,
  plan: WeekPlan,
): readonly SessionExercise[] {
  const taken = new Set(kept.map(({ fit }) => fit.card.id));
  return kept.map((one) => {
    const exercise = sessionExercise(one, person, opened, plan, taken);
    for (const { card } of exercise.fits) taken.add(card.id);
    return exercise;
  });
}

/** Whether no session could be put together. */
export function isNoSession(session: Session | NoRoom): session is NoRoom {
  return 'reason' in session;
}

/** The rungs that are printed: the present one and the next two. */
export function shownRungs({ ladder }: Session, step: number): readonly Rung[] {
  return ladder.rungs.slice(step - 1, step + 2);
}

/** The card of a rung as it fits this person. */
export function fitOf({ fits }: SessionExercise, card: string): Candidate {
  const fit = fits.find((one) => one.card.id === card);
  if (fit === undefined) throw new Error(`card ${card} on the ladder: expected one of the exercise's own`);
  return fit;
}

function sessionExercise(
  { slot, fit, dose }: Kept,
  person: Person,
  opened: Bounds,
  plan: WeekPlan,
  taken: ReadonlySet<string>,
): SessionExercise {
  const { setUpSeconds, sideChangeSeconds } = person.clinic.defaults;
  const start: Prescribed = {
    exercise: slot.name,
    card: fit.card.id,
    dose,
    rangeDeg: fit.rangeDeg,
    loadKg: fit.load.load.loadKg,
    daysPerWeek: daysPerWeek(slot, plan),
  };
  const limited = opened.stage.loadLimit !== 'none' || person.effects.under18 || person.sudden !== null;
  // Above a cap of the house nothing grows before the review.
  const isFixed = isBeyond(fit.card.id, person.consult);
  const harder = isFixed ? [] : harderFits(fit, slot, person, opened, taken);
  const fits: readonly [Candidate, ...Candidate[]] = [fit, ...harder];
  const cards: readonly [LadderCard, ...LadderCard[]] = [
    ladderCard(fit, Infinity, boundsFor(fit.card.id, person, opened)),
    ...harder.map((one) => ladderCard(one, one.load.load.loadKg, opened)),
  ];
  return {
    slot,
    fits,
    ladder: {
      when: slot.when,
      cards,
      start,
      progression: (isFixed ? [] : slot.progression).map((change) =>
        heldShort(gentler(change, person), fit, person),
      ),
      atMostKg: limited ? start.loadKg : null,
      feltGrowth: fit.load.byFeel ? person.protocol.limits.feltLoadGrowth.value : null,
      setUpSeconds,
      sideChangeSeconds,
    },
  };
}

/** `atMostKg`: a card that was not tested with more is not given more by climbing onto it from an easier one. */
function ladderCard({ card, settingsDeg, loads }: Candidate, atMostKg: number, { caps }: Bounds): LadderCard {
  return {
    card: card.id,
    rangesDeg: settingsDeg.filter((deg) => caps.angleDeg === null || deg <= caps.angleDeg),
    loadsKg: loads.map(({ loadKg }) => loadKg).filter((loadKg) => loadKg <= atMostKg),
    legs: card.legs,
  };
}

/**
 * The harder cards it may go on to, as far as this person can do them in this stage; none that was held for less long.
 * A weight that is felt for says nothing of what a harder card would be next to it, and under 18 nothing is measured.
 */
function harderFits(
  fit: Candidate,
  slot: Slot,
  person: Person,
  opened: Bounds,
  taken: ReadonlySet<string>,
): Candidate[] {
  if (fit.load.byFeel || person.effects.under18) return [];
  const fits: Candidate[] = [];
  const longestSeconds = longestHoldSeconds(fit.card, person);
  for (let id = fit.card.harder; id !== null && !taken.has(id); id = cardOf(person, id).harder) {
    const answer = candidateFrom(cardOf(person, id), slot, person, opened);
    if (isCardLimit(answer) || longestHoldSeconds(answer.card, person) < longestSeconds) break;
    fits.push(answer);
  }
  return fits;
}

// Lighter under 18 holds all the way up.
function gentler(entry: ProgressionEntry, person: Person): ProgressionEntry {
  return entry.change === 'sets' && entry.to !== null
    ? { ...entry, to: entry.to - lighterBy(person) }
    : entry;
}

// A hold grows no longer than the share of what was shown, and no longer than the screen allows.
function heldShort(entry: ProgressionEntry, { card }: Candidate, person: Person): ProgressionEntry {
  if (entry.change !== 'hold') return entry;
  const most = longestHoldSeconds(card, person);
  return { ...entry, to: Math.min(entry.to ?? most, most) };
}

function daysPerWeek({ when }: Slot, { days }: WeekPlan): number {
  return days.filter((day) => (when === 'daily' ? day.daily : when === 'between' ? day.between : day.session))
    .length;
}

function ladderLimits(person: Person, { caps }: Bounds) {
  const { protocol, consult } = person;
  return {
    stepGrowth: protocol.limits.stepGrowth.value,
    weekGrowth: protocol.limits.weekGrowth.value,
    floor: growthFloorOf(person),
    compressionCapBw: caps.compressionBw,
    cardsAboveHalfCap: protocol.limits.cardsAboveHalfCap.value,
    minutes: consult.minutesPerDay,
  };
}
