/**
 * How an exercise enters a stage (house rules 4 and 11.2): at most the step's growth over what was last done or tested
 * with it; one that was not tested at or below the largest tested of its family; else its gentlest version.
 */
import { houseRules } from '../terms/houseSources.ts';
import type { Slot } from '../../content/library.ts';
import type { TimedDose } from '../../dosing/work.ts';
import { RESOLUTION, type GrowthFloor } from '../../dosing/growth.ts';
import { HOLD_GRAIN_SECONDS } from '../../dosing/step.ts';
import type { Lowered } from './entered.ts';
import { QUANTITIES, type EntryBasis, type EntryRule, type Quantity } from '../terms/entryRule.ts';
import type { Why } from '../terms/cell.ts';
import { MODEL_ANGLE } from './estimate.ts';
import { familyOf } from './family.ts';
import type { Candidate } from './candidate.ts';
import type { KitLoad } from '../../dosing/kit.ts';
import { withFirstWeight } from './feltLoad.ts';
import { growthFloorOf } from './growthFloor.ts';
import { NOTHING } from './load.ts';
import { distanceTo, isPosed, type PosedCard } from '../person/model.ts';
import type { Bounds, Person } from '../person/person.ts';
import { burdenOf, shownBurden, shownWith, type SessionBurden, type Shown } from './shown.ts';

/** The fit as it enters; null where even its lightest form is more than was shown. */
export function enter(asFitted: Candidate, slot: Slot, person: Person, bounds: Bounds): Candidate | null {
  const entered = entering(withFirstWeight(asFitted, person), slot, person, bounds);
  // Less range bends the hip less, and with it what a first weight is reckoned from.
  return entered === null ? null : withFirstWeight(entered, person);
}

function entering(fit: Candidate, slot: Slot, person: Person, bounds: Bounds): Candidate | null {
  const { card } = fit;
  if (!isMeasured(card, person, bounds)) return withEntry(fit, fit, 'notModelled', null, null);
  const bare = fit.load.byFeel ? unloaded(fit) : fit;
  if (isSlight(card, bare, person)) return withEntry(fit, bare, 'slight', null, null);
  const limits = limitsFor(card, fit.first.dose, slot, person, bounds);
  if (limits === null) return withEntry(fit, untested(fit, card, person, bounds), 'nothing', null, null);
  const broken = brokenBy(card, fit, limits, person);
  if (broken === null) return withEntry(fit, fit, limits.basis, limits, null);
  const inPeak = withinPeaks(fit, card, limits, person);
  const fewer = inPeak === null ? null : withFewer(inPeak, card, limits, person);
  return fewer === null ? null : withEntry(fit, fewer, limits.basis, limits, broken);
}

/** The least useful range, without a weight. */
export function gentlestVersion(
  fit: Candidate,
  slot: Slot,
  person: Person,
  bounds: Bounds,
): Candidate | null {
  const { card } = fit;
  if (!isMeasured(card, person, bounds))
    return withFirstWeight(withEntry(fit, fit, 'notModelled', null, null), person);
  const limits = limitsFor(card, fit.first.dose, slot, person, bounds);
  const least = untested(fit, card, person, bounds);
  if (limits === null) return withEntry(fit, least, 'nothing', null, null);
  // Nothing of the family is as gentle: then no more than a step above the largest of it.
  const growth = Math.max(limits.growth, person.protocol.limits.stepGrowth.value);
  const widened = { ...limits, growth };
  const broken = brokenBy(card, fit, limits, person);
  const fewer = withFewer(least, card, widened, person);
  return fewer === null ? null : withEntry(fit, fewer, limits.basis, widened, broken);
}

/** Whether two exercises can be told apart by the model in this person's stage. */
export function isMeasured(
  card: Candidate['card'],
  { protocol }: Person,
  { ahead }: Bounds,
): card is PosedCard {
  return isPosed(card) && protocol.angle === MODEL_ANGLE && !ahead;
}

interface EntryLimits {
  readonly basis: 'own' | 'family';
  readonly growth: number;
  readonly largest: SessionBurden;
  readonly card: string;
  readonly by: Shown['by'];
}

/** By what was shown with the card itself; without that by what was shown with its family; null when nothing was. */
function limitsFor(
  card: PosedCard,
  dose: TimedDose,
  slot: Slot,
  person: Person,
  bounds: Bounds,
): EntryLimits | null {
  const own = largestOf(shownWith(card.id, person, bounds), dose, person);
  const growth = person.protocol.limits.stepGrowth.value;
  if (own !== null) return { basis: 'own', growth, ...own };
  const family = [...familyOf(card.id, slot, person.library.exercises)].flatMap((id) =>
    shownWith(id, person, bounds),
  );
  const largest = largestOf(family, dose, person);
  return largest === null ? null : { basis: 'family', growth: 1, ...largest };
}

