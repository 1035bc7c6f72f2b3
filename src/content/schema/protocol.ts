/**
 * A staged protocol: stages with caps and slots, and every house number with its mark. Long, for it lists all keys.
 */
import * as z from 'zod';
import { DOSE_KINDS, CHANGE_KINDS } from '../../dosing/dose.ts';
import { RUN_KINDS } from '../../scheduling/run.ts';
import {
  about,
  across,
  angle,
  capFrom,
  changed,
  from,
  id,
  line,
  pain,
  position,
  setting,
  source,
  tempo,
  title,
  wholeFrom,
  yesNo,
} from './words.ts';
import { doseRule, protocolRule, stageRule } from './protocolRules.ts';

const dose = across(
  z.strictObject({
    kind: about('hold, slow, repetition-maximum, eccentric, contacts or mobility.', z.enum(DOSE_KINDS)),
    sets: about('Sets in a session.', wholeFrom(1, 10)),
    repetitions: about('Repetitions a set, for all but holds.', wholeFrom(1, 60)).optional(),
    holdSeconds: about('Seconds a hold, for holds.', from(1, 120, 'seconds')).optional(),
    tempo: about("Overrides the card's own tempo.", tempo).optional(),
    restSeconds: about('Rest between sets.', from(0, 600, 'seconds')),
    timesPerDay: about('Times on a day it is done.', wholeFrom(1, 4)),
    reserve: about('Repetitions left in hand at the end of a set.', wholeFrom(0, 8)).optional(),
    source: about('Where this dose comes from.', source),
  }),
  doseRule,
);

const change = z.strictObject({
  change: about('What this rung changes.', z.enum(CHANGE_KINDS)),
  by: about(
    'How much a step, in its own unit; left out for load, which goes by the kit.',
    from(0.1, 60, ''),
  ).optional(),
  to: about('Where it ends.', from(0, 180, '')).optional(),
});

const slot = z.strictObject({
  name: about('What the slot is for, as the clinician says it.', line),
  needed: about('Must it be filled?', yesNo),
  cards: about('Cards that may fill it, best first.', z.array(id).min(1, 'at least one card')),
  dose: about('The first dose of the stage.', dose),
  progression: about('What changes step by step, in this order, one thing a step.', z.array(change)),
  when: about(
    'On session days, on the days between, or on every day.',
    z.enum(['session', 'between', 'daily']),
  ).default('session'),
});

