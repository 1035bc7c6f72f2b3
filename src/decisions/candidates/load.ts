/** The weight a card starts with: from a tested set, as the kit can make it, never an invented number. */
import { FORMULAS, SCREEN_LOADS, TESTED_LOADS } from '../terms/houseSources.ts';
import type { ExerciseCard, Slot } from '../../content/library.ts';
import { loadsFromKit, roundDownToKit, type KitLoad, type Thing } from '../../dosing/kit.ts';
import type { Source } from '../../units/source.ts';
import { countUntil, type PosedCard } from '../person/model.ts';
import type { EntryRule } from '../terms/entryRule.ts';
import type { CardLimit } from '../terms/cardLimit.ts';
import type { LoadRule } from '../terms/rule.ts';
import { decidedByOf, type Bounds, type Person } from '../person/person.ts';
import type { DecidedBy } from '../terms/cell.ts';
import type { RangeSetting } from '../person/rangeSettings.ts';
import { painfulFromKg } from './painfulSets.ts';
import { leastFrom, testedAnswers, type TestedAnswer, type Usable } from './tested.ts';

/** What a card is loaded with at the first step. */
export interface StartLoad {
  /** The load; where it is felt for, the most that the stage admits over the whole movement. */
  readonly load: KitLoad;
  /** Nothing was tested with this card, so the repetitions in hand decide, up to `load`. */
  readonly byFeel: boolean;
  /** A set tested with this card and a weight says what it is. */
  readonly byTest: boolean;
  /** The hip bend to which the set was tested, degrees: the load is not used beyond it. Null where nothing says so. */
  readonly testedToDeg: number | null;
  readonly decidedBy: DecidedBy;
  readonly rule: LoadRule | EntryRule;
  readonly inputs: Readonly<Record<string, number | string | null>>;
  /** Null: that of the slot's dose. */
  readonly source: Source | null;
}

export const NOTHING: KitLoad = { loadKg: 0, made: { thing: 'nothing' } };

const THINGS: readonly Thing[] = ['dumbbell', 'kettlebell', 'bar', 'bottles', 'rucksack', 'band'];

/** Every load the kit makes for this card, ascending from nothing; only nothing for a card that carries no weight. */
export function loadsFor(card: ExerciseCard, { consult, clinic, effects }: Person): readonly KitLoad[] {
  const place = card.movement?.loadAt;
  if (place === undefined || effects.lightHolds.length > 0) return [NOTHING];
  const asked = THINGS.filter((thing) => (card.equipment as readonly string[]).includes(thing));
  const { dumbbellsUsedInPairs, bandNewtons } = clinic.defaults;
  const use = { inPairs: dumbbellsUsedInPairs, bandNewtons, only: asked.length > 0 ? asked : null };
  return loadsFromKit(consult.kit, place, use);
}

/** A card without a pose carries nothing. */
export const NO_WEIGHT = without('dose', { rule: 'no-weight' });

/**
 * The load at the start of the stage's ladder, or what stands against the card: that its tested set leaves nothing to
 * take off. `settings`: what the card can be set to, ascending. It knows no cap, so that tightening one
 * never brings another set into play.
 */
export function startLoad(
  card: PosedCard,
  slot: Slot,
  person: Person,
  bounds: Bounds,
  settings: readonly RangeSetting[],
): StartLoad | CardLimit {
  const wanted = wantedLoad(card, slot, person, bounds, settings);
  return 'limit' in wanted ? wanted : heldToLog(wanted, card, person);
}

/** What was asked for and not lifted is not asked for again: the load starts from what was done. */
function heldToLog(wanted: StartLoad, card: PosedCard, person: Person): StartLoad {
  const done = person.logged?.exercises.find((one) => one.card === card.id);
  if (done === undefined || wanted.byFeel || wanted.load.loadKg <= done.loadKg + 1e-9) return wanted;
  return {
    ...wanted,
    load: roundDownToKit(done.loadKg, loadsFor(card, person)) ?? NOTHING,
    decidedBy: 'testedSet',
    rule: { rule: 'logged', wanted: wanted.rule, doneKg: done.loadKg, on: done.on },
    inputs: { ...wanted.inputs, doneKg: done.loadKg },
    source: TESTED_LOADS,
  };
}

function wantedLoad(
  card: PosedCard,
  slot: Slot,
  person: Person,
  bounds: Bounds,
  settings: readonly RangeSetting[],
): StartLoad | CardLimit {
  const { stage } = bounds;
  const settingsDeg = settings.map(({ deg }) => deg);
  const tested = testedAnswers(card, slot, person, stage, settingsDeg);
  const tooMuch = tooMuchIn(tested);
  if (tooMuch !== null) return tooMuch;
  if (card.movement.loadAt === undefined) return NO_WEIGHT;
  if (bounds.ahead) return without('dose', { rule: 'weighed-later' });
  if (person.effects.lightHolds.length > 0) return without('dose', { rule: 'light-holds' }, SCREEN_LOADS);
  const loads = loadsFor(card, person);
  if (loads.length === 1) return without('kit', { rule: 'no-weight-in-house' });
  const usable = tested.filter((one) => one.kind === 'usable');
  if (usable.length > 0) return fromTested(leastFrom(usable), card, loads, person);
  if (tested.length > 0)
    return without(
      'testedSet',
      { rule: 'sets-say-nothing', tested: tested.map(({ because }) => because) },
      TESTED_LOADS,
    );
  if (person.sudden !== null) return without('testedSet', { rule: 'untested-sudden' }, TESTED_LOADS);
  if (stage.loadLimit !== 'none' || slot.dose.repetitions === null || person.effects.under18)
    return without('testedSet', { rule: 'untested' }, TESTED_LOADS);
  return byFeel(card, loads, settings, person, bounds);
}

