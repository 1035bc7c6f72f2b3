/** Values that are not what the schema asks for: the whole printed text of each Problem. */
import { describe, expect, it } from 'vitest';
import { BRIDGE, HAMSTRING, OTTER, printedWith } from './printed.ts';

describe('unknown-key', () => {
  it('offers the nearest key', () => {
    expect(printedWith(OTTER, 'massKg: 68', 'masKg: 68')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:12:1: error unknown-key masKg is an unknown key; must be massKg.
          masKg: 68
          ^
      Fix: write massKg."
    `);
  });

  it('counts a misspelt key that must be there once', () => {
    expect(printedWith(OTTER, 'alias: otter', 'alais: otter')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:2:1: error unknown-key alais is an unknown key; must be alias.
          alais: otter
          ^
      Fix: write alias."
    `);
  });

  it('names the keys there are when none is near', () => {
    expect(printedWith(OTTER, 'sitting: { ', 'sitting: { colour: blue, ')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:50:12: error unknown-key sitting.colour is an unknown key; must be a key that is known here.
          sitting: { colour: blue, toleranceMinutes: 30 }
                     ^
      Fix: take it out; the keys here are toleranceMinutes, fixedBlocksMinutes and goalMinutes."
    `);
  });

  it('blames a misspelt start for all that hangs on it', () => {
    expect(printedWith(BRIDGE, '\nstart: {', '\nstrat: {')).toMatchInlineSnapshot(`
      "exercises/bridge.md:7:1: error unknown-key strat is an unknown key; must be start.
          strat: { trunk: -90, work: { hip: 53, knee: 116.5, pitch: 0 } }
          ^
      Fix: write start."
    `);
  });

  it('keeps __proto__ out', () => {
    expect(printedWith(OTTER, '  fever: no', '  __proto__: { fever: no }')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:21:3: error unknown-key screen.__proto__ is an unknown key; must be a key of this kind of file.
            __proto__: { fever: no }
            ^
      Fix: take the line out."
    `);
  });

  it('knows no merge key', () => {
    expect(printedWith(OTTER, 'sitting: { ', 'sitting: { <<: { goalMinutes: 90 }, ')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:50:12: error unknown-key sitting.<< is an unknown key; must be a key that is known here.
          sitting: { <<: { goalMinutes: 90 }, toleranceMinutes: 30 }
                     ^
      Fix: take it out; the keys here are toleranceMinutes, fixedBlocksMinutes and goalMinutes."
    `);
  });
});

describe('missing-key', () => {
  it('says what it is for', () => {
    expect(printedWith(OTTER, 'country: GB\n', '')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:2:1: error missing-key country is missing; must be text.
          alias: otter
          ^
      Fix: add country. Two-letter country code; decides the emergency wording."
    `);
  });

  it('points at the group it is missing from', () => {
    expect(printedWith(OTTER, 'reserve: 2, ', '')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:26:5: error missing-key testedSets[0].reserve is missing; must be a whole number from 0 to 10.
            - { card: bridge, side: left, loadKg: 10, repetitions: 8, pain: 2 }
              ^
      Fix: add reserve. How many more could have been done."
    `);
  });

  it('asks for the whole screen', () => {
    const screen = 'screen:\n  saddleNumbness: no\n  bladderBowel: no\n  fever: no\n';
    expect(printedWith(OTTER, screen, '')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:2:1: error missing-key screen is missing; must be a group of keys.
          alias: otter
          ^
      Fix: add screen. Each item no, yes or notAsked; one not asked acts like yes."
    `);
  });

  it('asks a runner for habits', () => {
    expect(printedWith(OTTER, '  weeklyKm: 20\n', '')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:40:3: error missing-key running.weeklyKm is missing; must be there for someone who runs.
            runs: yes
            ^
      Fix: add weeklyKm. Kilometres in a usual week now."
    `);
  });

  it('holds the longest run against the weekly distance', () => {
    const habits =
      '  longestIn30DaysKm: 10\n  hills: yes\n  speed: no\n  hillyRoutes: no\n  overStriding: notSeen\n  trainingYears: 6\n  weeksOff: 1\n';
    const longer = habits.replace('10', '25').replace('weeksOff: 1', 'weeksOff: 0');
    expect(printedWith(OTTER, habits, longer)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:43:22: error does-not-fit running.longestIn30DaysKm is 25; must be not more than weeklyKm (20).
            longestIn30DaysKm: 25
                               ^
      Fix: write the distance of a week that holds this run, or mend the run."
    `);
  });

  it('asks for seconds in a hold', () => {
    expect(printedWith(HAMSTRING, 'holdSeconds: 30, ', '')).toMatchInlineSnapshot(`
      "protocols/hamstring.md:42:15: error missing-key stages[1].slots[0].dose.holdSeconds is missing; must be there for a dose of kind hold.
                  dose: { kind: hold, sets: 4, restSeconds: 60, timesPerDay: 1, source: { cite: house choice, …
                        ^
      Fix: add holdSeconds. Seconds a hold, for holds."
    `);
  });
});

