/** One card fitted to one person: the load it starts with and how far it goes, or what stands against it. */
import type { ExerciseCard, Slot } from '../content/library.ts';
import type { KitLoad } from '../dose/kit.ts';
import type { RangeDecision } from '../mechanics/range.ts';
import { loadsFor, startLoad, type StartLoad } from './load.ts';
import type { Limit } from '../mechanics/cap.ts';
import type { RefusedLoad } from '../mechanics/fit.ts';
import { isPosed, type PosedCard } from './model.ts';
import { obstacleTo, type Obstacle } from './obstacle.ts';
import type { Bounds, Person } from './person.ts';
import type { DecidedBy } from './programme.ts';
import { rangeSettings, stepHeightsM } from './rangeSettings.ts';

export interface Fit {
  readonly card: ExerciseCard;
  readonly load: StartLoad;
  /** Loads the ladder may use, ascending. */
  readonly loads: readonly KitLoad[];
  /** Hip bend at the far end of what is done; null where the range is not graded by hip bend. */
  readonly rangeDeg: number | null;
  /** Hip bends the ladder may use, ascending; empty where it is not graded. */
  readonly settingsDeg: readonly number[];
  readonly rangeDecidedBy: DecidedBy;
  /** Squeeze held against the cap, margin included; null without a pose. */
  readonly compressionBw: number | null;
}

export function fitCard(card: ExerciseCard, slot: Slot, person: Person, bounds: Bounds): Fit | Obstacle {
  const obstacle = obstacleTo(card, slot, person, bounds);
  if (obstacle !== null) return obstacle;
  return isPosed(card) ? fitPosed(card, slot, person, bounds) : fitUnposed(card, person);
}

export function isObstacle(answer: Fit | Obstacle): answer is Obstacle {
  return 'limit' in answer;
}

/** The name a decided range goes by in a cell. */
export function decidedByOf(decision: RangeDecision, { byProvokedAngle }: Bounds): DecidedBy {
  if (decision === 'full' || decision === 'pose') return 'dose';
  return decision === 'hipFlexion' && byProvokedAngle ? 'provokedAngle' : decision;
}

function fitUnposed(card: ExerciseCard, person: Person): Fit {
  const loads = loadsFor(card, person);
  const load = loads[0] as KitLoad;
  return {
    card,
    load: {
      load,
      byFeel: false,
      decidedBy: 'dose',
      because: 'the card has no pose and carries no weight',
      inputs: {},
    },
    loads: [load],
    rangeDeg: null,
    settingsDeg: [],
    rangeDecidedBy: 'dose',
    compressionBw: null,
  };
}

function fitPosed(card: PosedCard, slot: Slot, person: Person, bounds: Bounds): Fit | Obstacle {
  const settings = rangeSettings(card, person);
  const settingsDeg = settings.map(({ deg }) => deg);
  const loads = loadsFor(card, person);
  const nothing = loads[0] as KitLoad;
  const bare = fitAt(card, [nothing], settingsDeg, person, bounds);
  if ('refused' in bare) return obstacleFrom(bare.refused, bounds);
  // A tested set counts at the range that will be used, which no load makes wider than that without one.
  const wanted = startLoad(card, slot, person, bounds, bare.rangeDeg);
  const found = wanted.byFeel
    ? ceilingFit(bare, card, loads, settingsDeg, person, bounds)
    : fitAt(
        card,
        loads.filter(({ loadKg }) => loadKg <= wanted.load.loadKg),
        settingsDeg,
        person,
        bounds,
      );
  if ('refused' in found) return obstacleFrom(found.refused, bounds);
  const { load, rangeDeg, decision } = found;
  const swept = person.model.sweepTo(card, rangeDeg, load.loadKg, card.tempo);
  const margin = card.movement.supports.length > 1 ? bounds.caps.supportMargin : 1;
  const lighter = !wanted.byFeel && load.loadKg < wanted.load.loadKg;
  return {
    card,
    load: {
      ...wanted,
      load,
      byFeel: wanted.byFeel && load.loadKg > 0,
      decidedBy: lighter ? 'kit' : wanted.decidedBy,
      because: lighter
        ? `${wanted.because}; lighter, so that it can be lifted and enough of the movement is left`
        : wanted.because,
    },
    loads: wanted.byFeel ? [load] : loads,
    rangeDeg,
    settingsDeg,
    rangeDecidedBy:
      rangeDeg === null || rangeDeg === settingsDeg.at(-1) ? 'dose' : decidedByOf(decision, bounds),
    compressionBw: swept === null ? null : margin * swept.peak.compressionBw,
  };
}