function fromTested(
  { set, loadKg: byRuleKg, by, because, testedToDeg }: Usable,
  card: PosedCard,
  loads: readonly KitLoad[],
  person: Person,
): StartLoad | CardLimit {
  const { defaults } = person.clinic;
  const lightKg = byRuleKg * (person.sudden?.loadShare ?? 1);
  const hurtFromKg = painfulFromKg(card, testedToDeg, person);
  if (hurtFromKg === 0) return { limit: 'pain', value: 0, why: { reason: 'hurt-without-weight' } };
  const byPain = lightKg >= hurtFromKg;
  const loadKg = byPain ? hurtFromKg : lightKg;
  const load =
    roundDownToKit(
      loadKg,
      loads.filter((one) => one.loadKg < hurtFromKg),
    ) ?? NOTHING;
  const byFormula = by === 'kilograms' || by === 'hipMoment';
  return {
    load,
    byFeel: false,
    byTest: set.loadKg > 0,
    testedToDeg,
    decidedBy: byPain || Math.abs(load.loadKg - loadKg) < 1e-9 ? 'testedSet' : 'kit',
    rule: {
      rule: 'tested',
      tested: because,
      lightShare: person.sudden?.loadShare ?? null,
      hurtFromKg: byPain ? hurtFromKg : null,
    },
    inputs: {
      testedKg: set.loadKg,
      testedRepetitions: set.repetitions,
      testedReserve: set.reserve,
      testedToDeg: set.rangeDeg ?? null,
      byRuleKg: Math.round(byRuleKg * 100) / 100,
      ...(person.sudden === null ? {} : { lightShare: person.sudden.loadShare }),
      ...(byPain ? { hurtFromKg } : {}),
    },
    source: byFormula ? FORMULAS[defaults.oneRepetitionMaximum] : TESTED_LOADS,
  };
}

/**
 * The heaviest load that every cap but that of the hip bend admits over the card's whole movement, so that it holds at
 * every range the ladder may open; and that the caps admit lifting. No cap that is tightened ever raises it.
 */
function byFeel(
  card: PosedCard,
  loads: readonly KitLoad[],
  settings: readonly RangeSetting[],
  { model }: Person,
  bounds: Bounds,
): StartLoad {
  const loadsKg = loads.map(({ loadKg }) => loadKg);
  const lifted = countUntil(loadsKg, (loadKg) => model.liftBarredBy(card, loadKg, bounds.caps) !== null);
  const inFull = model.heaviestInFull(
    card,
    loadsKg.slice(0, lifted),
    { ...bounds.caps, angleDeg: null },
    settings.flatMap(({ stepM }) => stepM ?? []).slice(-1),
  );
  const load = loads.find(({ loadKg }) => loadKg === inFull.loadKg) ?? NOTHING;
  const next = loads[lifted];
  const barredBy =
    inFull.barredBy ?? (next === undefined ? null : model.liftBarredBy(card, next.loadKg, bounds.caps));
  const felt = load.loadKg > 0;
  return {
    load,
    byFeel: felt,
    byTest: false,
    testedToDeg: null,
    decidedBy: barredBy === null ? 'dose' : decidedByOf(barredBy, bounds),
    rule: { rule: felt ? 'felt' : 'none-admitted' },
    inputs: { atMostKg: load.loadKg, heaviestInTheHouseKg: loads.at(-1)?.loadKg ?? 0 },
    source: TESTED_LOADS,
  };
}

/** That a set tested with this card shows the body alone to be too much for the slot's dose; null when none does. */
export function bodyAloneTooMuch(
  card: PosedCard,
  slot: Slot,
  person: Person,
  { stage }: Bounds,
): CardLimit | null {
  return tooMuchIn(testedAnswers(card, slot, person, stage, []));
}

function tooMuchIn(tested: readonly TestedAnswer[]): CardLimit | null {
  const tooMuch = tested.find(({ kind }) => kind === 'tooMuch');
  if (tooMuch === undefined) return null;
  return {
    limit: 'testedSet',
    value: tooMuch.set.repetitions,
    why: { reason: 'tested-too-much', tested: tooMuch.because },
  };
}

function without(decidedBy: DecidedBy, rule: LoadRule, source: Source | null = null): StartLoad {
  return {
    load: NOTHING,
    byFeel: false,
    byTest: false,
    testedToDeg: null,
    decidedBy,
    rule,
    inputs: {},
    source,
  };
}