describe('wrong-type', () => {
  it('takes the unit off when it is the one that was asked for', () => {
    expect(printedWith(OTTER, 'massKg: 68', 'massKg: 68 kg')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:12:9: error wrong-type massKg is 68 kg; must be a number from 30 to 250 kg.
          massKg: 68 kg
                  ^
      Fix: write massKg: 68. Body mass in kilograms."
    `);
  });

  it('makes no number of another unit', () => {
    expect(printedWith(OTTER, 'massKg: 68', 'massKg: 150 lb')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:12:9: error wrong-type massKg is 150 lb; must be a number from 30 to 250 kg.
          massKg: 150 lb
                  ^
      Fix: give a number from 30 to 250 kg. Body mass in kilograms."
    `);
  });

  it('takes quotes off', () => {
    expect(printedWith(OTTER, 'ageYears: 41', 'ageYears: "41"')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:9:11: error wrong-type ageYears is "41"; must be a whole number from 8 to 110 years.
          ageYears: "41"
                    ^
      Fix: write ageYears: 41. Age in years."
    `);
  });

  it('says that nothing is there', () => {
    expect(printedWith(OTTER, 'heightM: 1.72', 'heightM:')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:11:1: error wrong-type heightM is empty; must be a number from 1.2 to 2.2 m.
          heightM:
          ^
      Fix: give a number from 1.2 to 2.2 m. Height in metres."
    `);
  });

  it('takes a text that reads like true for that text', () => {
    expect(printedWith(OTTER, 'clinician: M. Vale', 'clinician: true')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:4:12: error wrong-type clinician is true; must be text.
          clinician: true
                     ^
      Fix: write clinician: "true". Who saw the person."
    `);
  });

  it('writes one word as a list', () => {
    expect(printedWith(BRIDGE, 'equipment: [floor]', 'equipment: floor')).toMatchInlineSnapshot(`
      "exercises/bridge.md:12:12: error wrong-type equipment is floor; must be a list.
          equipment: floor
                     ^
      Fix: write equipment: [ floor ]. What it cannot be done without."
    `);
  });

  it('rounds nothing', () => {
    expect(printedWith(OTTER, 'usualMorningPain: 2', 'usualMorningPain: 2.5')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:17:19: error wrong-type usualMorningPain is 2.5; must be a whole number from 0 to 10.
          usualMorningPain: 2.5
                            ^
      Fix: give a whole number from 0 to 10. Pain of a usual morning, 0 to 10."
    `);
  });

  it('takes no infinite number', () => {
    expect(printedWith(OTTER, 'minutesPerDay: 30', 'minutesPerDay: .inf')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:38:16: error wrong-type minutesPerDay is .inf; must be a number from 5 to 180 minutes.
          minutesPerDay: .inf
                         ^
      Fix: give a number from 5 to 180 minutes. Minutes there are on such a day."
    `);
  });

  it('writes a date that came without hyphens', () => {
    expect(printedWith(OTTER, 'seenOn: 2026-03-02', 'seenOn: 20260302')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:5:9: error wrong-type seenOn is 20260302; must be a date, YYYY-MM-DD.
          seenOn: 20260302
                  ^
      Fix: write seenOn: 2026-03-02. Day of the consult."
    `);
  });
});

