/** What the sets tested with a card say of its load: a load, nothing, or that the body alone is too much. */
import type { Slot, Stage } from '../../content/library.ts';
import { loadFor, type HipMomentPair, type LoadAnswer } from '../../dosing/load.ts';
import type { TestedSet } from '../../dosing/tested.ts';
import { reserveFor } from './firstDose.ts';
import { distanceTo, type PosedCard } from '../person/model.ts';
import { painfulSide, type Person } from '../person/person.ts';
import type { ConsultSet, TestedReason } from '../terms/testedReason.ts';

export interface Usable {
  readonly kind: 'usable';
  readonly set: ConsultSet;
  readonly loadKg: number;
  /** `held`: the weight of a tested hold · the others as in the dose. */
  readonly by: 'held' | Extract<LoadAnswer, { loadKg: number }>['why']['decidedBy'];
  readonly because: TestedReason;
  /** Null where the card's range is not graded by hip bend, or the test's was not written down. */
  readonly testedToDeg: number | null;
}

export type TestedAnswer =
  | Usable
  /** `unusable`: it says nothing of the load · `tooMuch`: even without a weight the dose asks for more than was shown. */
  | { readonly kind: 'unusable' | 'tooMuch'; readonly set: ConsultSet; readonly because: TestedReason };

/**
 * An answer for every set of this card; of a card that works one leg at a time, for those of the painful side. Where none
 * was tested, for what was done last in the stage before.
 */
export function testedAnswers(
  card: PosedCard,
  slot: Slot,
  person: Person,
  stage: Stage,
  settingsDeg: readonly number[],
): TestedAnswer[] {
  return setsOf(card, slot, person, stage).map((set) =>
    answerOf(set, card, slot, person, stage, settingsDeg),
  );
}

function setsOf(card: PosedCard, slot: Slot, person: Person, stage: Stage): readonly ConsultSet[] {
  const tested = ownSets(card, person);
  return tested.length > 0 ? tested : lastSets(card, slot, person, stage);
}

/** The sets tested with a card on the side that is treated. */
export function ownSets({ id, legs }: PosedCard, { consult }: Person): readonly ConsultSet[] {
  const side = painfulSide(consult);
  return consult.testedSets.filter((set) => set.card === id && (legs === 'together' || set.side === side));
}

// What was done in the stage before and not tested again is gone on with as if it had been tested so.
function lastSets(card: PosedCard, { dose }: Slot, person: Person, stage: Stage) {
  const { lastDone, consult, protocol } = person;
  const held = dose.repetitions === null;
  // What was written down as lifted is known in its own stage too.
  const isLogged = person.logged?.exercises.some((one) => one.card === card.id && one.loadKg > 0) ?? false;
  return lastDone.flatMap((one): ConsultSet[] => {
    const { loadKg, repetitions, reserve, rangeDeg, tempo } = one;
    const elsewhere = protocol.stages[Number(one.stage) - 1]?.name !== stage.name;
    if (
      one.card !== card.id ||
      !(elsewhere || isLogged) ||
      loadKg === null ||
      (repetitions === null) !== held
    )
      return [];
    return [
      {
        card: card.id,
        side: painfulSide(consult),
        loadKg,
        repetitions: repetitions ?? 1,
        reserve: reserve ?? 0,
        ...(rangeDeg === null ? {} : { rangeDeg }),
        ...(tempo === null
          ? {}
          : { tempo: { go: tempo.goSeconds, hold: tempo.holdSeconds, back: tempo.backSeconds } }),
        pain: 0,
      },
    ];
  });
}

/** Of several usable sets the one with the lowest load. */
export function leastFrom(usable: readonly Usable[]): Usable {
  return usable.reduce((least, next) => (next.loadKg < least.loadKg ? next : least));
}