const stage = across(
  z.strictObject({
    name: about('The name of the stage, for the clinician.', line),
    positions: about('Positions the stage admits.', z.array(position).min(1, 'at least one position')),
    caps: about(
      'Limits that hold at set-up, along the movement and for lifting the weight.',
      z.strictObject({
        hipFlexionDeg: about(
          'Largest hip bend in degrees at the first step, or none; where the angle is hipFlexion or hipAdduction.',
          capFrom(0, 140, '°'),
        ).optional(),
        kneeFlexionDeg: about(
          'Largest knee bend in degrees at the first step, or none; where the angle is kneeFlexion.',
          capFrom(0, 150, '°'),
        ).optional(),
        ankleDorsiflexionDeg: about(
          'Largest dorsiflexion in degrees, or none; where the angle is ankleDorsiflexion.',
          capFrom(-50, 40, '°'),
        ).optional(),
        compressionBw: about('Largest squeeze N in body weights, or none.', capFrom(0, 10, 'body weights')),
        tensionBw: about('Largest pull T in body weights, or none.', capFrom(0, 20, 'body weights')),
        demand: about('Largest share of muscle strength, or none.', capFrom(0, 2, '')),
      }),
    ),
    opensToDeg: about(
      'Angle to which the stage opens step by step; left out, it stays at the cap.',
      from(0, 150, '°'),
    ).optional(),
    supportMargin: about('Factor on squeeze and pull for cards with two supports.', from(1, 3, '')),
    loadLimit: about(
      'testedHold or testedSet: the load stays at or below it; none: by the dose.',
      z.enum(['testedHold', 'testedSet', 'none']),
    ).default('none'),
    usualWeeks: about(
      'Weeks this stage usually takes.',
      z.strictObject({
        from: about('At the least.', wholeFrom(1, 52)),
        to: about('At the most.', wholeFrom(1, 104)),
      }),
    ),
    enter: about(
      'What must be true to start in this stage.',
      z.strictObject({
        words: about('In a sentence, for the record.', line),
        tests: about(
          'Tests of which one at least must have been done, and none with more pain.',
          z.array(id),
        ).default([]),
        painAtMost: about(
          'Pain at most in them, and in every test with the hip nearly straight.',
          pain,
        ).default(3),
        settled: about('Must the next day have been settled?', yesNo).default(false),
        sport: about('Only for someone whose sport needs it?', yesNo).default(false),
      }),
    ),
    exit: about(
      'What must be true to go on to the next stage.',
      z.strictObject({
        words: about('In a sentence, for the record.', line),
        sessions: about('Sessions done at least.', wholeFrom(0, 60)),
        painAtMost: about('Pain in the test at most.', pain),
      }),
    ),
    hoursBetween: about('Hours between two sessions.', from(12, 168, 'hours')),
    sessionsPerWeek: about('Sessions a week wished for.', wholeFrom(1, 14)),
    maxExercises: about('Exercises in a session at most.', wholeFrom(1, 10)),
    slots: about(
      'What a session is made of, most important first.',
      z.array(slot).min(1, 'at least one slot'),
    ),
    running: about(
      'Running in this stage.',
      z.strictObject({
        most: about('The hardest kind of run it admits.', z.enum(RUN_KINDS)),
        words: about('For the leaflet.', line),
      }),
    ),
    sitting: about('Sitting in this stage, a sentence for the leaflet.', line),
    stretching: about('Stretching in this stage, a sentence for the leaflet.', line),
  }),
  stageRule,
);

