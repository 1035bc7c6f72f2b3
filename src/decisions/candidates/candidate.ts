/** One card fitted to one person: its first dose, the load it starts with, how far it goes, or what stands against it. */
import type { ExerciseCard, Slot } from '../../content/library.ts';
import type { KitLoad } from '../../dosing/kit.ts';
import type { RangeAndLoad as Admitted, RefusedLoad } from '../../mechanics/rangeAndLoad.ts';
import type { RangeDecision } from '../../mechanics/range.ts';
import { barredLimit } from './barred.ts';
import type { Entry } from './entered.ts';
import { firstDose, type FirstDose } from './firstDose.ts';
import { bodyAloneTooMuch, loadsFor, NO_WEIGHT, NOTHING, startLoad, type StartLoad } from './load.ts';
import { isPosed, type PosedCard } from '../person/model.ts';
import { limitOn, painLimit } from './cardLimit.ts';
import type { CardLimit } from '../terms/cardLimit.ts';
import { boundsFor } from '../person/ownStage.ts';
import { cardOf, decidedByOf, type Bounds, type Person } from '../person/person.ts';
import type { DecidedBy } from '../terms/cell.ts';
import { painfulFromKg } from './painfulSets.ts';
import { isKnown } from './shown.ts';
import { rangeSettings, stepHeightsM, type RangeSetting } from '../person/rangeSettings.ts';

export interface Candidate {
  readonly card: ExerciseCard;
  readonly first: FirstDose;
  readonly load: StartLoad;
  /** Loads the ladder may use, ascending. */
  readonly loads: readonly KitLoad[];
  /** Hip bend at the far end of what is done; null where the range is not graded by hip bend. */
  readonly rangeDeg: number | null;
  /** Hip bends the ladder may use, ascending; empty where it is not graded. */
  readonly settingsDeg: readonly number[];
  readonly rangeDecidedBy: DecidedBy;
  /** How it enters the stage; null while it is only looked at. */
  readonly entry: Entry | null;
}

/** The card at the first step of a stage, or the first thing that stands against it. */
export function candidateFrom(
  card: ExerciseCard,
  slot: Slot,
  person: Person,
  stageBounds: Bounds,
): Candidate | CardLimit {
  const bounds = boundsFor(card.id, person, stageBounds);
  const cardLimit = limitOn(card, slot, person, bounds);
  if (cardLimit !== null) return cardLimit;
  const first = firstDose(slot, card, person, isKnown(card.id, person, bounds));
  if (isCardLimit(first)) return first;
  const easier = easierLimit(card, slot, person, bounds);
  if (easier !== null) return easier;
  return isPosed(card) ? fitPosed(card, slot, first, person, bounds) : fitUnposed(card, first);
}

/** A card whose easier one hurt, or was too much without a weight, is not tried. */
function easierLimit(card: ExerciseCard, slot: Slot, person: Person, bounds: Bounds): CardLimit | null {
  for (let id = card.easier; id !== null; id = cardOf(person, id).easier) {
    const easier = cardOf(person, id);
    const hurt = painLimit(easier, person);
    const tested = hurt ?? (isPosed(easier) ? bodyAloneTooMuch(easier, slot, person, bounds) : null);
    if (tested !== null) return { ...tested, why: { reason: 'harder-than', card: id, than: tested.why } };
  }
  return null;
}

/** Whether an answer is what stands against a card, not the card fitted. */
export function isCardLimit(answer: object): answer is CardLimit {
  return 'limit' in answer;
}

function fitUnposed(card: ExerciseCard, first: FirstDose): Candidate {
  return {
    card,
    first,
    load: NO_WEIGHT,
    loads: [NOTHING],
    rangeDeg: null,
    settingsDeg: [],
    rangeDecidedBy: 'dose',
    entry: null,
  };
}

