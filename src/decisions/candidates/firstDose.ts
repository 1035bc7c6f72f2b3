/** The dose an exercise starts the stage with: the protocol's, with this person's hold, lighter under 18. */
import { houseRules } from '../terms/houseSources.ts';
import type { ExerciseCard, Slot } from '../../content/library.ts';
import { holdFor, type HoldAnswer, type HoldRules } from '../../dosing/hold.ts';
import type { TimedDose } from '../../dosing/work.ts';
import type { CardLimit } from '../terms/cardLimit.ts';
import { reserveAtLeast, shortHoldsBy, strainBarredBy } from '../person/effort.ts';
import type { Person } from '../person/person.ts';
import type { Why } from '../terms/cell.ts';
import { testsOfSide } from '../screen/testsOfSide.ts';

export interface FirstDose {
  readonly dose: TimedDose;
  readonly why: Readonly<Partial<Record<'sets' | 'repetitions' | 'reserve' | 'holdSeconds', Why>>>;
}

const HOUSE = houseRules('2 and 4');

/** A set less and a repetition more in hand under 18 [choice]; 0 for everybody else. */
export function lighterBy({ effects }: Person): 0 | 1 {
  return effects.under18 ? 1 : 0;
}

/** Repetitions in hand: the dose's, one more under 18, and as many as someone needs who must not strain. */
export function reserveFor(reserve: number, person: Person): number {
  return Math.max(reserve + lighterBy(person), reserveAtLeast(person));
}

/** The first dose, or that the hold that was shown is too short to take a share of. `known`: done before, or tested. */
export function firstDose(
  slot: Slot,
  card: ExerciseCard,
  person: Person,
  known: boolean,
): FirstDose | CardLimit {
  const lighter = lighterBy(person);
  const { sets, reserve, holdSeconds, tempo } = slot.dose;
  const dose: TimedDose = {
    ...slot.dose,
    tempo: tempo ?? card.tempo,
    sets: Math.max(1, sets - lighter),
    reserve: reserve === null ? null : reserveFor(reserve, person),
  };
  const strains = reserve !== null && reserve + lighter < reserveAtLeast(person);
  const young = {
    ...(lighter === 0 ? {} : { sets: youngWhy(sets), reserve: youngWhy(reserve) }),
    ...(strains ? { reserve: strainWhy(reserve, person) } : {}),
  };
  if (holdSeconds === null)
    return card.fewAtFirst && !known ? few({ dose, why: young }, person) : { dose, why: young };
  const held = firstHold(slot, card, person);
  if ('none' in held)
    return {
      limit: 'testedSet',
      value: held.why.testedSeconds,
      why: { reason: 'hold-too-short', testedSeconds: held.why.testedSeconds ?? 0 },
    };
  const why = holdWhy(held, person);
  return {
    dose: { ...dose, holdSeconds: held.holdSeconds },
    why: why === null ? young : { ...young, holdSeconds: why },
  };
}

// Two sets, so that so many repetitions in all are left [choice].
const FEW_SETS = 2;

/** A card that asks for few at first, taken at its word. */
function few({ dose, why }: FirstDose, { protocol }: Person): FirstDose {
  const { value, mark, cite } = protocol.limits.fewRepetitions;
  const sets = Math.min(dose.sets, FEW_SETS, value);
  const repetitions = Math.min(dose.repetitions ?? 1, Math.floor(value / sets));
  if (sets * repetitions >= dose.sets * (dose.repetitions ?? 1)) return { dose, why };
  const reason = (byRule: number | null): Why => ({
    rule: { rule: 'few-at-first', repetitions: value },
    inputs: { byRule, fewRepetitions: value },
    source: { cite: cite ?? houseRules('11.2').cite, mark },
    decidedBy: 'dose',
  });
  return {
    dose: { ...dose, sets, repetitions },
    why: { ...why, sets: reason(dose.sets), repetitions: reason(dose.repetitions) },
  };
}

