/** A small invented library and consult, all in order, for tests to spoil. */
import type { SourceFile } from '../../src/content/source.ts';

/** Text as a file from the disk. */
export function fileOf(file: string, text: string): SourceFile {
  return { file, bytes: new TextEncoder().encode(text), link: 'no' };
}

/** The sample's files with some texts changed, added, or taken out (null). */
export function filesWith(changes: Readonly<Record<string, string | null>> = {}): SourceFile[] {
  return Object.entries({ ...SAMPLE, ...changes }).flatMap(([file, text]) =>
    text === null ? [] : [fileOf(file, text)],
  );
}

/** The sample's text of a file with one passage replaced; throws when the passage is not there. */
export function spoilt(file: keyof typeof SAMPLE, passage: string, by: string): string {
  const text = SAMPLE[file];
  if (!text.includes(passage)) throw new Error(`${file} must hold ${JSON.stringify(passage)}`);
  return text.replace(passage, () => by);
}

const BRIDGE = `---
title: Bridge from the floor
kind: isotonic
positions: [lying, bridge]
supports: [upperBack, both.mid]
solve: { unknown: trunk, kind: height, dh: 0, range: [-140, -20] }
start: { trunk: -90, work: { hip: 53, knee: 116.5, pitch: 0 } }
end: { trunk: -90, work: { hip: 0, knee: 95, pitch: 0 } }
loadAt: pelvisFront
pickUpHeightCm: 40
range: continuous
equipment: [floor]
needs: [get-to-the-floor, lie-supine]
tempo: { go: 3, hold: 0, back: 3 }
harder: single-leg-bridge
cautions: [Keep the pelvis level.]
evidence:
  - { cite: house choice, mark: choice }
reviewedOn: 2026-01-05
nextReviewOn: 2027-01-05
---

## Set up

Lie on your back with both feet flat.

## Move

Lift the pelvis for **three seconds**, then lower it *slowly*.

## Look out for

- A pull at the sit bone
  1. make the lift smaller
  2. or stop for today
`;

const SINGLE_LEG_BRIDGE = BRIDGE.replace('Bridge from the floor', 'Bridge on one leg')
  .replace('both.mid', 'work.mid')
  .replace('pitch: 0 } }\nend', 'pitch: 0 }, other: { hip: 20, knee: 5, ankle: 0 } }\nend')
  .replace('pitch: 0 } }\nloadAt', 'pitch: 0 }, other: { hip: 0, knee: 5, ankle: 0 } }\nloadAt')
  .replace('harder: single-leg-bridge', 'easier: bridge');

const BAND_WALK = `---
title: Side steps with a band
kind: isotonic
positions: [standing]
peakHipFlexionDeg: 25
mark: choice
equipment: [band]
needs: []
tempo: { go: 1, hold: 0, back: 1 }
cautions: [Keep the knees soft.]
evidence:
  - { cite: house choice, mark: common-practice }
reviewedOn: 2026-01-05
nextReviewOn: 2027-01-05
---

## Set up

Put the band round both ankles.

## Move

Step to the side and back.

## Look out for

Do not lean.
`;

const ADVICE = `---
title: Sitting
showWhen: [sits]
sources:
  - { cite: house choice, mark: choice }
---

## In short

Sit less deep, and not for long. See the [clinic](../clinic.md).

## What to do

Stand up when it begins.
`;

const CLINIC = `---
name: Heron Street Physiotherapy
contact: ["desk@heron.example", "+44 20 5550 0100"]
languages: [en]
paper: A4
emergency:
  GB:
    country: United Kingdom
    emergencyNumber: "999"
    urgentAdvice: NHS 111
    department: A&E
  IE:
    country: Ireland
    emergencyNumber: 112
    urgentAdvice: your out-of-hours doctor
    department: emergency department
defaults:
  oneRepetitionMaximum: epley
  dumbbellsUsedInPairs: no
  bandNewtons: { green: 40 }
  setUpSeconds: 30
  sideChangeSeconds: 10
---

## About

Invented for tests.
`.replace('emergencyNumber: 112', 'emergencyNumber: "112"');

const DOSE_SOURCE = 'source: { cite: house choice, mark: choice }';

