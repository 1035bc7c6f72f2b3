/** What an author reads of a doubt, by its rule, and of an entry that confirms nothing. */
import { stringify } from 'yaml';
import type { Doubt, DoubtRule } from './doubt.ts';
import { type Idle, wayText } from './confirmed.ts';

export interface DoubtWords {
  readonly found: string;
  readonly expected: string;
  readonly fix: string;
}

/** `found` reads after "is", `expected` after "must be". */
export function doubtWords(doubt: Doubt): DoubtWords {
  return {
    found: String(doubt.value),
    expected: `${isWrongWord(doubt) ? '' : 'plausible: '}${EXPECTED[doubt.rule](doubt)}`,
    fix: `${CURE[doubt.rule] ?? 'mend it'}; or, if it is right, ${confirmText(doubt)}`,
  };
}

/** Of an entry under `confirmed`; `key`: which of its keys is wrong. */
export function idleWords({ entry, stands }: Idle): DoubtWords & { readonly key: 'path' | 'value' } {
  if (stands !== null)
    return {
      key: 'value',
      found: String(entry.value),
      expected: `${stands}, the value at ${entry.path}`,
      fix: `check ${entry.path} again, then write the value that stands there`,
    };
  return {
    key: 'path',
    found: entry.path,
    expected: 'where a value stands that is not plausible; nothing there needs confirming',
    fix: 'take the entry out, or mend its path',
  };
}

/** Of an activity that the protocol's table does not hold: a wrong word, but one that may be right. */
export function isWrongWord({ rule }: Doubt): boolean {
  return rule === 'unknownActivity';
}

function confirmText({ path, value }: Doubt): string {
  const entry = { path: wayText(path), value, reason: '…' };
  const text = stringify(entry, { collectionStyle: 'flow', lineWidth: 0 }).trim();
  return `check it and add to confirmed: - ${text.replace('reason: …', 'reason: how it was checked')}`;
}

const CURE: Partial<Record<DoubtRule, string>> = {
  unknownActivity: 'write one of these, or take the line out',
  otherSide: 'mend it, or open the right person’s file',
  otherCountry: 'mend it, or open the right person’s file',
  ageSince: 'mend it, or open the right person’s file',
  heightSince: 'mend it, or open the right person’s file',
  massSince: 'mend it, or open the right person’s file',
  testTwice: 'write side for each leg, or keep the entry that is right',
  setTwice: 'keep the set that is right',
  overrideMinutes: 'write less, or give minutesPerDay the time',
};

type Say = (doubt: Doubt) => string;

const EXPECTED: Readonly<Record<DoubtRule, Say>> = {
  bodyMassIndex: ({ least, most, inputs }) =>
    `${least} to ${most} kg at ${inputs['heightM']} m; this is a body mass index of ${inputs['bodyMassIndex']}, and ${inputs['from']} to ${inputs['to']} is expected`,
  heightForAge: (doubt) => `${span(doubt)} m at ${doubt.inputs['ageYears']} years`,
  symptomsForAge: ({ most, inputs }) =>
    `at most ${most} weeks at ${inputs['ageYears']} years: such trouble does not begin before ${inputs['fromAgeYears']}`,
  liftForMass: ({ most, inputs }) =>
    `at most ${most} kg: ${inputs['repetitions']} repetitions with ${inputs['reserve']} left speak for ${inputs['onceKg']} kg lifted once, and ${inputs['share']} times a body mass of ${inputs['massKg']} kg is expected at most for this exercise`,
  repetitionsToFailure: ({ most, inputs }) => `at most ${most}, with ${inputs['reserve']} left`,
  setTwice: ({ inputs }) =>
    `${inputs['pain']}, as in testedSets[${inputs['before']}]: the same set stands there`,
  kitAmount: (doubt) => `${span(doubt)} for ${THINGS[String(doubt.inputs['thing'])]}`,
  minutesPerDay: (doubt) => `${span(doubt)} minutes`,
  runningKm: (doubt) => `${span(doubt)} km`,
  trainingForAge: ({ most, inputs }) =>
    `at most ${most} years at ${inputs['ageYears']}: nobody trains before ${inputs['fromAgeYears']}`,
  weekAboveRuns: ({ most, inputs }) =>
    inputs['longestIn30DaysKm'] === 0
      ? '0 km, as the longest run of 30 days is'
      : `at most ${most} km: ${inputs['runsPerWeek']} runs a week, the longest of 30 days ${inputs['longestIn30DaysKm']} km`,
  unknownActivity: ({ inputs }) => `an activity that ${inputs['protocol']} knows: ${inputs['known']}`,
  testHold: (doubt) => `${span(doubt)} seconds`,
  testTwice: ({ inputs }) =>
    `${inputs['pain']}, as in tests[${inputs['before']}]: ${inputs['test']} stands there for the same leg, or for a leg that is not named`,
  notYet: ({ most }) => `${most} or earlier: it speaks of what has been`,
  longAgo: ({ least }) => `${least} or later`,
  farAhead: ({ most }) => `${most} or earlier: it lies far ahead`,
  seenWhen: (doubt) => span(doubt),
  startLate: ({ most, inputs }) => `${most} or earlier: this is ${inputs['days']} days after the consult`,
  reviewLate: ({ most, inputs }) =>
    `${most} or earlier: this is ${inputs['weeks']} weeks after startOn, and ${inputs['mostWeeks']} are expected at most`,
  ageSince: (doubt) =>
    `${span(doubt)}: revision ${doubt.inputs['revision']}, seen ${doubt.inputs['seenOn']}, has ${doubt.inputs['last']}`,
  heightSince: (doubt) =>
    `${span(doubt)} m: revision ${doubt.inputs['revision']} has ${doubt.inputs['last']}`,
  massSince: (doubt) => `${span(doubt)} kg: revision ${doubt.inputs['revision']} has ${doubt.inputs['last']}`,
  otherSide: before,
  otherCountry: before,
  beforeLast: ({ least, inputs }) => `${least} or later, the day of revision ${inputs['revision']}`,
  overrideMinutes: ({ inputs }) =>
    `a number with which a session fits into minutesPerDay (${inputs['minutesPerDay']}); with it a session takes ${inputs['minutes']} minutes`,
  overrideWords: ({ inputs }) =>
    `words that agree with the hip bend of ${inputs['hipFlexionDeg']}° on the plan; “${inputs['words']}” means ${inputs['means']}`,
  overrideCount: ({ most, inputs }) => `at most ${most}, as ${inputs['slot']} has it in the protocol`,
  overrideLoad: ({ most, inputs }) =>
    inputs['tested'] === 'no'
      ? 'no weight: none was tested with this exercise'
      : `at most ${most} kg, the heaviest that was tested with this exercise and hurt little`,
};

const THINGS: Readonly<Record<string, string>> = {
  dumbbellsKg: 'a dumbbell at home, in kg',
  kettlebellsKg: 'a kettlebell at home, in kg',
  platesKg: 'a plate at home, in kg',
  barKg: 'an empty bar at home, in kg',
  bottlesL: 'a bottle, in litres',
  stepCm: 'a step, in cm',
};

function before({ inputs }: Doubt): string {
  return `${inputs['last']}, as in revision ${inputs['revision']}`;
}

function span({ least, most }: Doubt): string {
  if (least === undefined) return `at most ${most}`;
  return most === undefined ? `${least} or more` : `${least} to ${most}`;
}