export const protocolSchema = across(
  z.strictObject({
    title: about('The name of the protocol.', title),
    alsoCalled: about(
      'What colleagues call what it is for: words of the trade.',
      z.array(line).max(12),
    ).default([]),
    tendon: about('The tendon, in plain words.', line),
    angle: about('Which joint angle squeezes it, or none of the model.', angle),
    why: about('Why this tendon hurts, two sentences for the leaflet.', z.array(line).min(1).max(3)),
    whyGentle: about(
      'The same for someone who is told to take care (blood pressure, a medicine, pregnancy, a sudden start, high pain, under 18): without strong or heavy work. Left out, the sentences that speak of it are left out.',
      z.array(line).min(1).max(3),
    ).optional(),
    whyLater: about(
      'The same in the stages that hold the hip bend small no more. Left out, it stays as it was.',
      z.array(line).min(1).max(3),
    ).optional(),
    whySudden: about(
      'How it began, for someone in whom it began in one moment (a pop, a sudden start): stands in place of the first sentence of each of the others.',
      z.array(line).min(1).max(2),
    ).default(['It began in one moment, not bit by bit.']),
    tests: about(
      'Tests the protocol knows: id and the name for the record.',
      z.array(
        z.strictObject({
          id: about('What a consult calls it; the id of the card where one is tested.', id),
          name: about('What the record calls it.', line),
          lowFlexion: about('Is it done with the hip nearly straight?', yesNo),
          reachesDeg: about(
            'Hip bend to which it goes where it hurts nobody; the whole movement of its card when left out.',
            from(0, 140, '°'),
          ).optional(),
        }),
      ),
    ),
    stages: about(
      'The stages in order; the last may be called keep, or have a name that begins so.',
      z.array(stage).min(1, 'at least one stage'),
    ),
    painRule: about(
      'Pain during exercise.',
      z.strictObject({
        duringAtMost: about('Pain during an exercise at most.', setting(pain)),
        overUsualAtMost: about('Or so much over the usual pain.', setting(pain)),
        neverAbove: about('Never above this, but where no more than usual holds.', setting(pain)),
        usualOnlyFrom: about(
          'From this usual pain on, and with high irritability: no more than usual during an exercise, and settled by the evening.',
          setting(pain),
        ).default({ value: 4, mark: 'choice' }),
        decisionFrom: about(
          "From this usual pain on a programme needs the clinician's decision: in the consult under overrides, path pain.decision.",
          setting(pain),
        ).default({ value: 7, mark: 'choice' }),
      }),
    ),
    morningCheck: about(
      'The daily check on one fixed small task.',
      z.strictObject({
        card: about('The card it is done with.', id),
        how: about(
          "How it is done, in two short sentences, where the card is not in the person's plan; the card's own words when left out.",
          line,
        ).optional(),
        repetitions: about('Repetitions of the check.', setting(wholeFrom(1, 20))),
        carryOnOver: about('Up to so much over usual: carry on.', setting(pain)),
        sameAgainOver: about('So much over usual, once: same again, no increase.', setting(pain)),
        easeBackAt: about(
          'From this pain on: ease back; read as usual + 2 where that is more.',
          setting(pain),
        ),
        contactAfterDays: about('Not settled by then: get in touch.', setting(wholeFrom(1, 60))),
        contactWhenRisingDays: about('Rising for so long: get in touch.', setting(wholeFrom(1, 60))),
      }),
    ),
    easeBack: about(
      'What easing back one step takes off.',
      z.strictObject({
        setsFactor: about('Sets times this.', setting(from(0.1, 1, ''))),
        loadFactor: about('Load times this.', setting(from(0.1, 1, ''))),
        rangeLessDeg: about('Degrees of hip bend less.', setting(from(0, 60, '°'))),
      }),
    ),
    flare: about(
      'What to do in a flare.',
      z.strictObject({
        holdsOnlyDays: about(
          'Days of nothing but holds.',
          z.strictObject({
            from: about('At the least.', wholeFrom(1, 14)),
            to: about('At the most.', wholeFrom(1, 14)),
          }),
        ),
        restDays: about('Days of rest before the holds.', setting(wholeFrom(0, 7))).default({
          value: 1,
          mark: 'choice',
        }),
        holdsAtMost: about('Holds kept at most, the most important first.', setting(wholeFrom(1, 5))).default(
          {
            value: 2,
            mark: 'choice',
          },
        ),
        setsFactor: about('Sets of a hold times this.', setting(from(0.1, 1, ''))).default({
          value: 0.5,
          mark: 'choice',
        }),
        holdFactor: about('Seconds of a hold times this.', setting(from(0.1, 1, ''))).default({
          value: 0.5,
          mark: 'choice',
        }),
        sittingFactor: about('Sitting times this.', setting(from(0, 1, ''))),
        mark: source.shape.mark,
      }),
    ),
    getHelp: about(
      'When to get in touch, in the words of this tendon.',
      z.strictObject({
        night: about('Which pain at night is a reason to get in touch, a sentence for the leaflet.', line),
        expected: about('What belongs to this tendon and is no reason by itself.', line).optional(),
      }),
    ).default({ night: 'Pain wakes you at night, or you have a fever.' }),
    missedDays: about(
      'What to do after missed days.',
      z.strictObject({
        sameStepUnder: about('Fewer missed days than this: the same step.', setting(wholeFrom(1, 60))),
        oneBackUpTo: about(
          'Missed days up to this: one step back; more: the start of the stage and contact.',
          setting(wholeFrom(1, 90)),
        ),
      }),
    ),
    goingOn: about(
      'What must be true to go on a step.',
      z.strictObject({
        doneSessions: about('Sessions with the whole dose done.', setting(wholeFrom(1, 20))),
        checkOverUsual: about('Morning check over usual at most.', setting(pain)),
        checkDays: about('For so many days.', setting(wholeFrom(1, 60))),
        unwrittenCheckAs: about(
          'A morning that was not written down counts for going on like this score; 10 is the worst it can have been.',
          setting(pain),
        ).default({ value: 10, mark: 'choice' }),
        sessionsDoneShare: about('Share of the planned sessions done.', setting(from(0, 1, ''))),
        leastSessions: about('Sessions on a step at least.', setting(wholeFrom(1, 20))),
        leastDays: about('Days on a step at least.', setting(wholeFrom(1, 60))),
      }),
    ),
    discharge: about(
      'What must be true to end treatment.',
      z.strictObject({
        goalDoneTimes: about('Times the goal activity has been done.', setting(wholeFrom(1, 10))),
        checkAtMost: about('Usual morning pain at most.', setting(pain)),
        sideDifferenceAtMost: about(
          'Share by which one side may be weaker than the other.',
          setting(from(0, 1, '')),
        ),
      }),
    ).default({
      goalDoneTimes: { value: 2, mark: 'choice' },
      checkAtMost: { value: 1, mark: 'choice' },
      sideDifferenceAtMost: { value: 0.1, mark: 'choice' },
    }),
    minimalChange: about(
      'The least change of a score that matters to the person, where the literature gives one.',
      z.strictObject({
        visaHPoints: about('Points of VISA-H.', setting(from(1, 100, 'points'))).optional(),
        activityPoints: about(
          'Points of one activity, 0 to 10.',
          setting(from(0.5, 10, 'points')),
        ).optional(),
        morningPainPoints: about('Points of pain, 0 to 10.', setting(from(0.5, 10, 'points'))).optional(),
      }),
    ).default({}),
    limits: about(
      'How fast anything may grow, and how far it stays from what hurt.',
      z.strictObject({
        stepGrowth: about(
          'Times at most a step, in peak squeeze, hip moment and squeeze over the session.',
          setting(from(1, 3, '')),
        ),
        weekGrowth: about('Times at most a week, in total.', setting(from(1, 3, ''))),
        feltLoadGrowth: about(
          'Times at most a step, in kilograms of a weight that is felt for; the next weight in the house may be further off.',
          setting(from(1, 3, '')),
        ).default({ value: 1.5, mark: 'choice' }),
        cardsAboveHalfCap: about(
          'Cards above half the squeeze cap in a session at most.',
          setting(wholeFrom(0, 10)),
        ),
        besideSession: about(
          'Exercises for the days between, and for every day, at most so many of each.',
          setting(wholeFrom(0, 5)),
        ).default({ value: 1, mark: 'choice' }),
        provokedLessDeg: about('Degrees kept below the angle that provoked pain.', setting(from(0, 60, '°'))),
        roundAngleDeg: about('Angles round to this, towards the gentle end.', setting(from(1, 30, '°'))),
        leastRange: about(
          'Least useful share of the full range; below it the load steps down.',
          setting(from(0.1, 1, '')),
        ),
        testPainAtMost: about('A tested set above this pain is not used.', setting(pain)),
        capacityAbove: about('A test of more repetitions gives no maximum.', setting(wholeFrom(5, 30))),
        holdShareFrom: about('Share of the tested seconds a hold takes, least.', setting(from(0.1, 1, ''))),
        holdShareTo: about('Share of the tested seconds a hold takes, most.', setting(from(0.1, 1, ''))),
        holdAtMostSeconds: about('Longest hold.', setting(from(5, 120, 'seconds'))),
        screenedHoldSeconds: about(
          'Longest hold for someone who must not hold long.',
          setting(from(5, 60, 'seconds')),
        ),
        screenedReserve: about(
          'Repetitions in hand at least for someone who must not strain: uncontrolled blood pressure, a hernia, pregnancy, the first weeks after birth.',
          setting(wholeFrom(0, 10)),
        ).default({ value: 4, mark: 'choice' }),
        untestedHoldSeconds: about(
          'The shortest hold: what a hold that was not tested starts with.',
          setting(from(5, 60, 'seconds')),
        ).default({ value: 15, mark: 'choice' }),
        gentlerBelow: about(
          'A first dose under this share of what was tested needs its reason in the record.',
          setting(from(0.1, 1, '')),
        ).default({ value: 0.5, mark: 'choice' }),
        hollowBelow: about(
          "A stage in which every exercise stays under this share of the stage's hip bend is not proposed.",
          setting(from(0.1, 1, '')),
        ).default({ value: 0.6, mark: 'choice' }),
        suddenStageAtMost: about(
          'The first programme after a cleared sudden start is of this stage at most.',
          setting(wholeFrom(1, 9)),
        ).default({ value: 2, mark: 'choice' }),
        suddenLoadShare: about(
          'Its loads are this share of what the tests allow, at most.',
          setting(from(0.1, 1, '')),
        ).default({ value: 0.5, mark: 'choice' }),
        suddenRunAtMost: about(
          'Its running is of this kind at most, unless the clinician enters an own decision.',
          setting(z.enum(RUN_KINDS)),
        ).default({ value: 'none', mark: 'choice' }),
        slightSqueezeBw: about(
          'Up to this squeeze, and the pull below, an exercise enters a stage without a look at what was tested.',
          setting(from(0, 1, 'body weights')),
        ).default({ value: 0.1, mark: 'choice' }),
        slightPullBw: about(
          'Up to this pull; a calf raise without a weight has about 0.6.',
          setting(from(0, 3, 'body weights')),
        ).default({ value: 0.75, mark: 'choice' }),
        smallSqueezeBw: about(
          'Growth of squeeze is reckoned from here at least: less harms nothing, unless irritability is high.',
          setting(from(0, 1, 'body weights')),
        ).default({ value: 0.35, mark: 'choice' }),
        smallPullBw: about('The same of pull.', setting(from(0, 3, 'body weights'))).default({
          value: 0.75,
          mark: 'choice',
        }),
        fewRepetitions: about(
          'Repetitions in a first session at most of a card whose words ask for few at first.',
          setting(wholeFrom(1, 60)),
        ).default({ value: 10, mark: 'choice' }),
      }),
    ),
    session: about(
      'How long a session is, from the second stage on.',
      z.strictObject({
        usualMinutes: about('Minutes of a usual session.', setting(from(10, 90, 'minutes'))),
        usualExercises: about('Exercises in a usual session at most.', setting(wholeFrom(1, 10))),
        longerFromMinutes: about(
          'With so many minutes a day or more in the consult, all of them are used.',
          setting(from(10, 180, 'minutes')),
        ),
        shortMinutes: about('What a short day has room for.', setting(from(5, 60, 'minutes'))),
        shortExercises: about('Exercises of a short day.', setting(wholeFrom(1, 4))),
      }),
    ).default({
      usualMinutes: { value: 25, mark: 'choice' },
      usualExercises: { value: 4, mark: 'choice' },
      longerFromMinutes: { value: 40, mark: 'choice' },
      shortMinutes: { value: 15, mark: 'choice' },
      shortExercises: { value: 2, mark: 'choice' },
    }),
    byWeeks: about(
      'Do the numbered stages follow each other by their usual weeks, as published? A longer plan then holds the next ones with their dates.',
      yesNo,
    ).default(false),
    week: about(
      'The recovery clock.',
      z.strictObject({
        heavyHours: about('Hours between heavy sessions.', setting(from(12, 168, 'hours'))),
        energyStorageHours: about('Hours between fast sessions.', setting(from(12, 168, 'hours'))),
        easyRunHours: about('Hours after an easy run.', setting(from(0, 72, 'hours'))),
        slowFactor: about(
          'Times longer for novices, after weeks away, when tired or short of sleep.',
          setting(from(1, 2, '')),
        ),
        weeksAwayCount: about('So many weeks away or more count as away.', setting(wholeFrom(1, 52))),
        noviceYears: about('Fewer years of training count as novice.', setting(from(0, 10, 'years'))),
        leastLifts: about(
          'Sessions a week that are kept before a hard run is dropped.',
          setting(wholeFrom(1, 7)),
        ).default({ value: 2, mark: 'choice' }),
        firstSessionDays: about(
          'The first session comes on one of so many days from the start, wherever one of them has time for it.',
          setting(wholeFrom(1, 7)),
        ).default({ value: 3, mark: 'choice' }),
        besideHardShare: about(
          'Share of the longest run that is left where it can stand only on the day before or after a match, a hard class or the like.',
          setting(from(0.1, 1, '')),
        ).default({ value: 0.5, mark: 'choice' }),
        runDaysInRow: about(
          'Run days in a row at most, with a painful tendon below the stage that runDaysInRowBelowStage names; more only for runs that the consult itself counts.',
          setting(wholeFrom(1, 7)),
        ).default({ value: 2, mark: 'choice' }),
        runDaysInRowBelowStage: about(
          'The stage from which run days in a row are free.',
          setting(wholeFrom(1, 5)),
        ).default({ value: 4, mark: 'choice' }),
      }),
    ),
    runningRules: about(
      'House rules of running.',
      z.strictObject({
        usualPainNoRun: about('Usual pain from which running stops or becomes walk-run.', setting(pain)),
        testPainNoRun: about('Test pain from which running stops or becomes walk-run.', setting(pain)),
        longestGrowth: about('No run beyond so many times the longest of 30 days.', setting(from(1, 2, ''))),
        hillOrFastApartWeeks: about(
          'For so many weeks hills and fast runs never share a week.',
          setting(wholeFrom(0, 52)),
        ),
        fastGrowth: about(
          'Fast minutes or climb grow by this factor while the other stays.',
          setting(from(1, 2, '')),
        ),
        easeBackShare: about(
          'Where the review says that running eases back: share of the week and of the longest run that the next programme begins with.',
          setting(from(0.1, 1, '')),
        ).default({ value: 0.7, mark: 'choice' }),
        lowStepsPerMin: about(
          'A step rate below this counts as low.',
          setting(from(120, 200, 'steps a minute')),
        ),
        stepRateGrowth: about('The first step up in step rate, as a factor.', setting(from(1, 1.2, ''))),
        walkRunCycleMinutes: about(
          'Minutes of one walk and run on the walk-run ladder.',
          setting(wholeFrom(2, 20)),
        ),
        walkRunCycles: about('So many of them in one outing.', setting(wholeFrom(1, 12))),
        runsPerWeek: about(
          'Runs a week on the walk-run ladder, and at least so many for someone whose usual number is not recorded.',
          setting(wholeFrom(1, 7)),
        ).default({ value: 3, mark: 'secondary', cite: 'walk-run on alternate days, trade page' }),
        otherRunShare: about(
          'Where the usual number of runs is not recorded, it is the fewest with which each run is at most this share of the longest, the longest itself left out.',
          setting(from(0.1, 1, '')),
        ).default({ value: 0.5, mark: 'choice' }),
        raceNoHeavyDays: about(
          'So many days before a race without heavy or fast work.',
          setting(wholeFrom(0, 21)),
        ).default({ value: 4, mark: 'choice' }),
        raceTaperDays: about(
          'So many days before a race with less running.',
          setting(wholeFrom(0, 28)),
        ).default({ value: 7, mark: 'choice' }),
        raceTaperShare: about(
          'Share of the usual running that is left in those days.',
          setting(from(0, 1, '')),
        ).default({ value: 0.5, mark: 'choice' }),
        raceRestShare: about(
          'Share of the easy days after a race, from the first, without a run.',
          setting(from(0, 1, '')),
        ).default({ value: 0.2, mark: 'choice' }),
        raceOverLongest: about(
          'A race longer than so many times the longest run there may be stands in the plan by a recorded decision only.',
          setting(from(1, 5, '')),
        ).default({ value: 1.5, mark: 'choice' }),
        raceEasyDays: about(
          'Easy days after a race, by its length.',
          z.array(
            z.strictObject({
              upToKm: about('Races up to this length.', from(1, 200, 'km')),
              from: about('Easy days at least.', wholeFrom(0, 60)),
              to: about('Easy days at most.', wholeFrom(0, 60)),
              mark: source.shape.mark,
            }),
          ),
        ).default([
          { upToKm: 10, from: 5, to: 7, mark: 'memory' },
          { upToKm: 21.1, from: 7, to: 10, mark: 'memory' },
          { upToKm: 42.2, from: 14, to: 21, mark: 'memory' },
        ]),
      }),
    ),
    sittingRules: about(
      'House rules of sitting.',
      z.strictObject({
        shareOfTolerance: about('Share of the sitting tolerance to begin with.', setting(from(0.1, 1, ''))),
        leastMinutes: about('Shortest budget.', setting(from(1, 60, 'minutes'))),
        mostMinutes: about('Longest budget to begin with.', setting(from(5, 120, 'minutes'))),
        stepMinutes: about(
          'Minutes more each settled step, up to the goal.',
          setting(from(1, 60, 'minutes')),
        ),
        hardSeatShare: about(
          'Share of the budget on a hard seat or leaning forward.',
          setting(from(0.1, 1, '')),
        ),
        noBudgetUnder: about(
          'Below this tolerance there is no budget: stand, lie on the side, cut-out cushion.',
          setting(from(0, 60, 'minutes')),
        ),
      }),
    ),
    maternity: about(
      'House rules of pregnancy and the time after birth.',
      z.strictObject({
        notFlatFromWeek: about(
          'From this week of pregnancy nothing is done lying flat on the back or face down.',
          setting(wholeFrom(1, 42, 'weeks')),
        ),
        impactFromWeekAfterBirth: about(
          'No jumping or running before this week after birth unless a clearance is recorded.',
          setting(wholeFrom(0, 104, 'weeks')),
        ),
        runMostPregnant: about('The hardest kind of run in pregnancy.', setting(z.enum(RUN_KINDS))),
      }),
    ).default({
      notFlatFromWeek: {
        value: 20,
        mark: 'memory',
        cite: 'General advice on exercise in pregnancy: not long flat on the back in the second half',
      },
      impactFromWeekAfterBirth: {
        value: 12,
        mark: 'memory',
        cite: 'Guidance on running after birth: not before about 12 weeks',
      },
      runMostPregnant: { value: 'easy', mark: 'choice' },
    }),
    activities: about(
      'What people do besides: from which stage it is welcome, and how until then.',
      z.array(
        z.strictObject({
          what: about('The activity, as the consult names it.', line),
          fromStage: about('Welcome from this stage on.', wholeFrom(1, 9)),
          how: about('How to do it, a sentence for the leaflet.', line),
          until: about('What to do until then, a sentence for the leaflet.', line),
          meanwhile: about(
            'Until then: is it left, or done in the changed way that `until` tells?',
            z.enum(['leave', 'change']),
          ).default('leave'),
          hard: about('Does it count on the recovery clock like a hard session?', yesNo).default(false),
          sport: about(
            'Does it sprint or jump, so that the way goes through the stage for fast work and sport?',
            yesNo,
          ).default(false),
          mayWait: about(
            'May it be left out for a while where the week has no room for it? Lifting at work may not.',
            yesNo,
          ).default(true),
        }),
      ),
    ),
    changed: about('What was changed when; the feed of the site tells of it.', changed),
    sources: about('What the protocol rests on.', z.array(source).min(1, 'at least one source')),
  }),
  protocolRule,
);

export type ProtocolFrontMatter = z.output<typeof protocolSchema>;
export type StageFrontMatter = ProtocolFrontMatter['stages'][number];
export type SlotFrontMatter = StageFrontMatter['slots'][number];
