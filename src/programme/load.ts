/** The weight a card starts with: from a tested set, as the kit can make it, never an invented number. */
import type { Slot } from '../content/library.ts';
import type { Tempo } from '../dose/dose.ts';
import { loadsFromKit, roundDownToKit, type KitLoad, type Thing } from '../dose/kit.ts';
import { loadFor, type LoadAnswer } from '../dose/load.ts';
import type { TestedSet } from '../dose/tested.ts';
import type { DecidedBy } from './programme.ts';
import type { PosedCard } from './model.ts';
import { painfulSide, type Bounds, type Person } from './person.ts';
import type { ExerciseCard } from '../content/library.ts';

/** `byFeel`: nothing was tested, so the reserve decides, up to `load`. */
export interface StartLoad {
  readonly load: KitLoad;
  readonly byFeel: boolean;
  readonly decidedBy: Extract<DecidedBy, 'testedSet' | 'kit' | 'dose'>;
  readonly because: string;
  readonly inputs: Readonly<Record<string, number | string | null>>;
}

const THINGS: readonly Thing[] = ['dumbbell', 'kettlebell', 'bar', 'bottles', 'rucksack', 'band'];

/** Every load the kit makes for this card, ascending from nothing; only nothing for a card that carries no weight. */
export function loadsFor(card: ExerciseCard, person: Person): readonly KitLoad[] {
  const place = card.movement?.loadAt;
  const nothing: KitLoad = { loadKg: 0, made: { thing: 'nothing' } };
  if (place === undefined || person.effects.lightHolds.length > 0) return [nothing];
  const asked = THINGS.filter((thing) => (card.equipment as readonly string[]).includes(thing));
  const { dumbbellsUsedInPairs, bandNewtons } = person.clinic.defaults;
  const use = { inPairs: dumbbellsUsedInPairs, bandNewtons, only: asked.length > 0 ? asked : null };
  return loadsFromKit(person.consult.kit, place, use);
}

/** The load at the start of the stage's ladder. `rangeDeg`: the range it will be used at, as far as known. */
export function startLoad(
  card: PosedCard,
  slot: Slot,
  person: Person,
  { stage }: Bounds,
  rangeDeg: number | null,
): StartLoad {
  const loads = loadsFor(card, person);
  const nothing = loads[0] as KitLoad;
  const bare = (because: string): StartLoad => ({
    load: nothing,
    byFeel: false,
    decidedBy: 'dose',
    because,
    inputs: {},
  });
  if (card.movement.loadAt === undefined) return bare('the card carries no weight');
  if (loads.length === 1) return bare('no weight for it in the house, or none allowed');
  const tested = usableSets(card, person);
  if (tested.length === 0) {
    return stage.loadLimit === 'none' && slot.dose.repetitions !== null
      ? {
          load: loads.at(-1) as KitLoad,
          byFeel: true,
          decidedBy: 'dose',
          because: 'nothing tested with this card: the reserve decides',
          inputs: {},
        }
      : bare('nothing tested with this card, and the stage goes no higher than what was tested');
  }
  const answers = tested.map((set) => ({
    set,
    kg: kgFrom(set, card, slot, person, stage.loadLimit === 'none' ? null : set.loadKg, rangeDeg),
  }));
  const least = answers.reduce((low, next) => (next.kg.loadKg < low.kg.loadKg ? next : low));
  const load = roundDownToKit(least.kg.loadKg, loads) ?? nothing;
  return {
    load,
    byFeel: false,
    decidedBy: Math.abs(load.loadKg - least.kg.loadKg) < 1e-9 ? 'testedSet' : 'kit',
    because: least.kg.because,
    inputs: {
      testedKg: least.set.loadKg,
      testedRepetitions: least.set.repetitions,
      testedReserve: least.set.reserve,
      byRuleKg: Math.round(least.kg.loadKg * 100) / 100,
    },
  };
}

// A leg exercise counts on the side it was tested on; the painful side is what is loaded for.
function usableSets(card: PosedCard, { consult, protocol }: Person): TestedSet[] {
  const all = consult.testedSets.filter(
    (set) => set.card === card.id && set.pain <= protocol.limits.testPainAtMost.value,
  );
  const side = painfulSide(consult);
  const own = card.legs === 'together' ? all : all.filter((set) => set.side === side);
  return own.map(({ loadKg, repetitions, reserve, rangeDeg, tempo, pain }) => ({
    loadKg,
    repetitions,
    reserve,
    rangeDeg: rangeDeg ?? null,
    tempo:
      tempo === undefined ? null : { goSeconds: tempo.go, holdSeconds: tempo.hold, backSeconds: tempo.back },
    pain,
  }));
}

function kgFrom(
  set: TestedSet,
  card: PosedCard,
  slot: Slot,
  person: Person,
  atMostKg: number | null,
  rangeDeg: number | null,
): { loadKg: number; because: string } {
  const { repetitions, reserve } = slot.dose;
  // A hold is not worked out from repetitions: what was held is what is held, the seconds are the dose's matter.
  if (repetitions === null) return { loadKg: set.loadKg, because: 'the load that was held in the test' };
  const tempo = slot.dose.tempo ?? card.tempo;
  const { limits } = person.protocol;
  const answer = loadFor(
    set,
    { repetitions, reserve: reserve ?? 0, rangeDeg, tempo, atMostKg },
    {
      formula: person.clinic.defaults.oneRepetitionMaximum,
      painAtMost: limits.testPainAtMost.value,
      capacityAbove: limits.capacityAbove.value,
      maximumAllowed: !person.effects.under18,
    },
    momentPair(set, card, person, rangeDeg, tempo),
  );
  return 'loadKg' in answer
    ? { loadKg: answer.loadKg, because: becauseOf(answer) }
    : { loadKg: 0, because: `the tested set gives no load (${answer.why.rule})` };
}

function momentPair(
  set: TestedSet,
  card: PosedCard,
  { model }: Person,
  rangeDeg: number | null,
  tempo: Tempo,
) {
  const at = (loadKg: number) =>
    model.sweepTo(card, set.rangeDeg ?? rangeDeg, loadKg, tempo)?.peak.hipMomentNm;
  const [unloadedNm, testedNm] = [at(0), at(set.loadKg)];
  return unloadedNm === undefined || testedNm === undefined ? null : { unloadedNm, testedNm };
}

function becauseOf(answer: Extract<LoadAnswer, { loadKg: number }>): string {
  const { decidedBy, testedToFailure, wantedToFailure, byKilogramsKg, byHipMomentKg } = answer.why;
  const two = (kg: number | null) => (kg === null ? 'not asked' : `${Math.round(kg * 10) / 10} kg`);
  const how = {
    kilograms: 'the kilograms decide',
    hipMoment: 'the hip moment decides',
    capacity: 'kept as capacity, without a maximum',
    limit: 'not above the tested load in this stage',
  }[decidedBy];
  return `from ${testedToFailure} to ${wantedToFailure} repetitions to failure: ${two(byKilogramsKg)} by kilograms, ${two(byHipMomentKg)} by hip moment; ${how}`;
}
