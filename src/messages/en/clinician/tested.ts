/** What a tested set says of a load, in words for the clinician. */
import type { ConsultSet, TestedReason } from '../../../decisions/terms/testedReason.ts';
import { numberText } from '../plain.ts';

/** @example testedText({ code: 'hurt', set, painAtMost: 3 }) // => 'the set of 8 with 12 kg hurt 5, 3 at most is asked' */
export function testedText(tested: TestedReason): string {
  switch (tested.code) {
    case 'held':
      return `the load that was held in the ${tested.from === 'test' ? 'test' : 'stage before'}`;
    case 'load':
      return loadedText(tested);
    case 'hurt':
      return `the ${setText(tested.set)} hurt ${tested.set.pain}, ${tested.painAtMost} at most is asked`;
    case 'too-short':
      return `the ${setText(tested.set)} went to ${tested.set.rangeDeg}° only, too little of the movement`;
    case 'says-nothing':
      return saysNothingText(tested);
  }
}

function saysNothingText({ set, why }: Extract<TestedReason, { code: 'says-nothing' }>): string {
  const name = `the ${setText(set)}`;
  switch (why.rule) {
    case 'tempo':
      return `${name} took ${numberText(why.tested)} s a repetition, ${numberText(why.needed)} s at least are asked`;
    case 'unloaded':
    case 'capacity':
    case 'tooManyRepetitions':
      return `${name} was good for ${why.testedToFailure} repetitions to failure, the dose asks for ${why.wantedToFailure}`;
    case 'pain':
    case 'range':
      return `${name}: ${why.rule} ${why.tested}, ${why.needed} is asked`;
  }
}

const DECIDED_WORDS = {
  kilograms: 'the kilograms decide',
  hipMoment: 'the hip moment decides',
  capacity: 'kept as capacity, without a maximum',
  limit: 'not above the tested load in this stage',
} as const;

function loadedText({ side, why }: Extract<TestedReason, { code: 'load' }>): string {
  const { decidedBy, testedToFailure, wantedToFailure, byKilogramsKg, byHipMomentKg } = why;
  const one = (kg: number | null) =>
    kg === null ? 'not asked' : `${numberText(Math.round(kg * 10) / 10)} kg`;
  const leg = side === null ? '' : `, ${side} side`;
  return `tested set${leg}, from ${testedToFailure} to ${wantedToFailure} repetitions to failure: ${one(byKilogramsKg)} by kilograms, ${one(byHipMomentKg)} by hip moment; ${DECIDED_WORDS[decidedBy]}`;
}

function setText({ loadKg, repetitions }: ConsultSet): string {
  return `set of ${repetitions} with ${numberText(loadKg)} kg`;
}
