/** A consult file: what the physiotherapist writes after seeing one person. Long, for it lists all keys. */
import * as z from 'zod';
import { addDays } from '../../units/date.ts';
import { HEAVIEST_WRITTEN_KG } from '../../units/load.ts';
import {
  about,
  across,
  cannotDo,
  date,
  dateOrNull,
  from,
  id,
  line,
  pain,
  tempo,
  weekday,
  wholeFrom,
  yesNo,
  LANGUAGES,
} from './words.ts';

const answer = z.enum(['no', 'yes', 'notAsked']).default('notAsked');

/** Left out acts like `notAsked`, and that acts like `yes`. */
export const screen = z.strictObject({
  saddleNumbness: about('Numbness between the legs or when wiping.', answer),
  bladderBowel: about('New change of bladder or bowel.', answer),
  bothLegWeakness: about('Weakness in both legs.', answer),
  worseningWeakness: about('Weakness that is getting worse.', answer),
  footDrop: about('A foot that drops.', answer),
  fever: about('Fever or feeling ill with it.', answer),
  weightLoss: about('Weight loss without a reason.', answer),
  cancerNightPain: about('A history of cancer with pain at night.', answer),
  clotSigns: about('Signs of a clot in leg or lung.', answer),
  popBruise: about('A sudden pop with a bruise, or not able to walk.', answer),
  suspectedFracture: about('A suspected fracture.', answer),
  hopPain: about('Bone pain on hopping.', answer),
  focalBonePain: about('Pain on one spot of bone.', answer),
  nightBonePain: about('Bone pain at night or at rest.', answer),
  missedPeriods: about('Missed periods.', answer),
  lowEnergy: about('Eating too little for the training.', answer),
  fluoroquinolone: about('A fluoroquinolone antibiotic in the last six months.', answer),
  oralSteroid: about('Steroid tablets.', answer),
  recentInjection: about('An injection near the tendon in the last two weeks.', answer),
  uncontrolledBloodPressure: about('Blood pressure that is not under control.', answer),
  hernia: about('A hernia.', answer),
  suddenOnsetUnder18: about('Under 18 with a sudden start.', answer),
});
export type Screen = z.output<typeof screen>;
export type ScreenItem = keyof Screen;
export const SCREEN_ITEMS = Object.keys(screen.shape) as readonly ScreenItem[];

const test = z.strictObject({
  test: about('The test as the protocol names it, or the id of the card that was tried.', id),
  pain: about('Pain during it, 0 to 10.', pain),
  painFreeHipFlexionDeg: about(
    'Hip bend in degrees at which pain began; the range stays 10° below it.',
    from(0, 140, '°'),
  ).optional(),
  painFreeKneeFlexionDeg: about(
    'Knee bend in degrees at which pain began, where the protocol is guarded by kneeFlexion.',
    from(0, 150, '°'),
  ).optional(),
  painFreeAnkleDorsiflexionDeg: about(
    'Dorsiflexion in degrees at which pain began, where the protocol is guarded by ankleDorsiflexion.',
    from(0, 40, '°'),
  ).optional(),
  seconds: about('How long the hold could be kept.', from(1, 300, 'seconds')).optional(),
  repetitions: about('How many repetitions were done.', wholeFrom(1, 50)).optional(),
  side: about('The leg it was done on.', z.enum(['left', 'right', 'both'])).optional(),
});

const testedSet = z.strictObject({
  card: about('The id of the exercise card that was tested.', id),
  side: about('The side that was tested; of a lift on both legs, the sorer one.', z.enum(['left', 'right'])),
  loadKg: about('The weight used, 0 for none.', from(0, HEAVIEST_WRITTEN_KG, 'kg')),
  repetitions: about(
    'Repetitions done, 1 to 50; over 15 is kept as capacity, without a maximum.',
    wholeFrom(1, 50),
  ),
  reserve: about('How many more could have been done.', wholeFrom(0, 10)),
  rangeDeg: about(
    'Guarded angle reached in degrees, of most protocols the hip bend.',
    from(0, 150, '°'),
  ).optional(),
  tempo: about('Tempo of the test.', tempo).optional(),
  pain: about('Pain during it, 0 to 10; above 3 the set is not used.', pain),
});