function answerOf(
  set: ConsultSet,
  card: PosedCard,
  slot: Slot,
  person: Person,
  stage: Stage,
  settingsDeg: readonly number[],
): TestedAnswer {
  const painAtMost = person.protocol.limits.testPainAtMost.value;
  const unusable = (because: TestedReason) => ({ kind: 'unusable', set, because }) as const;
  if (set.pain > painAtMost) return unusable({ code: 'hurt', set, painAtMost });
  if (!isUseful(set, card, person, settingsDeg)) return unusable({ code: 'too-short', set });
  const testedToDeg = settingsDeg.length === 0 ? null : (set.rangeDeg ?? null);
  // A hold is not worked out from repetitions: what was held is what is held, the seconds are the dose's matter.
  if (slot.dose.repetitions === null) {
    const from = ownSets(card, person).length > 0 ? 'test' : 'stage-before';
    const because = { code: 'held', from } as const;
    return { kind: 'usable', set, loadKg: set.loadKg, by: 'held', because, testedToDeg };
  }
  const answer = asked(set, card, slot, person, stage.loadLimit === 'none' ? null : set.loadKg);
  if ('loadKg' in answer)
    return {
      kind: 'usable',
      set,
      loadKg: answer.loadKg,
      by: answer.why.decidedBy,
      because: {
        code: 'load',
        side: card.legs === 'each' ? painfulSide(person.consult) : null,
        why: answer.why,
      },
      testedToDeg,
    };
  return {
    kind: bodyAlone(answer.why.rule, set) ? 'tooMuch' : 'unusable',
    set,
    because: { code: 'says-nothing', set, why: answer.why },
  };
}

/** A set that went less far than the card can be set to, or more than a step short of its least useful range, says nothing of it. */
function isUseful(
  { rangeDeg }: ConsultSet,
  card: PosedCard,
  { model, protocol }: Person,
  settingsDeg: readonly number[],
): boolean {
  const [nearest] = settingsDeg;
  if (rangeDeg === undefined || nearest === undefined) return true;
  if (rangeDeg < nearest) return false;
  const { leastRange, roundAngleDeg } = protocol.limits;
  const stepOnDeg = rangeDeg + roundAngleDeg.value;
  return distanceTo(card, stepOnDeg, model) >= leastRange.value - 1e-9;
}

function asked(
  set: ConsultSet,
  card: PosedCard,
  { dose }: Slot,
  person: Person,
  atMostKg: number | null,
): LoadAnswer {
  const { limits } = person.protocol;
  const tempo = dose.tempo ?? card.tempo;
  return loadFor(
    doneSet(set),
    {
      repetitions: dose.repetitions ?? 0,
      reserve: reserveFor(dose.reserve ?? 0, person),
      // The range is held to the set's instead of the set to the range: `testedToDeg`.
      rangeDeg: null,
      tempo,
      atMostKg,
    },
    {
      formula: person.clinic.defaults.oneRepetitionMaximum,
      painAtMost: limits.testPainAtMost.value,
      capacityAbove: limits.capacityAbove.value,
      maximumAllowed: !person.effects.under18,
    },
    momentPair(set, card, person, tempo),
  );
}

function doneSet({ loadKg, repetitions, reserve, rangeDeg, tempo, pain }: ConsultSet): TestedSet {
  return {
    loadKg,
    repetitions,
    reserve,
    rangeDeg: rangeDeg ?? null,
    tempo:
      tempo === undefined ? null : { goSeconds: tempo.go, holdSeconds: tempo.hold, backSeconds: tempo.back },
    pain,
  };
}

// A range that was not written down is taken as the card's own.
function momentPair(
  { loadKg, rangeDeg }: ConsultSet,
  card: PosedCard,
  { model }: Person,
  tempo: PosedCard['tempo'],
): HipMomentPair | null {
  const at = (kg: number) => model.sweepTo(card, rangeDeg ?? null, kg, tempo)?.peak.hipMomentNm;
  const [unloadedNm, testedNm] = [at(0), at(loadKg)];
  return unloadedNm === undefined || testedNm === undefined ? null : { unloadedNm, testedNm };
}

type NoLoad = Extract<LoadAnswer, { none: true }>['why'];

function bodyAlone(rule: NoLoad['rule'], { loadKg }: ConsultSet): boolean {
  return rule === 'unloaded' || (loadKg === 0 && (rule === 'capacity' || rule === 'tooManyRepetitions'));
}