function largestOf(
  shown: readonly Shown[],
  dose: TimedDose,
  person: Person,
): Pick<EntryLimits, 'largest' | 'card' | 'by'> | null {
  const all = shown.flatMap((one) => {
    const burden = shownBurden(one, dose, person);
    return burden === null ? [] : [{ one, burden }];
  });
  if (all.length === 0) return null;
  // What says how much was done goes before a look at the movement, which says nothing of it.
  const counted = all.filter(({ burden }) => Number.isFinite(burden.compressionTimeBwS));
  const times = counted.length > 0 ? counted : all;
  const most = (of: typeof all, quantity: Quantity) => Math.max(...of.map(({ burden }) => burden[quantity]));
  const lead = all.reduce((a, b) => (b.burden.compressionBw > a.burden.compressionBw ? b : a));
  return {
    card: lead.one.card.id,
    by: lead.one.by,
    largest: {
      compressionBw: most(all, 'compressionBw'),
      tensionBw: Math.max(...all.map(({ burden }) => burden.tensionBw)),
      hipMomentNm: most(all, 'hipMomentNm'),
      compressionTimeBwS: most(times, 'compressionTimeBwS'),
      tensionTimeBwS: most(times, 'tensionTimeBwS'),
    },
  };
}

const DUST = 1e-9;

function brokenBy(
  card: PosedCard,
  fit: Candidate,
  { largest, growth }: EntryLimits,
  person: Person,
): Quantity | null {
  const asked = askedBy(card, fit, person);
  if (asked === null) return 'compressionBw';
  const floors = floorsOf(growthFloorOf(person), asked, workSeconds(fit.first.dose));
  return (
    QUANTITIES.find(
      (quantity) => asked[quantity] > growth * Math.max(largest[quantity], floors[quantity]) + DUST,
    ) ?? null
  );
}

/** What is so small that nobody need have shown it; over time there is no floor of pull but that of the work itself. */
function floorsOf(
  { compressionBw, tensionBw }: GrowthFloor,
  asked: SessionBurden,
  seconds: number,
): Pick<SessionBurden, Quantity> {
  return {
    compressionBw,
    // The moment matters to the tendon by its pull alone.
    hipMomentNm: asked.tensionBw <= tensionBw ? asked.hipMomentNm : RESOLUTION.hipMomentNm,
    compressionTimeBwS: compressionBw * seconds,
    tensionTimeBwS: asked.tensionBw <= tensionBw ? asked.tensionTimeBwS : 0,
  };
}

function askedBy(
  card: PosedCard,
  { rangeDeg, load, first }: Candidate,
  person: Person,
): SessionBurden | null {
  return burdenOf(card, { rangeDeg, loadKg: load.load.loadKg, dose: first.dose }, person);
}

/** Whether it squeezes and pulls so little that the entry of a stage does not matter to it, a calf raise for example. */
function isSlight(
  card: PosedCard,
  { rangeDeg, load, first }: Candidate,
  { model, protocol }: Person,
): boolean {
  const { slightSqueezeBw, slightPullBw } = protocol.limits;
  const peak = model.sweepTo(card, rangeDeg, load.load.loadKg, first.dose.tempo)?.peak;
  return (
    peak !== undefined && peak.compressionBw <= slightSqueezeBw.value && peak.tensionBw <= slightPullBw.value
  );
}

function workSeconds({ sets, repetitions, holdSeconds, tempo, timesPerDay }: TimedDose): number {
  const { goSeconds, holdSeconds: still, backSeconds } = tempo;
  return sets * timesPerDay * (holdSeconds ?? (repetitions ?? 0) * (goSeconds + still + backSeconds));
}

/** Lighter and less far until the peaks hold: a load that was tested stays and the range gives, else the other way round. */
function withinPeaks(fit: Candidate, card: PosedCard, limits: EntryLimits, person: Person): Candidate | null {
  const loads = fit.loads.filter(({ loadKg }) => loadKg <= fit.load.load.loadKg);
  const ranges = usefulRanges(fit, card, person).toReversed();
  const at = (load: KitLoad, rangeDeg: number | null): Candidate => ({
    ...fit,
    rangeDeg,
    load: { ...fit.load, load },
  });
  const holds = (one: Candidate) => {
    const broken = brokenBy(card, one, limits, person);
    return broken !== 'compressionBw' && broken !== 'hipMomentNm';
  };
  const [lightest, least] = [loads[0] ?? NOTHING, ranges[0] ?? null];
  if (!holds(at(lightest, least))) return null;
  if (limits.basis === 'own' && !fit.load.byFeel) {
    const load = lastThat(loads, (one) => holds(at(one, least))) ?? lightest;
    return at(load, lastThat(ranges, (deg) => holds(at(load, deg))) ?? least);
  }
  const rangeDeg = lastThat(ranges, (deg) => holds(at(lightest, deg))) ?? least;
  return at(lastThat(loads, (one) => holds(at(one, rangeDeg))) ?? lightest, rangeDeg);
}