interface FoundFit {
  readonly load: KitLoad;
  readonly rangeDeg: number | null;
  readonly decision: RangeDecision;
}

interface Refused {
  readonly refused: RefusedLoad;
}

/** The heaviest of the loads that leaves a useful range, rounded to the gentle end; the last refusal when none does. */
function fitAt(
  card: PosedCard,
  loads: readonly KitLoad[],
  settingsDeg: readonly number[],
  { model, consult, protocol }: Person,
  { caps }: Bounds,
): FoundFit | Refused {
  const graded = settingsDeg.length > 0;
  const answer = model.fit(graded ? card : inFull(card), {
    loadsKgDescending: loads.map(({ loadKg }) => loadKg).toReversed(),
    caps,
    leastFraction: protocol.limits.leastRange.value,
    stepHeightsM: stepHeightsM(consult.kit),
    pickUpHeightM: card.pickUpHeightM,
  });
  if (!answer.admitted) return { refused: answer.refused.at(-1) as RefusedLoad };
  const { range, loadKg } = answer;
  const load = loads.find((one) => one.loadKg === loadKg) as KitLoad;
  if (!graded) return { load, rangeDeg: null, decision: 'full' };
  const rangeDeg = settingsDeg.findLast((deg) => deg <= range.hipFlexionDeg + 1e-6);
  return rangeDeg === undefined
    ? { refused: { loadKg, barredBy: range.decidedBy === 'full' ? 'pose' : range.decidedBy, where: 'range' } }
    : { load, rangeDeg, decision: range.decidedBy };
}

/** What cannot be graded by hip bend is done in full or not at all. */
function inFull(card: PosedCard): PosedCard {
  return { ...card, id: `${card.id} in full`, movement: { ...card.movement, range: 'fixed' } };
}

/** Felt for, the weight is a ceiling: the range comes first, and no weight may narrow it. */
function ceilingFit(
  bare: FoundFit,
  card: PosedCard,
  loads: readonly KitLoad[],
  settingsDeg: readonly number[],
  person: Person,
  bounds: Bounds,
): FoundFit {
  const heaviest = loads
    .slice(1)
    .toReversed()
    .map((load) => fitAt(card, [load], settingsDeg, person, bounds));
  return (
    heaviest.find((fit): fit is FoundFit => 'load' in fit && (fit.rangeDeg ?? 0) >= (bare.rangeDeg ?? 0)) ??
    bare
  );
}

function obstacleFrom({ barredBy, where }: RefusedLoad, bounds: Bounds): Obstacle {
  if (barredBy === 'step')
    return {
      limit: 'kit',
      value: 'step',
      because: 'there is no step of a height that the card can use and the caps admit',
    };
  const { value, text } = capText(barredBy, bounds);
  const what =
    where === 'lift' ? 'lifting the weight into place is not admitted' : 'too little of it is admitted';
  return {
    limit: barredBy === 'pose' ? 'pose' : decidedByOf(barredBy, bounds),
    value,
    because: `${what} (${text})`,
  };
}

function capText(
  barredBy: Limit | 'pose' | 'full',
  { caps, byProvokedAngle }: Bounds,
): { value: number | null; text: string } {
  switch (barredBy) {
    case 'hipFlexion':
      return {
        value: caps.hipFlexionDeg,
        text: `hip bend at most ${caps.hipFlexionDeg}°${byProvokedAngle ? ', below what hurt' : ''}`,
      };
    case 'compression':
      return { value: caps.compressionBw, text: `squeeze at most ${caps.compressionBw} body weights` };
    case 'tension':
      return { value: caps.tensionBw, text: `pull at most ${caps.tensionBw} body weights` };
    case 'demand':
      return { value: caps.demand, text: `strength asked for at most ${caps.demand}` };
    default:
      return { value: null, text: 'the pose cannot be held by this body' };
  }
}