describe('one wrong value', () => {
  it.each([
    [OTTER, 'side: left\n', 'side: [left]\nworseSide: right\n', 'side'],
    [OTTER, 'side: left\n', 'side: lleft\nworseSide: right\n', 'side'],
    [OTTER, 'days: [mon, wed, fri]', 'days: ""', 'days'],
    [OTTER, 'value: 2,', 'value: [2],', 'overrides[0].value'],
    [BRIDGE, 'knee: 95, pitch: 0', 'knee: 95, pitch: "0"', 'end.work.pitch'],
    [BRIDGE, 'cautions: [Keep the pelvis level.]', 'cautions: ""', 'cautions'],
    [HAMSTRING, 'kind: hold', 'kind: holding', 'stages[1].slots[0].dose.kind'],
    [HAMSTRING, 'duringAtMost: { value: 3,', 'duringAtMost: { value: 30,', 'painRule.duringAtMost.value'],
    [HAMSTRING, 'from: 1,', 'from: 1000,', 'stages[0].usualWeeks.from'],
  ] as const)('is one Problem, whatever hangs on it: %s %j as %j', (file, passage, by, path) => {
    const text = printedWith(file, passage, by).match(/error \S+ \S+/g);
    expect(text?.map((one) => one.split(' ').at(-1))).toEqual([path]);
  });

  it('of a number set by the clinician', () => {
    expect(printedWith(OTTER, 'value: 2,', 'value: [2],')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:53:33: error wrong-type overrides[0].value is [2]; must be a number or text.
            - { path: bridge.sets, value: [2], reason: Two are enough for now. }
                                          ^
      Fix: give a number or text. The value."
    `);
  });
});

it('a card without a pose may say that it has no supports', () => {
  expect(printedWith('exercises/band-walk.md', '\nequipment', '\nsupports: []\nequipment')).toBe('');
});

describe('out-of-range', () => {
  it('massKg: 700', () => {
    expect(printedWith(OTTER, 'massKg: 68', 'massKg: 700')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:12:9: error out-of-range massKg is 700; must be a number from 30 to 250 kg.
          massKg: 700
                  ^
      Fix: give a number from 30 to 250 kg. Body mass in kilograms."
    `);
  });

  it('hip 200°', () => {
    expect(printedWith(BRIDGE, 'hip: 53', 'hip: 200')).toMatchInlineSnapshot(`
      "exercises/bridge.md:7:35: error out-of-range start.work.hip is 200; must be a number from -30 to 135 °.
          start: { trunk: -90, work: { hip: 200, knee: 116.5, pitch: 0 } }
                                            ^
      Fix: give a number from -30 to 135 °. Hip flexion in degrees, 0 standing."
    `);
  });

  it('pain 12', () => {
    expect(printedWith(OTTER, 'pain: 3,', 'pain: 12,')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:24:32: error out-of-range tests[0].pain is 12; must be a whole number from 0 to 10.
            - { test: bridge-hold, pain: 12, seconds: 40 }
                                         ^
      Fix: give a whole number from 0 to 10. Pain during it, 0 to 10."
    `);
  });

  it('no day at all', () => {
    expect(printedWith(OTTER, 'days: [mon, wed, fri]', 'days: []')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:37:7: error out-of-range days is []; must be at least one day.
          days: []
                ^
      Fix: give at least one day. Days on which there is time for a session of exercises; runs may fall on other days."
    `);
  });

  it('a cell set by the clinician beyond what a dose may be', () => {
    expect(printedWith(OTTER, 'value: 2,', 'value: 30,')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:53:33: error out-of-range overrides[0].value is 30; must be a whole number from 1 to 10.
            - { path: bridge.sets, value: 30, reason: Two are enough for now. }
                                          ^
      Fix: give a whole number from 1 to 10."
    `);
  });

  it('a cap beyond what the model knows', () => {
    expect(printedWith(HAMSTRING, 'compressionBw: 0.8', 'compressionBw: 80')).toMatchInlineSnapshot(`
      "protocols/hamstring.md:11:47: error out-of-range stages[0].caps.compressionBw is 80; must be a number from 0 to 10 body weights.
              caps: { hipFlexionDeg: 60, compressionBw: 80, tensionBw: 2.5, demand: 0.6 }
                                                        ^
      Fix: give a number from 0 to 10 body weights. Largest squeeze N in body weights, or none."
    `);
  });
});

describe('not-a-date', () => {
  it('tells the days of the month', () => {
    expect(printedWith(OTTER, 'seenOn: 2026-03-02', 'seenOn: 2026-02-30')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:5:9: error not-a-date seenOn is 2026-02-30; must be a date that exists, YYYY-MM-DD.
          seenOn: 2026-02-30
                  ^
      Fix: write a day that exists as year-month-day; 2026-02 has 28 days."
    `);
  });

  it('fills in noughts', () => {
    expect(printedWith(OTTER, 'seenOn: 2026-03-02', 'seenOn: 2026-3-2')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:5:9: error not-a-date seenOn is 2026-3-2; must be a date that exists, YYYY-MM-DD.
          seenOn: 2026-3-2
                  ^
      Fix: write seenOn: 2026-03-02. Day of the consult."
    `);
  });

  it('does not guess which is the month', () => {
    expect(printedWith(OTTER, 'seenOn: 2026-03-02', 'seenOn: 02/03/2026')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:5:9: error not-a-date seenOn is 02/03/2026; must be a date that exists, YYYY-MM-DD.
          seenOn: 02/03/2026
                  ^
      Fix: write a day that exists as year-month-day."
    `);
  });
});