const beyondCap = about(
  'The recorded decision to go above a cap of the house; the exercise then begins in its gentlest version and does not grow before the review.',
  z.strictObject({
    decidedBy: about('Who decided.', line),
    reason: about('On what ground.', line),
  }),
);

const clearance = z.strictObject({
  flag: about(
    'The screen item that is cleared.',
    z.enum(Object.keys(screen.shape) as [ScreenItem, ...ScreenItem[]]),
  ),
  by: about('Who decided.', line),
  on: about('When.', date),
  decision: about('What was decided and on what ground.', line),
  imaging: about(
    'The picture that was taken: needed to lift a sudden pop, and a sudden start under 18.',
    z.strictObject({
      kind: about('What was taken, for example MRI or ultrasound.', line),
      on: about('When.', date),
      result: about('What it showed.', line),
    }),
  ).optional(),
});

const kit = z.strictObject({
  dumbbellsKg: about(
    'Each dumbbell in the house, kilograms; two of a kind stand twice.',
    z.array(from(0.25, 100, 'kg')),
  ),
  kettlebellsKg: about('Each kettlebell, kilograms.', z.array(from(1, 100, 'kg'))),
  platesKg: about('Each plate for the bar, kilograms; pairs stand twice.', z.array(from(0.25, 50, 'kg'))),
  barKg: about('The empty bar, kilograms.', from(1, 30, 'kg')).optional(),
  // Any text: the clinic file says which names there are, and its cure lists them.
  bands: about("Bands by the clinic's own name for them.", z.array(line)),
  rucksack: about('A rucksack that can be filled.', yesNo),
  bottlesL: about('Bottles that can be filled with water, litres each.', z.array(from(0.25, 20, 'litres'))),
  bench: about('A bench or a steady sofa edge.', yesNo),
  ball: about('A large exercise ball.', yesNo),
  stepCm: about('Heights of steps or stairs in the house, centimetres.', z.array(from(5, 60, 'cm'))),
});
export type ConsultKit = z.output<typeof kit>;

const running = across(
  z.strictObject({
    runs: about('Does this person run?', yesNo),
    decision: about('The recorded decision on running now.', z.enum(['keep', 'walk-run', 'none'])),
    weeklyKm: about('Kilometres in a usual week now.', from(0, 300, 'km')).optional(),
    runsPerWeek: about('Runs in a usual week.', wholeFrom(1, 14)).optional(),
    longestIn30DaysKm: about('The longest run of the last 30 days.', from(0, 200, 'km')).optional(),
    hills: about('Used to hill work?', yesNo).optional(),
    speed: about('Used to fast running?', yesNo).optional(),
    hillyRoutes: about('Are the everyday routes hilly?', yesNo).optional(),
    stepsPerMin: about('Step rate at easy pace.', from(110, 230, 'steps a minute')).optional(),
    overStriding: about('Was over-striding seen?', z.enum(['yes', 'no', 'notSeen'])).optional(),
    trainingYears: about('Years of regular running.', from(0, 80, 'years')).optional(),
    weeksOff: about('Weeks without running just now.', from(0, 520, 'weeks')).optional(),
    races: about(
      'Races that stand, with their length.',
      z.array(
        z.strictObject({
          on: about('Day of the race.', date),
          km: about('Its length.', from(0.1, 200, 'km')),
          decision: about(
            'Who decided that this race is run although it comes early, and on what ground.',
            line,
          ).optional(),
        }),
      ),
    ).optional(),
  }),
  (value, wrong) => {
    if (value.runs !== true) return;
    for (const key of [
      'weeklyKm',
      'longestIn30DaysKm',
      'hills',
      'speed',
      'hillyRoutes',
      'overStriding',
      'trainingYears',
      'weeksOff',
    ] as const) {
      if (value[key] === undefined) wrong([key], 'there for someone who runs', { missing: true });
    }
    // After weeks off the longest run is older than the weekly distance; otherwise it lies in one of those weeks.
    const { weeklyKm, longestIn30DaysKm, weeksOff } = value;
    if (typeof weeklyKm !== 'number' || typeof longestIn30DaysKm !== 'number' || weeksOff !== 0) return;
    if (longestIn30DaysKm > weeklyKm) {
      wrong(['longestIn30DaysKm'], `not more than weeklyKm (${weeklyKm})`, {
        fix: 'write the distance of a week that holds this run, or mend the run',
        because: 'weeklyKm',
      });
    }
  },
);

