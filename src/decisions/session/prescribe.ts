/** The exercises of one rung: cells, how far in landmarks, picture, and what the model says of each. */
import type { ExerciseCard } from '../../content/library.ts';
import type { KitLoad } from '../../dosing/kit.ts';
import type { GivenUp } from '../../dosing/minutes.ts';
import type { Prescribed, Rung } from '../../dosing/rung.ts';
import type { WeekPlan } from '../../scheduling/plan.ts';
import { cellsOf } from './cells/cells.ts';
import type { CellFacts } from './cells/facts.ts';
import { changesSince } from './changes.ts';
import { estimateOf, type ModelEstimate } from '../candidates/estimate.ts';
import { howFar, howFarValue, largestAngleDeg, type HowFars } from './howFar.ts';
import { loadsFor } from '../candidates/load.ts';
import { isPosed } from '../person/model.ts';
import { ownDays, ownEntries, withOwn } from './overrides.ts';
import { boundsOf, type Bounds, type Person } from '../person/person.ts';
import type { DecidedCell, Why } from '../terms/cell.ts';
import type { IsoDate } from '../../units/date.ts';
import { pictureOf, type Picture } from '../candidates/scene.ts';
import { fitOf, type Session, type SessionExercise } from './session.ts';
import type { Candidate } from '../candidates/candidate.ts';
import type { SessionLength } from '../terms/sessionLength.ts';
import { workDays } from './workDays.ts';

export interface Prescription {
  readonly exercise: SessionExercise;
  readonly card: ExerciseCard;
  readonly fit: Candidate;
  readonly at: Prescribed;
  /** The weight is found by the repetitions in hand; `at.loadKg` is then the most it may be. */
  readonly byFeel: boolean;
  readonly facts: CellFacts;
  readonly cells: readonly DecidedCell[];
  /** The first day of what has to wait for its turn; null when it is done from the beginning. */
  readonly beginsOn: IsoDate | null;
  readonly howFar: HowFars;
  readonly picture: Picture | null;
  readonly estimate: ModelEstimate | null;
}

/** What a rung is put in numbers with. */
export interface Setting {
  readonly session: Session;
  readonly person: Person;
  readonly bounds: Bounds;
  readonly plan: WeekPlan;
  readonly gaveUp: readonly GivenUp[];
  readonly length: SessionLength;
}

/** Every exercise of a rung, in the order of the session. */
export function prescribe(rung: Rung, setting: Setting): Prescription[] {
  return setting.session.exercises.map((exercise, index) =>
    prescription(rung, exercise, rung.exercises[index] as Prescribed, setting),
  );
}

function prescription(
  rung: Rung,
  exercise: SessionExercise,
  byRule: Prescribed,
  setting: Setting,
): Prescription {
  const { person, bounds } = setting;
  const fit = fitOf(exercise, byRule.card);
  const { card } = fit;
  const own = ownEntries(card.id, person.consult);
  const at = withOwn(byRule, own);
  const load = loadOf({ card, at }, person);
  const byFeel = fit.load.byFeel && !own.has('loadKg');
  // What is felt for begins without a weight, and is drawn so.
  const picture = pictureOf(card, at.rangeDeg, byFeel ? null : load, person);
  const far = howFar(card, at, person);
  const facts: CellFacts = {
    step: rung.step,
    slot: exercise.slot,
    fit,
    isFirstCard: card.id === exercise.ladder.start.card,
    at,
    byRule,
    changes: changesSince(setting.session.ladder.rungs, rung.step, exercise.slot.name),
    gaveUp: setting.gaveUp.filter((one) => one.exercise === exercise.slot.name),
    length: setting.length,
    load,
    byFeel,
    rangeInputs: rangeInputs(fit, at, person, bounds),
    angle: person.model.guardedBy,
    angleDeg: largestAngleDeg(card, at, person.model),
    angleGrainDeg: person.protocol.limits.roundAngleDeg.value,
    howFar: howFarValue(far),
    way: picture?.way ?? 'out',
    pause: isPosed(card) && person.model.gentleEnd(card) === 'start' ? 'return' : 'turn',
    days: ownDays(own) ?? workDays(exercise.slot.when, setting.plan),
    own,
  };
  return {
    exercise,
    card,
    fit,
    at,
    byFeel,
    facts,
    cells: cellsOf(facts),
    beginsOn: null,
    howFar: far,
    picture,
    estimate: isPosed(card) ? estimateOf(card, at, person, bounds) : null,
  };
}

/** The load of a prescription as a thing of the house; null for one the kit does not make. */
export function loadOf({ card, at }: Pick<Prescription, 'card' | 'at'>, person: Person): KitLoad | null {
  return loadsFor(card, person).find(({ loadKg }) => loadKg === at.loadKg) ?? null;
}

function rangeInputs(fit: Candidate, at: Prescribed, person: Person, bounds: Bounds): Why['inputs'] {
  const { caps } = at.rangeDeg === fit.rangeDeg ? bounds : boundsOf(person, bounds.name, bounds.stage, true);
  return {
    capDeg: bounds.stage.caps.angleDeg,
    opensToDeg: bounds.stage.opensToDeg ?? null,
    provokedLessMarginDeg: person.provokedDeg,
    testedToDeg: fit.load.testedToDeg,
    heldToDeg: caps.angleDeg,
    compressionCapBw: caps.compressionBw,
    tensionCapBw: caps.tensionBw,
    demandCap: caps.demand,
  };
}