/** Seconds no hold of this card goes beyond on the ladder: the share of what was tested, the house's and the screen's longest. */
export function longestHoldSeconds(card: ExerciseCard, person: Person): number {
  const { holdAtMostSeconds } = person.protocol.limits;
  const held = holdOf(holdAtMostSeconds.value, card, person, { untestedSeconds: null, shareFrom: null });
  return 'none' in held ? 0 : held.holdSeconds;
}

// What is published is given as published, however long the hold that was shown.
function firstHold({ dose, doseSource }: Slot, card: ExerciseCard, person: Person): HoldAnswer {
  const { untestedHoldSeconds, gentlerBelow } = person.protocol.limits;
  return holdOf(dose.holdSeconds ?? 0, card, person, {
    untestedSeconds: untestedHoldSeconds.value,
    shareFrom: doseSource.mark === 'read' ? null : gentlerBelow.value,
  });
}

function holdOf(
  doseSeconds: number,
  card: ExerciseCard,
  person: Person,
  first: Pick<HoldRules, 'untestedSeconds' | 'shareFrom'>,
): HoldAnswer {
  const { consult, protocol, lastDone } = person;
  const tested = testsOfSide(card, consult).flatMap(({ seconds }) => seconds ?? []);
  const done = lastDone.flatMap(({ card: id, holdSeconds }) => (id === card.id ? (holdSeconds ?? []) : []));
  const { holdShareTo, holdAtMostSeconds, screenedHoldSeconds } = protocol.limits;
  return holdFor(doseSeconds, tested.length === 0 ? null : Math.min(...tested), {
    shareTo: holdShareTo.value,
    longestSeconds: holdAtMostSeconds.value,
    screenedSeconds: shortHoldsBy(person).length > 0 ? screenedHoldSeconds.value : null,
    shareFrom: first.shareFrom,
    // What was held in the programme before is known: no more than that.
    untestedSeconds: first.untestedSeconds === null ? null : Math.max(first.untestedSeconds, ...done),
  });
}

function strainWhy(byRule: number, person: Person): Why {
  const { value, mark, cite } = person.protocol.limits.screenedReserve;
  return {
    rule: { rule: 'no-straining', bars: strainBarredBy(person) },
    inputs: { byRule, reserveAtLeast: value },
    source: { cite: cite ?? houseRules('2 and 11.11').cite, mark },
    decidedBy: 'dose',
  };
}

function youngWhy(byRule: number | null): Why {
  return {
    rule: { rule: 'young' },
    inputs: { byRule },
    source: HOUSE,
    decidedBy: 'dose',
  };
}

function holdWhy({ why }: Extract<HoldAnswer, { holdSeconds: number }>, person: Person): Why | null {
  const { protocol } = person;
  const { testedSeconds, shareTo } = why;
  switch (why.decidedBy) {
    case 'dose':
      return null;
    case 'testedHold':
      return {
        rule: { rule: 'held-share' },
        inputs: { testedSeconds, share: shareTo },
        source: HOUSE,
        decidedBy: 'testedSet',
      };
    case 'untested':
      return {
        rule: { rule: 'held-untested' },
        inputs: { shortestSeconds: protocol.limits.untestedHoldSeconds.value },
        source: { ...houseRules('11.4'), mark: protocol.limits.untestedHoldSeconds.mark },
        decidedBy: 'dose',
      };
    case 'shareFrom':
      return {
        rule: { rule: 'held-longer' },
        inputs: { testedSeconds, share: protocol.limits.gentlerBelow.value },
        source: { ...houseRules('11.2'), mark: protocol.limits.gentlerBelow.mark },
        decidedBy: 'testedSet',
      };
    case 'longest':
      return {
        rule: { rule: 'held-longest' },
        inputs: { longestSeconds: protocol.limits.holdAtMostSeconds.value },
        source: HOUSE,
        decidedBy: 'dose',
      };
    case 'screen':
      return {
        rule: { rule: 'short-holds', bars: shortHoldsBy(person) },
        inputs: { longestSeconds: protocol.limits.screenedHoldSeconds.value },
        source: HOUSE,
        decidedBy: 'dose',
      };
  }
}