export const CHANGES = [
  'hills',
  'speed',
  'distance',
  'new-class',
  'stretching',
  'long-drives',
  'more-sitting',
  'break',
  'poor-sleep',
  'stress',
  'new-shoes',
  'heavy-lifting',
  'nothing-known',
] as const;

// A year mistyped would print years of dates; who is not seen for half a year begins anew [choice].
const MOST_REVIEW_DAYS = 26 * 7;

export const consultSchema = across(
  z.strictObject({
    alias: about('An invented short name for this person; never the real one.', id),
    revision: about('Counts the programmes written for this person, from 1.', wholeFrom(1, 999)),
    clinician: about('Who saw the person.', line),
    seenOn: about('Day of the consult.', date),
    startOn: about('First day of this programme.', date),
    reviewOn: about('Day of the next review; sessions are dated up to the day before it.', date),
    language: about(
      'Language of the leaflet; the first of the clinic where it is left out.',
      z.enum(LANGUAGES),
    ).optional(),
    country: about(
      'Two-letter country code; decides the emergency wording.',
      z.string().regex(/^[A-Z]{2}$/, 'a two-letter country code in capitals'),
    ),
    ageYears: about('Age in years.', wholeFrom(8, 110, 'years')),
    side: about('The painful side.', z.enum(['left', 'right', 'both'])),
    worseSide: about('When both hurt, the worse one.', z.enum(['left', 'right'])).optional(),
    heightM: about('Height in metres.', from(1.2, 2.2, 'm')).optional(),
    massKg: about('Body mass in kilograms.', from(30, 250, 'kg')).optional(),
    protocol: about('The id of the staged protocol.', id),
    stage: about(
      'The stage, or auto for the proposal from the tests.',
      z.union(
        [z.literal('auto'), z.literal(1), z.literal(2), z.literal(3), z.literal(4), z.literal('keepGoing')],
        'auto, 1, 2, 3, 4 or keepGoing',
      ),
    ),
    stageBecause: about('Why the stage is later than the proposal.', line).optional(),
    discharge: about(
      'The decision to end the treatment; needed by keepGoing.',
      z.strictObject({
        decidedBy: about('Who decided.', line),
        on: about('When.', date),
      }),
    ).optional(),
    withdraw: about('yes: the leaflet on the web says whom to ring, and no more.', yesNo).optional(),
    withdrawOn: about('The day from which it does.', date).optional(),
    draft: about('yes: checked, never built, and displaces nothing.', yesNo).optional(),
    step: about(
      'The step within the stage; left out, that of the revision before, and 1 in a first one.',
      wholeFrom(1, 60),
    ).optional(),
    irritability: about('How easily it flares and how long it lasts.', z.enum(['low', 'moderate', 'high'])),
    response24h: about('What the tests had done by the next day.', z.enum(['settled', 'up', 'unknown'])),
    usualMorningPain: about('Pain of a usual morning, 0 to 10.', pain),
    symptomWeeks: about('Weeks since it began.', from(0, 2000, 'weeks')).optional(),
    painArea: about('Where it hurts, in a few words.', line).optional(),
    screen: about('Each item no, yes or notAsked; one not asked acts like yes.', screen),
    clearances: about('Recorded decisions that lift an effect of the screen.', z.array(clearance)).default(
      [],
    ),
    cannotDo: about('What this person cannot or must not do.', z.array(cannotDo)),
    pregnancy: about(
      'Pregnant: the week on the day of the consult. Under cannotDo alone, without this key, it acts like the second half.',
      z.strictObject({ weeks: about('Full weeks of pregnancy.', wholeFrom(1, 43, 'weeks')) }),
    ).optional(),
    afterBirth: about(
      'After birth: the weeks since, on the day of the consult. Under cannotDo alone, without this key, it acts like the first weeks.',
      z.strictObject({
        weeks: about('Full weeks since the birth.', wholeFrom(0, 260, 'weeks')),
        clearance: about(
          'A recorded decision that lifts the rule of no jumping and no running in the first weeks.',
          z.strictObject({
            by: about('Who decided.', line),
            on: about('When.', date),
            decision: about('What was decided and on what ground.', line),
          }),
        ).optional(),
      }),
    ).optional(),
    tests: about('Tests done today, at least one.', z.array(test).min(1, 'at least one test with its pain')),
    testedSets: about('Sets done to find the load.', z.array(testedSet)).default([]),
    kit: about('What there is at home.', kit),
    days: about(
      'Days on which there is time for a session of exercises; runs may fall on other days.',
      z.array(weekday).min(1, 'at least one day'),
    ),
    minutesPerDay: about('Minutes there are on such a day.', from(5, 180, 'minutes')),
    running: about('Running habits and the decision on running.', running),
    sitting: about(
      'Sitting: what is tolerated, what cannot be avoided, what is wished.',
      z.strictObject({
        toleranceMinutes: about('Minutes of sitting before it hurts.', from(0, 600, 'minutes')),
        fixedBlocksMinutes: about(
          'Stretches of sitting that cannot be broken, such as a shift at the wheel.',
          z.array(from(1, 720, 'minutes')),
        ).optional(),
        goalMinutes: about('Minutes wished for.', from(1, 720, 'minutes')).optional(),
      }),
    ),
    recovery: about(
      'What slows or helps recovery just now.',
      z.strictObject({
        sleep: about('Sleep.', z.enum(['good', 'fair', 'poor'])),
        stress: about('Strain from life and work.', z.enum(['low', 'moderate', 'high'])),
        tired: about('Tired most days?', yesNo),
      }),
    ),
    changedBefore: about('What changed in the four weeks before it began.', z.array(z.enum(CHANGES))).default(
      [],
    ),
    doesNow: about(
      'What this person does now besides.',
      z.array(
        z.strictObject({
          what: about('The activity.', line),
          times: about('Times a week.', from(0, 21, 'times a week')),
          days: about('The days it falls on, where they are fixed.', z.array(weekday).min(1)).optional(),
        }),
      ),
    ).default([]),
    goals: about(
      'What this person wants back.',
      z.array(
        z.strictObject({
          what: about('The goal in their words.', line),
          on: about('Its date, if it has one.', date).optional(),
          doneTimes: about(
            'How often it has been done again, settled by the next day.',
            wholeFrom(0, 99),
          ).optional(),
        }),
      ),
    ).default([]),
    outcomes: about(
      'Outcome scores as a dated series.',
      z.array(
        z.strictObject({
          on: about('Day of the scores.', date),
          visaH: about('VISA-H total, 0 to 100.', from(0, 100, '')).optional(),
          activities: about(
            'Up to three activities, 0 unable to 10 able.',
            z
              .array(
                z.strictObject({
                  what: about('What is done.', line),
                  score: about('From 0, not able, to 10, fully able.', from(0, 10, '')),
                }),
              )
              .max(3),
          ).optional(),
          sittingMinutes: about('Minutes of sitting without more pain.', from(0, 720, 'minutes')).optional(),
          globalChange: about('Global change, -3 much worse to 3 much better.', wholeFrom(-3, 3)).optional(),
        }),
      ),
    ).default([]),
    notExamined: about('What could not be examined by video.', z.array(line)).default([]),
    overrides: about(
      "The clinician's own number for one cell, with the reason.",
      z.array(
        z.strictObject({
          path: about(
            'card.cell, for example long-lever-bridge-hold.sets; or running.decision (keep, walk-run or none), or pain.decision (goOn: usual pain is high, and a programme is written all the same).',
            z.string().regex(/^[a-z0-9-]+\.[A-Za-z]+$/, 'card.cell, such as long-lever-bridge-hold.sets'),
          ),
          value: about('The value.', z.union([z.number(), z.string()], 'a number or text')),
          reason: about('Why.', line),
        }),
      ),
    ).default([]),
    chosen: about(
      "The clinician's own card for a slot of the present stage.",
      z.array(
        z.strictObject({
          slot: about('The name of the slot, as the protocol has it.', line),
          card: about('The id of the exercise card.', id),
          reason: about('Why.', line),
          beyondCap: beyondCap.optional(),
        }),
      ),
    ).default([]),
    leftOut: about(
      'Cards that are not used for this person, wherever the protocol would.',
      z.array(
        z.strictObject({
          card: about('The id of the exercise card.', id),
          reason: about('Why.', line),
        }),
      ),
    ).default([]),
    added: about(
      'Cards done besides those of the slots.',
      z.array(
        z.strictObject({
          card: about('The id of the exercise card.', id),
          afterSlot: about('The slot after which it is done; left out, at the end.', line).optional(),
          reason: about('Why.', line),
          beyondCap: beyondCap.optional(),
        }),
      ),
    ).default([]),
    confirmed: about(
      'A value that is right although it looks like a slip.',
      z.array(
        z.strictObject({
          path: about('Where it stands, for example testedSets.0.loadKg.', line),
          value: about('The value as written there.', z.union([z.number(), z.string()], 'a number or text')),
          reason: about('How it was checked.', line),
        }),
      ),
    ).default([]),
  }),
  (value, wrong) => {
    const [seenOn, startOn, reviewOn] = [
      dateOrNull(value.seenOn),
      dateOrNull(value.startOn),
      dateOrNull(value.reviewOn),
    ];
    if (seenOn !== null && startOn !== null && startOn < seenOn) {
      wrong(['startOn'], `seenOn (${seenOn}) or later`, {
        fix: `write ${seenOn} or a later day, or mend seenOn`,
      });
    }
    if (startOn !== null && reviewOn !== null && reviewOn <= startOn) {
      wrong(['reviewOn'], `after startOn (${startOn})`, {
        fix: `write a day after ${startOn}, or mend startOn`,
      });
    }
    if (startOn !== null && reviewOn !== null && reviewOn > addDays(startOn, MOST_REVIEW_DAYS)) {
      wrong(
        ['reviewOn'],
        `${addDays(startOn, MOST_REVIEW_DAYS)} or earlier: 26 weeks after startOn at most`,
        {
          code: 'out-of-range',
          fix: 'write the day of the next review; nothing lifts this limit',
        },
      );
    }
    for (const [index, clearance] of (Array.isArray(value.clearances) ? value.clearances : []).entries()) {
      const on = dateOrNull((clearance as { readonly on?: unknown } | null)?.on);
      if (on === null || startOn === null || on <= startOn) continue;
      wrong(['clearances', index, 'on'], `startOn (${startOn}) or earlier`, {
        fix: 'write the day on which it was decided; what is still to be decided lifts nothing',
      });
    }
    if (value.pregnancy !== undefined && value.afterBirth !== undefined) {
      wrong(['afterBirth'], 'left out when pregnancy is recorded', {
        fix: 'keep the one that holds today',
        because: 'pregnancy',
      });
    }
    const clearedOn = dateOrNull(
      (value.afterBirth as { readonly clearance?: { readonly on?: unknown } } | null | undefined)?.clearance
        ?.on,
    );
    if (clearedOn !== null && startOn !== null && clearedOn > startOn) {
      wrong(['afterBirth', 'clearance', 'on'], `startOn (${startOn}) or earlier`, {
        fix: 'write the day on which it was decided; what is still to be decided lifts nothing',
      });
    }
    for (const day of repeated(value.days))
      wrong(['days', day], 'named once', { fix: 'take the second out' });
    for (const [index, activity] of (Array.isArray(value.doesNow) ? value.doesNow : []).entries()) {
      const { times, days } = (activity ?? {}) as { readonly times?: unknown; readonly days?: unknown };
      for (const day of repeated(days))
        wrong(['doesNow', index, 'days', day], 'named once', { fix: 'take the second out' });
      if (typeof times !== 'number' || !Array.isArray(days) || days.length <= Math.ceil(times)) continue;
      wrong(['doesNow', index, 'times'], `${days.length}, as many as its days, or more`, {
        fix: `write ${days.length} or more, or take a day out`,
        because: 'days',
      });
    }
    if (value.side !== 'both' && value.worseSide !== undefined && value.worseSide !== value.side) {
      wrong(['worseSide'], `left out when side is ${String(value.side)}`, {
        fix: 'take worseSide out, or mend side',
        because: 'side',
      });
    }
    if (value.side === 'both' && value.worseSide === undefined)
      wrong(['worseSide'], 'there when side is both', { missing: true });
  },
);

// Indices of entries that stand in the list before.
function repeated(list: unknown): number[] {
  if (!Array.isArray(list)) return [];
  return list.flatMap((entry, index) => (list.indexOf(entry) < index ? [index] : []));
}

export type ConsultFrontMatter = z.output<typeof consultSchema>;