function fitPosed(
  card: PosedCard,
  slot: Slot,
  first: FirstDose,
  person: Person,
  bounds: Bounds,
): Candidate | CardLimit {
  const settings = rangeSettings(card, person);
  const settingsDeg = settings.map(({ deg }) => deg);
  const wanted = startLoad(card, slot, person, bounds, settings);
  if (isCardLimit(wanted)) return wanted;
  const loads = loadsFor(card, person);
  const upToWanted = loads.filter(({ loadKg }) => loadKg <= wanted.load.loadKg);
  const found = fitAt(card, upToWanted, settings, wanted.testedToDeg, person, bounds);
  if ('barredBy' in found) return barredLimit(found, bounds);
  const { load, rangeDeg } = found;
  return {
    card,
    first,
    load: lightened(wanted, found, bounds),
    // What hurt is not climbed back to before it is tested again.
    loads: wanted.byFeel
      ? loads.filter((one) => one.loadKg <= load.loadKg)
      : loads.filter((one) => one.loadKg < painfulFromKg(card, null, person)),
    rangeDeg,
    settingsDeg,
    rangeDecidedBy: rangeDeg === settingsDeg.at(-1) ? 'dose' : found.rangeDecidedBy,
    entry: null,
  };
}

interface FoundRangeAndLoad {
  readonly load: KitLoad;
  readonly rangeDeg: number | null;
  readonly rangeDecidedBy: DecidedBy;
  /** What refused the next heavier load; null when none was refused. */
  readonly heavier: RefusedLoad | null;
}

/** The heaviest of the loads that leaves a useful range, rounded to the gentle end; the last refusal when none does. */
function fitAt(
  card: PosedCard,
  loads: readonly KitLoad[],
  settings: readonly RangeSetting[],
  testedToDeg: number | null,
  { model, consult, protocol }: Person,
  bounds: Bounds,
): FoundRangeAndLoad | RefusedLoad {
  const graded = settings.length > 0;
  const answer = model.fit(graded ? card : inFull(card), {
    loadsKgDescending: loads.map(({ loadKg }) => loadKg).toReversed(),
    caps: bounds.caps,
    leastFraction: protocol.limits.leastRange.value,
    stepHeightsM: stepHeightsM(consult.kit),
    pickUpHeightM: card.pickUpHeightM,
  });
  if (!answer.admitted) return answer.refused.at(-1) as RefusedLoad;
  const { range, loadKg } = answer;
  const load = loads.find((one) => one.loadKg === loadKg) as KitLoad;
  const heavier = answer.refused.at(-1) ?? null;
  if (!graded) return { load, rangeDeg: null, rangeDecidedBy: 'dose', heavier };
  const farDeg = admittedDeg(range, settings, bounds.caps.angleDeg);
  const byTest = testedToDeg !== null && testedToDeg < farDeg;
  const most = byTest ? testedToDeg : farDeg;
  const rangeDeg = settings.findLast(({ deg }) => deg <= most + DUST_DEG)?.deg;
  if (rangeDeg === undefined) return { loadKg, barredBy: barOf(range.decidedBy), where: 'range' };
  return {
    load,
    rangeDeg,
    rangeDecidedBy: byTest ? 'testedSet' : decidedByOf(range.decidedBy, bounds),
    heavier,
  };
}

// A weight tilts the trunk and with it the angle of a step by a hair; the step itself is the same.
function admittedDeg(
  range: Admitted['range'],
  settings: readonly RangeSetting[],
  capDeg: number | null,
): number {
  if (!('heightM' in range)) return range.angleDeg;
  const { heightM } = range;
  const step = settings.findLast(
    ({ stepM, deg }) => stepM !== null && stepM <= heightM && deg <= (capDeg ?? Infinity) + DUST_DEG,
  );
  return step?.deg ?? range.angleDeg;
}

const DUST_DEG = 1e-6;

function barOf(decision: RangeDecision): RefusedLoad['barredBy'] {
  return decision === 'full' ? 'pose' : decision;
}

/** What cannot be graded by hip bend is done in full or not at all. */
function inFull(card: PosedCard): PosedCard {
  return { ...card, id: `${card.id} in full`, movement: { ...card.movement, range: 'fixed' } };
}

function lightened(wanted: StartLoad, { load, heavier }: FoundRangeAndLoad, bounds: Bounds): StartLoad {
  if (load.loadKg >= wanted.load.loadKg || heavier === null) return { ...wanted, load };
  const { why: bar } = barredLimit(heavier, bounds);
  return {
    ...wanted,
    load,
    decidedBy: decidedByOf(heavier.barredBy, bounds),
    rule: { rule: 'lighter', wanted: wanted.rule, heavierKg: heavier.loadKg, bar },
  };
}