describe('wrong-word', () => {
  it('offers the nearest word', () => {
    expect(printedWith(OTTER, 'side: left\n', 'side: lefft\n')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:10:7: error wrong-word side is lefft; must be left, right or both.
          side: lefft
                ^
      Fix: write side: left."
    `);
  });

  it('offers the word for true', () => {
    expect(printedWith(OTTER, 'fever: no', 'fever: true')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:21:10: error wrong-word screen.fever is true; must be no, yes or notAsked.
            fever: true
                   ^
      Fix: write fever: yes."
    `);
  });

  it('says which side of a lift on both legs', () => {
    expect(printedWith(OTTER, 'side: left, loadKg', 'side: both, loadKg')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:26:27: error wrong-word testedSets[0].side is both; must be left or right.
            - { card: bridge, side: both, loadKg: 10, repetitions: 8, reserve: 2, pain: 2 }
                                    ^
      Fix: write one of left or right. The side that was tested; of a lift on both legs, the sorer one."
    `);
  });

  it('lists the words when none is near', () => {
    expect(printedWith(OTTER, 'irritability: moderate', 'irritability: 7')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:15:15: error wrong-word irritability is 7; must be low, moderate or high.
          irritability: 7
                        ^
      Fix: write one of low, moderate or high. How easily it flares and how long it lasts."
    `);
  });

  it('takes a stage for a word among numbers', () => {
    expect(printedWith(OTTER, 'stage: auto', 'stage: 5')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:14:8: error wrong-word stage is 5; must be auto, 1, 2, 3, 4 or keepGoing.
          stage: 5
                 ^
      Fix: write one of auto, 1, 2, 3, 4 or keepGoing. The stage, or auto for the proposal from the tests."
    `);
  });

  it('makes an id of an alias, and says what an alias is', () => {
    expect(printedWith(OTTER, 'alias: otter', 'alias: Sea Otter')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:2:8: error wrong-word alias is Sea Otter; must be an id: small letters, digits and hyphens, 1 to 64 of them.
          alias: Sea Otter
                 ^
      Fix: write alias: sea-otter. An invented short name for this person; never the real one."
    `);
  });

  it('says why a device is no name', () => {
    expect(printedWith(OTTER, 'alias: otter', 'alias: aux')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:2:8: error wrong-word alias is aux; must be another id: aux is a device on Windows.
          alias: aux
                 ^
      Fix: give another id: aux is a device on Windows. An invented short name for this person; never the real one."
    `);
  });

  it('checks keys that are words themselves', () => {
    expect(printedWith('clinic.md', '  IE:', '  Ireland:')).toMatchInlineSnapshot(`
      "clinic.md:12:3: error wrong-word emergency.Ireland is a key called Ireland; must be a two-letter country code in capitals.
            Ireland:
            ^
      Fix: give a two-letter country code in capitals."
    `);
  });
});

describe('does-not-fit', () => {
  it('reviewOn before startOn', () => {
    expect(printedWith(OTTER, 'reviewOn: 2026-03-24', 'reviewOn: 2026-03-01')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:7:11: error does-not-fit reviewOn is 2026-03-01; must be after startOn (2026-03-03).
          reviewOn: 2026-03-01
                    ^
      Fix: write a day after 2026-03-03, or mend startOn."
    `);
  });

  it('startOn before seenOn, beside a wrong number and an unknown key in one run', () => {
    const by = 'startOn: 2026-03-01\nstep: 70\ncolour: blue';
    expect(printedWith(OTTER, 'startOn: 2026-03-03', by)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:6:10: error does-not-fit startOn is 2026-03-01; must be seenOn (2026-03-02) or later.
          startOn: 2026-03-01
                   ^
      Fix: write 2026-03-02 or a later day, or mend seenOn.

      consults/otter-r1.md:7:7: error out-of-range step is 70; must be a whole number from 1 to 60.
          step: 70
                ^
      Fix: give a whole number from 1 to 60. The step within the stage; left out, that of the revision before, and 1 in a first one.

      consults/otter-r1.md:8:1: error unknown-key colour is an unknown key; must be a key that is known here.
          colour: blue
          ^
      Fix: take it out; the keys here are alias, revision, clinician, seenOn, startOn, reviewOn, language, country, ageYears, side, worseSide, heightM, massKg, protocol, stage, stageBecause, discharge, withdraw, withdrawOn, draft, step, irritability, response24h, usualMorningPain, symptomWeeks, painArea, screen, clearances, cannotDo, pregnancy, afterBirth, tests, testedSets, kit, days, minutesPerDay, running, sitting, recovery, changedBefore, doesNow, goals, outcomes, notExamined, overrides, chosen, leftOut, added and confirmed."
    `);
  });

  it('a clearance of a day to come', () => {
    const late = 'clearances: [{ flag: fever, by: Dr Vale, on: 2026-03-04, decision: settled }]\n';
    expect(printedWith(OTTER, 'cannotDo: []\n', `${late}cannotDo: []\n`)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:22:46: error does-not-fit clearances[0].on is 2026-03-04; must be startOn (2026-03-03) or earlier.
          clearances: [{ flag: fever, by: Dr Vale, on: 2026-03-04, decision: settled }]
                                                       ^
      Fix: write the day on which it was decided; what is still to be decided lifts nothing."
    `);
  });

  it('one day twice', () => {
    expect(printedWith(OTTER, '[mon, wed, fri]', '[mon, wed, mon]')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:37:18: error does-not-fit days[2] is mon; must be named once.
          days: [mon, wed, mon]
                           ^
      Fix: take the second out."
    `);
  });

  it('a day of an activity twice', () => {
    const does = 'doesNow: [{ what: football, times: 2, days: [tue, tue] }]\n';
    expect(printedWith(OTTER, 'cannotDo: []\n', `${does}cannotDo: []\n`)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:22:51: error does-not-fit doesNow[0].days[1] is tue; must be named once.
          doesNow: [{ what: football, times: 2, days: [tue, tue] }]
                                                            ^
      Fix: take the second out."
    `);
  });

  it('more days of an activity than times', () => {
    const does = 'doesNow: [{ what: football, times: 1, days: [tue, sat] }]\n';
    expect(printedWith(OTTER, 'cannotDo: []\n', `${does}cannotDo: []\n`)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:22:36: error does-not-fit doesNow[0].times is 1; must be 2, as many as its days, or more.
          doesNow: [{ what: football, times: 1, days: [tue, sat] }]
                                             ^
      Fix: write 2 or more, or take a day out."
    `);
  });

  it('not every week on its one day', () => {
    const does = 'doesNow: [{ what: cycling, times: 0.5, days: [tue] }]\n';
    expect(printedWith(OTTER, 'cannotDo: []\n', `${does}cannotDo: []\n`)).toBe('');
  });

  it('a worse side that is not the painful one', () => {
    expect(printedWith(OTTER, 'side: left\n', 'side: left\nworseSide: right\n')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:11:12: error does-not-fit worseSide is right; must be left out when side is left.
          worseSide: right
                     ^
      Fix: take worseSide out, or mend side."
    `);
  });

  it('two numbers for one cell', () => {
    const twice = '  - { path: bridge.sets, value: 3, reason: Three after all. }\n';
    expect(printedWith(OTTER, 'overrides:\n', `overrides:\n${twice}`)).toMatchInlineSnapshot(`
      "consults/otter-r1.md:54:13: error does-not-fit overrides[1].path is bridge.sets; must be another cell than that of an entry before.
            - { path: bridge.sets, value: 2, reason: Two are enough for now. }
                      ^
      Fix: keep one of the two."
    `);
  });

  it('a foot both on the ground and in the air', () => {
    expect(printedWith(BRIDGE, 'knee: 95, pitch: 0', 'knee: 95, pitch: 0, ankle: 0')).toMatchInlineSnapshot(`
      "exercises/bridge.md:8:26: error does-not-fit end.work is { hip: 0, knee: 95, pitch: 0, ankle: 0 }; must be given either pitch (foot on the ground) or ankle (foot in the air).
          end: { trunk: -90, work: { hip: 0, knee: 95, pitch: 0, ankle: 0 } }
                                   ^
      Fix: write pitch for a foot on the ground, or ankle for a foot in the air, and not both.

      exercises/bridge.md:8:63: error does-not-fit end.work.ankle is 0; must be in both start and end, or in neither.
          end: { trunk: -90, work: { hip: 0, knee: 95, pitch: 0, ankle: 0 } }
                                                                        ^
      Fix: write ankle in both poses, or in neither."
    `);
  });

  it('a stage that allows less than the one before', () => {
    expect(printedWith(HAMSTRING, 'hipFlexionDeg: none', 'hipFlexionDeg: 45')).toMatchInlineSnapshot(`
      "protocols/hamstring.md:30:28: error does-not-fit stages[1].caps.hipFlexionDeg is 45; must be at least that of the stage before (60).
              caps: { hipFlexionDeg: 45, compressionBw: none, tensionBw: none, demand: none }
                                     ^
      Fix: raise it, or lower the stage before."
    `);
  });

  it('a stage the protocol does not have', () => {
    expect(printedWith(OTTER, 'stage: auto', 'stage: 4')).toMatchInlineSnapshot(`
      "consults/otter-r1.md:14:8: error does-not-fit stage is 4; must be a stage of hamstring: auto, 1 or keepGoing.
          stage: 4
                 ^
      Fix: write auto, 1 or keepGoing."
    `);
  });

  it('repetitions in a hold', () => {
    expect(printedWith(HAMSTRING, 'holdSeconds: 30', 'holdSeconds: 30, repetitions: 5'))
      .toMatchInlineSnapshot(`
      "protocols/hamstring.md:42:68: error does-not-fit stages[1].slots[0].dose.repetitions is 5; must be left out of a dose of kind hold.
          … 4, holdSeconds: 30, repetitions: 5, restSeconds: 60, timesPerDay: 1, source: { cite: house choice, …
                                             ^
      Fix: take repetitions out."
    `);
  });
});