/** The last of ascending values that holds, where each that holds is held by those before it; undefined for none. */
function lastThat<T>(ascending: readonly T[], holds: (value: T) => boolean): T | undefined {
  let [held, end] = [0, ascending.length];
  while (held < end) {
    const middle = (held + end) >> 1;
    if (holds(ascending[middle] as T)) held = middle + 1;
    else end = middle;
  }
  return ascending[held - 1];
}

/** The settings from the fitted one down to the least useful, at least the fitted one. */
function usefulRanges(
  { rangeDeg, settingsDeg }: Candidate,
  card: PosedCard,
  person: Person,
): readonly (number | null)[] {
  if (rangeDeg === null) return [null];
  const least = person.protocol.limits.leastRange.value - DUST;
  const useful = settingsDeg.filter((deg) => deg <= rangeDeg && distanceTo(card, deg, person.model) >= least);
  return useful.length === 0 ? [rangeDeg] : useful.toReversed();
}

function gentlest(fit: Candidate, card: PosedCard, person: Person): Candidate {
  return { ...unloaded(fit), rangeDeg: usefulRanges(fit, card, person).at(-1) ?? null };
}

/** The gentlest version; where the stage squeezes without a cap, as far as it stays small. */
function untested(fit: Candidate, card: PosedCard, person: Person, { caps }: Bounds): Candidate {
  const least = gentlest(fit, card, person);
  if (caps.compressionBw !== null || person.effects.under18) return least;
  const floor = growthFloorOf(person);
  const isSmall = (rangeDeg: number | null) => {
    const peak = person.model.sweepTo(card, rangeDeg, 0, fit.first.dose.tempo)?.peak;
    return (
      peak !== undefined && peak.compressionBw <= floor.compressionBw && peak.tensionBw <= floor.tensionBw
    );
  };
  const ranges = usefulRanges(fit, card, person).toReversed();
  return { ...least, rangeDeg: lastThat(ranges, isSmall) ?? least.rangeDeg };
}

function unloaded(fit: Candidate): Candidate {
  return { ...fit, load: { ...fit.load, load: NOTHING, byFeel: false } };
}

/** The same with ever fewer repetitions or seconds until it is within; null when a single one is too much. */
function withFewer(fit: Candidate, card: PosedCard, limits: EntryLimits, person: Person): Candidate | null {
  for (let now: Candidate | null = fit; now !== null; now = oneLess(now)) {
    const broken = brokenBy(card, now, limits, person);
    if (broken === null) return now;
    if (broken === 'compressionBw' || broken === 'hipMomentNm') return null;
  }
  return null;
}

function oneLess(fit: Candidate): Candidate | null {
  const { dose } = fit.first;
  const { repetitions, holdSeconds } = dose;
  const less =
    holdSeconds === null
      ? { ...dose, repetitions: (repetitions ?? 0) - 1 }
      : { ...dose, holdSeconds: holdSeconds - HOLD_GRAIN_SECONDS };
  if ((less.repetitions ?? less.holdSeconds ?? 0) <= 0) return null;
  return { ...fit, first: { ...fit.first, dose: less } };
}

/** The fit as it enters, with the reason in every number that was taken down. */
function withEntry(
  before: Candidate,
  after: Candidate,
  basis: EntryBasis,
  limits: EntryLimits | null,
  quantity: Quantity | null,
): Candidate {
  const lowered = loweredBetween(before, after);
  const { card = null, by = null, growth = 1 } = limits ?? {};
  const rule: EntryRule = { rule: 'entry', basis, card, by, growth, quantity };
  const entry = { ...rule, lowered };
  if (lowered.length === 0) return { ...after, entry };
  const fell = (what: Lowered['what']) => lowered.find((one) => one.what === what);
  const load = fell('load') ?? fell('feltLoad');
  const amount = fell('repetitions') ?? fell('holdSeconds');
  return {
    ...after,
    entry,
    rangeDecidedBy: fell('range') === undefined ? after.rangeDecidedBy : 'step',
    load: load === undefined ? after.load : { ...after.load, decidedBy: 'step', rule, source: HOUSE },
    first:
      amount === undefined
        ? after.first
        : { ...after.first, why: { ...after.first.why, [amount.what]: amountWhy(rule, amount) } },
  };
}

const HOUSE = houseRules('4 and 11.2');

function amountWhy(rule: EntryRule, { from }: Lowered): Why {
  return { rule, inputs: { byRule: from }, source: HOUSE, decidedBy: 'step' };
}

function loweredBetween(before: Candidate, after: Candidate): readonly Lowered[] {
  const pairs: readonly (readonly [Lowered['what'], number | null, number | null])[] = [
    ['range', before.rangeDeg, after.rangeDeg],
    [before.load.byFeel ? 'feltLoad' : 'load', before.load.load.loadKg, after.load.load.loadKg],
    ['repetitions', before.first.dose.repetitions, after.first.dose.repetitions],
    ['holdSeconds', before.first.dose.holdSeconds, after.first.dose.holdSeconds],
  ];
  return pairs.flatMap(([what, from, to]) =>
    from === null || to === null || from === to ? [] : [{ what, from, to }],
  );
}