const PROTOCOL = `---
title: Hamstring tendon at the sit bone
tendon: hamstring tendon at the sit bone
angle: hipFlexion
why: [Deep hip bend under load squeezes the tendon.]
tests:
  - { id: bridge-hold, name: Bridge hold, lowFlexion: yes }
stages:
  - name: hold
    positions: [lying, bridge]
    caps: { hipFlexionDeg: 60, compressionBw: 0.8, tensionBw: 2.5, demand: 0.6 }
    supportMargin: 1.25
    usualWeeks: { from: 1, to: 3 }
    enter: { words: From the start. }
    exit: { words: Six sessions done., sessions: 6, painAtMost: 3 }
    hoursBetween: 48
    sessionsPerWeek: 3
    maxExercises: 4
    slots:
      - name: main
        needed: yes
        cards: [bridge]
        dose: { kind: slow, sets: 3, repetitions: 8, restSeconds: 120, timesPerDay: 1, reserve: 3, ${DOSE_SOURCE} }
        progression: [{ change: repetitions, by: 2, to: 12 }]
    running: { most: walk-run, words: Walk and jog in turns. }
    sitting: Break it up.
    stretching: Leave long stretches out.
  - name: keep
    positions: [lying, bridge, standing]
    caps: { hipFlexionDeg: none, compressionBw: none, tensionBw: none, demand: none }
    supportMargin: 1
    usualWeeks: { from: 8, to: 52 }
    enter: { words: After discharge., tests: [bridge-hold] }
    exit: { words: None., sessions: 0, painAtMost: 1 }
    hoursBetween: 72
    sessionsPerWeek: 2
    maxExercises: 5
    slots:
      - name: main
        needed: yes
        cards: [single-leg-bridge, bridge]
        dose: { kind: hold, sets: 4, holdSeconds: 30, restSeconds: 60, timesPerDay: 1, ${DOSE_SOURCE} }
        progression: [{ change: load }]
    running: { most: fast, words: Run as you like. }
    sitting: As you like.
    stretching: As you like.
painRule:
  duringAtMost: { value: 3, mark: secondary }
  overUsualAtMost: { value: 1, mark: choice }
  neverAbove: { value: 5, mark: memory }
morningCheck:
  card: bridge
  repetitions: { value: 3, mark: choice }
  carryOnOver: { value: 1, mark: choice }
  sameAgainOver: { value: 2, mark: choice }
  easeBackAt: { value: 6, mark: choice }
  contactAfterDays: { value: 7, mark: choice }
  contactWhenRisingDays: { value: 14, mark: choice }
easeBack:
  setsFactor: { value: 0.5, mark: choice }
  loadFactor: { value: 0.8, mark: choice }
  rangeLessDeg: { value: 15, mark: choice }
flare:
  holdsOnlyDays: { from: 2, to: 3 }
  sittingFactor: { value: 0.5, mark: choice }
  mark: choice
missedDays:
  sameStepUnder: { value: 7, mark: choice }
  oneBackUpTo: { value: 14, mark: choice }
goingOn:
  doneSessions: { value: 2, mark: choice }
  checkOverUsual: { value: 1, mark: choice }
  checkDays: { value: 7, mark: choice }
  sessionsDoneShare: { value: 0.7, mark: choice }
  leastSessions: { value: 3, mark: choice }
  leastDays: { value: 7, mark: choice }
limits:
  stepGrowth: { value: 1.3, mark: choice }
  weekGrowth: { value: 1.3, mark: choice }
  cardsAboveHalfCap: { value: 2, mark: choice }
  provokedLessDeg: { value: 10, mark: choice }
  roundAngleDeg: { value: 5, mark: choice }
  leastRange: { value: 0.5, mark: choice }
  testPainAtMost: { value: 3, mark: choice }
  capacityAbove: { value: 15, mark: choice }
  holdShareFrom: { value: 0.6, mark: choice }
  holdShareTo: { value: 0.7, mark: choice }
  holdAtMostSeconds: { value: 45, mark: choice }
  screenedHoldSeconds: { value: 10, mark: choice }
week:
  heavyHours: { value: 48, mark: choice }
  energyStorageHours: { value: 72, mark: choice }
  easyRunHours: { value: 24, mark: choice }
  slowFactor: { value: 1.5, mark: choice }
  weeksAwayCount: { value: 4, mark: choice }
  noviceYears: { value: 1, mark: choice }
runningRules:
  usualPainNoRun: { value: 4, mark: choice }
  testPainNoRun: { value: 6, mark: choice }
  longestGrowth: { value: 1.1, mark: choice }
  hillOrFastApartWeeks: { value: 6, mark: choice }
  fastGrowth: { value: 1.1, mark: choice }
  lowStepsPerMin: { value: 165, mark: choice }
  stepRateGrowth: { value: 1.05, mark: choice }
  walkRunCycleMinutes: { value: 5, mark: choice }
  walkRunCycles: { value: 4, mark: choice }
sittingRules:
  shareOfTolerance: { value: 0.66, mark: choice }
  leastMinutes: { value: 5, mark: choice }
  mostMinutes: { value: 30, mark: choice }
  stepMinutes: { value: 5, mark: choice }
  hardSeatShare: { value: 0.5, mark: choice }
  noBudgetUnder: { value: 5, mark: choice }
activities:
  - { what: cycling, fromStage: 2, how: Upright and short., until: Walk instead. }
sources:
  - { cite: house choice, mark: choice }
---

## How it works

First hold, then move.
`;

const CONSULT = `---
alias: otter
revision: 1
clinician: M. Vale
seenOn: 2026-03-02
startOn: 2026-03-03
reviewOn: 2026-03-24
country: GB
ageYears: 41
side: left
heightM: 1.72
massKg: 68
protocol: hamstring
stage: auto
irritability: moderate
response24h: settled
usualMorningPain: 2
screen:
  saddleNumbness: no
  bladderBowel: no
  fever: no
cannotDo: []
tests:
  - { test: bridge-hold, pain: 3, seconds: 40 }
testedSets:
  - { card: bridge, side: left, loadKg: 10, repetitions: 8, reserve: 2, pain: 2 }
kit:
  dumbbellsKg: [5, 10]
  kettlebellsKg: []
  platesKg: []
  bands: [green]
  rucksack: yes
  bottlesL: [1.5]
  bench: no
  ball: no
  stepCm: [18]
days: [mon, wed, fri]
minutesPerDay: 30
running:
  runs: yes
  decision: walk-run
  weeklyKm: 20
  longestIn30DaysKm: 10
  hills: yes
  speed: no
  hillyRoutes: no
  overStriding: notSeen
  trainingYears: 6
  weeksOff: 1
sitting: { toleranceMinutes: 30 }
recovery: { sleep: fair, stress: moderate, tired: no }
overrides:
  - { path: bridge.sets, value: 2, reason: Two are enough for now. }
---

## Notes

Seen by video.
`;

export const SAMPLE = {
  'exercises/bridge.md': BRIDGE,
  'exercises/single-leg-bridge.md': SINGLE_LEG_BRIDGE,
  'exercises/band-walk.md': BAND_WALK,
  'advice/sitting.md': ADVICE,
  'protocols/hamstring.md': PROTOCOL,
  'clinic.md': CLINIC,
  'consults/otter-r1.md': CONSULT,
} as const;
