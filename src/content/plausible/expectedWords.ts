/** What each rule expects, in words for the author. */
import type { Doubt, DoubtRule } from './doubt.ts';

type Say = (doubt: Doubt) => string;

/** By its rule; reads after "must be plausible:". */
export const EXPECTED: Readonly<Record<DoubtRule, Say>> = {
  bodyMassIndex: ({ least, most, inputs }) =>
    `${least} to ${most} kg at ${inputs['heightM']} m; this is a body mass index of ${inputs['bodyMassIndex']}, and ${inputs['from']} to ${inputs['to']} is expected${inputs['runs'] === 'yes' ? ' of somebody who runs' : ''}`,
  heightForAge: (doubt) => `${span(doubt)} m at ${doubt.inputs['ageYears']} years`,
  symptomsForAge: ({ most, inputs }) =>
    `at most ${most} weeks at ${inputs['ageYears']} years: such trouble does not begin before ${inputs['fromAgeYears']}`,
  liftForMass: ({ most, inputs }) =>
    `at most ${most} kg: ${inputs['repetitions']} repetitions with ${inputs['reserve']} left speak for ${inputs['onceKg']} kg lifted once, and ${inputs['share']} times a body mass of ${inputs['massKg']} kg is expected at most for this exercise`,
  repetitionsToFailure: ({ most, inputs }) => `at most ${most}, with ${inputs['reserve']} left`,
  loadedRepetitions: ({ most, inputs }) =>
    `at most ${most}, with ${inputs['reserve']} left and ${inputs['loadKg']} kg: a weight that can be moved more often tells nothing of the load`,
  setPounds: ({ value, inputs }) =>
    `${inputs['meantKg']}: ${value} pounds are ${inputs['meantKg']} kg, which the kit makes, and ${value} kg it does not`,
  kettlebellPounds: ({ value, inputs }) =>
    `${inputs['inKg']}, in kg: ${value} is the size in pounds of a kettlebell of ${inputs['inKg']} kg`,
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
  weekAboveLongest: ({ most, inputs }) =>
    `at most ${most} km, ${inputs['times']} times the longest run of 30 days (${inputs['longestIn30DaysKm']} km), or more with runsPerWeek beside it`,
  unknownActivity: ({ inputs }) => `an activity that ${inputs['protocol']} knows: ${inputs['known']}`,
  testHold: (doubt) => `${span(doubt)} seconds`,
  testTwice: ({ inputs }) =>
    `${inputs['pain']}, as in tests[${inputs['before']}]: ${inputs['test']} stands there for the same leg, or for a leg that is not named`,
  testCount: ({ inputs }) =>
    inputs['key'] === 'seconds'
      ? `repetitions: ${inputs['test']} is counted in repetitions, not held`
      : `seconds: ${inputs['test']} is a hold`,
  easierHurtsMore: ({ most, inputs }) =>
    `at most ${most}: ${inputs['harder']}, a harder version of ${inputs['test']}, stands in tests[${inputs['index']}] with ${inputs['pain']}`,
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
  loadSince: ({ inputs, ...doubt }) =>
    `${span(doubt)} kg: revision ${inputs['revision']} has ${inputs['last']} for ${inputs['card']} on this leg`,
  otherSide: before,
  otherCountry: before,
  beforeLast: ({ least, inputs }) => `${least} or later, the day of revision ${inputs['revision']}`,
  painApart: ({ inputs, ...doubt }) =>
    `${span(doubt)}, near the ${inputs['pain']} of the test ${inputs['test']}${inputs['test'] === inputs['card'] ? '' : `, of which ${inputs['card']} is an easier or harder version`}`,
  usualPain: ({ most, inputs }) => `at most ${most}: the worst of the tests is ${inputs['worst']}`,
  painlessAngle: ({ inputs }) =>
    `1 or more: painFreeHipFlexionDeg ${inputs['painFreeHipFlexionDeg']} says where pain began`,
  lowIrritability: ({ inputs }) =>
    inputs['response24h'] === 'up'
      ? 'moderate or high: the tests were still felt the next day'
      : `moderate or high: pain of ${inputs['worst']} is recorded, and ${inputs['mostPain']} at most is expected beside low`,
  sideOfArea: ({ inputs }) => `${inputs['other']}, as in painArea (${inputs['painArea']})`,
  sideUntested: ({ inputs }) =>
    `${inputs['other']}: every test and set that names a leg was done on that one`,
  soundLegHurts: ({ most, inputs }) =>
    `at most ${most} on the ${inputs['leg']} leg: the painful side is ${inputs['side']}`,
  sorerLeg: ({ inputs }) => `${inputs['treated']}: of a lift on both legs the sorer one is written`,
  rangeOverCard: ({ most, inputs }) =>
    `at most ${most}°: ${inputs['card']} is built to ${inputs['builtToDeg']}° of hip bend`,
  repetitionSeconds: ({ most, inputs }) =>
    `less: one repetition takes ${inputs['seconds']} seconds, and ${most} are expected at most`,
  weeksOff: ({ most, inputs }) =>
    `less than ${most} weeks beside weeklyKm ${inputs['weeklyKm']}, which is the average of the last ${most} weeks`,
  runsPerWeek: ({ most }) => `at most ${most} runs a week`,
  stepsPerMin: (doubt) => `${span(doubt)} steps a minute, both feet counted`,
  runsNot: () => '0 km, as running.runs is no',
  keepsNothing: () => 'none or walk-run, as running.runs is no',
  raceKm: ({ most, inputs }) =>
    `at most ${most} km, ${inputs['times']} times the longest run of 30 days (${inputs['longestIn30DaysKm']} km)`,
  longestLogged: ({ most, inputs }) =>
    `at most ${most} km: the log of revision ${inputs['revision']} has no run longer than ${inputs['loggedKm']} km in its last 30 days`,
  sittingShort: ({ least }) => `${least} minutes or more; it is counted in minutes`,
  sittingTwice: ({ inputs, ...doubt }) =>
    `${span(doubt)} minutes, near toleranceMinutes (${inputs['toleranceMinutes']}) of the same day`,
  scoreTwice: ({ inputs }) => `another day than that of outcomes[${inputs['before']}]`,
  underAge: ({ most }) => `at most ${most}: suddenOnsetUnder18 is yes`,
  childAtAge: (doubt) => `${span(doubt)} years for somebody pregnant, or after a birth`,
  reviewSoon: ({ least }) => `${least} or later: a plan of so few days shows nothing`,
  overrideReserve: ({ least, inputs }) =>
    `${least} or more left in hand, as ${inputs['slot']} has it in the protocol`,
  overrideTempo: () => 'a tempo that takes time: seconds there, still, and back',
  overrideRest: ({ least }) => `${least} seconds or more, or 0 for none`,
  overrideMinutes: ({ inputs }) =>
    `a number with which a session fits into minutesPerDay (${inputs['minutesPerDay']}); with it a session takes ${inputs['minutes']} minutes`,
  overrideWords: ({ inputs }) =>
    `words that agree with the hip bend of ${inputs['hipFlexionDeg']}° on the plan; “${inputs['words']}” means ${inputs['means']}`,
  overrideCount: ({ most, inputs }) => `at most ${most}, as ${inputs['slot']} has it in the protocol`,
  overrideLoad: ({ most, inputs }) =>
    inputs['tested'] === 'no'
      ? 'no weight: none was tested with this exercise'
      : `at most ${most} kg, the heaviest that was tested or written down with this exercise and hurt little`,
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

function span({ least, most }: Pick<Doubt, 'least' | 'most'>): string {
  if (least === undefined) return `at most ${most}`;
  return most === undefined ? `${least} or more` : `${least} to ${most}`;
}
