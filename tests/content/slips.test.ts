/**
 * The three consults of the demo with one slip of the pen each: the rule that asks about it, and where. The near side of
 * each limit is asked about by none. Settings: `plausible` of content/clinic.md.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { doubtsAbout } from '../../src/content/plausible/plausibility.ts';
import { doubtWords } from '../../src/content/plausible/doubtWords.ts';
import { readFile } from '../../src/content/readFile.ts';
import { shipped } from '../programme/shipped.ts';
import { fileOf } from './sample.ts';

type Base = 'otter' | 'heron' | 'marten';
type Slip = readonly [base: Base, what: string, changes: readonly string[], asked: string];

function doubts(base: Base, changes: readonly string[]) {
  let text = readFileSync(`content/consults/${base}-r1.md`, 'utf8');
  for (let at = 0; at < changes.length; at += 2) {
    const [from = '', to = ''] = changes.slice(at, at + 2);
    if (!text.includes(from)) throw new Error(`${base} must hold ${JSON.stringify(from)}`);
    text = text.replace(from, () => to);
  }
  const { value, problems } = readFile(fileOf(`consults/${base}-r1.md`, text), 'consult');
  if (value === null) throw new Error(problems.map(({ path, expected }) => `${path} ${expected}`).join());
  return doubtsAbout(value, null, shipped);
}

const HINGE = '  - test: hip-hinge\n    pain: 4\n    painFreeHipFlexionDeg: 60\n';
const RACE = (km: number) => [
  '  decision: keep\n',
  `  decision: keep\n  races:\n    - on: 2027-03-20\n      km: ${km}\n`,
];
const BRIDGE_SET = (card: string, loadKg: number, pain: number) => [
  'testedSets:\n',
  `testedSets:\n  - card: ${card}\n    side: right\n    loadKg: ${loadKg}\n    repetitions: 8\n    reserve: 3\n    pain: ${pain}\n`,
];

const ASKED: readonly Slip[] = [
  // pain told in two ways
  [
    'marten',
    'a test of 8 beside a loaded set of 2',
    ['pain: 4\n    painFreeHipFlexionDeg: 80', 'pain: 8'],
    'painApart testedSets.2.pain, lowIrritability irritability',
  ],
  [
    'otter',
    'a hold of 1 beside the same hold as a set of 9',
    ['rangeDeg: 0\n    pain: 1', 'rangeDeg: 0\n    pain: 9'],
    'painApart testedSets.0.pain',
  ],
  [
    'otter',
    'a one-leg bridge of 6, with weight 1',
    ['raised\n    pain: 2', 'raised\n    pain: 6', ...BRIDGE_SET('single-leg-bridge-raised', 0, 1)],
    'painApart testedSets.0.pain',
  ],
  [
    'otter',
    'a one-leg bridge of 7, a harder one 2',
    ['raised\n    pain: 2', 'raised\n    pain: 7', ...BRIDGE_SET('single-leg-long-lever-bridge', 0, 2)],
    'painApart testedSets.0.pain',
  ],
  [
    'otter',
    'a one-leg bridge of 1, an easier one 6',
    ['raised\n    pain: 2', 'raised\n    pain: 1', ...BRIDGE_SET('short-lever-bridge', 0, 6)],
    'painApart testedSets.0.pain',
  ],
  [
    'marten',
    'a one-leg bow of 7, an easier one with 30 kg 2',
    ['pain: 4\n    painFreeHipFlexionDeg: 75', 'pain: 7'],
    'painApart testedSets.0.pain, lowIrritability irritability',
  ],
  [
    'otter',
    'usual pain of 6 beside tests of 0',
    [
      'raised\n    pain: 2',
      'raised\n    pain: 0',
      'hold\n    pain: 2',
      'hold\n    pain: 0',
      'hold\n    pain: 1',
      'hold\n    pain: 0',
      HINGE,
      '  - test: hip-hinge\n    pain: 0\n',
      'arabesque\n    pain: 5\n    painFreeHipFlexionDeg: 60',
      'arabesque\n    pain: 0',
      'usualMorningPain: 2',
      'usualMorningPain: 6',
    ],
    'usualPain usualMorningPain',
  ],
  ['heron', 'an angle at which no pain began', ['pain: 6', 'pain: 0'], 'painlessAngle tests.2.pain'],
  [
    'heron',
    'low irritability beside pain of 6',
    ['irritability: high', 'irritability: low'],
    'lowIrritability irritability',
  ],
  [
    'marten',
    'low irritability, and felt the next day',
    ['response24h: settled', 'response24h: up'],
    'lowIrritability irritability',
  ],
  // angles and tempo
  [
    'marten',
    'a set to 140 degrees',
    ['rangeDeg: 60\n', 'rangeDeg: 140\n'],
    'rangeOverCard testedSets.0.rangeDeg',
  ],
  [
    'otter',
    'a curl face down at 90 degrees',
    ['rangeDeg: 0\n    pain: 1', 'rangeDeg: 90\n    pain: 1'],
    'rangeOverCard testedSets.0.rangeDeg',
  ],
  [
    'otter',
    'a bow free to 130 degrees',
    ['pain: 4\n    painFreeHipFlexionDeg: 60', 'pain: 4\n    painFreeHipFlexionDeg: 130'],
    'rangeOverCard tests.3.painFreeHipFlexionDeg',
  ],
  [
    'otter',
    'thirty seconds down',
    ['      go: 3', '      go: 30'],
    'repetitionSeconds testedSets.1.tempo.go',
  ],
  // sides
  ['marten', 'the side turned', ['\nside: left', '\nside: right'], 'sideOfArea side'],
  ['heron', 'the worse side turned', ['worseSide: left', 'worseSide: right'], 'sideOfArea worseSide'],
  [
    'marten',
    'the side turned, and no words for it',
    ['\nside: left', '\nside: right', 'painArea: left sit bone, in the lead leg\n', ''],
    'sideUntested side',
  ],
  [
    'otter',
    'pain of 4 on the sound leg',
    ['hip-hinge\n    pain: 4', 'hip-hinge\n    side: left\n    pain: 4'],
    'soundLegHurts tests.3.pain',
  ],
  [
    'otter',
    'a set on the sound leg that hurt 5',
    [
      '    side: right\n    loadKg: 3.5',
      '    side: left\n    loadKg: 3.5',
      'back: 3\n    pain: 2',
      'back: 3\n    pain: 5',
    ],
    'soundLegHurts testedSets.1.pain',
  ],
  [
    'otter',
    'a lift on both legs, the other leg sorer',
    ['card: hip-hinge\n    side: right', 'card: hip-hinge\n    side: left'],
    'sorerLeg testedSets.2.side',
  ],
  // running
  [
    'otter',
    'twenty weeks off beside 36 km a week',
    ['weeklyKm: 24', 'weeklyKm: 36', 'weeksOff: 0', 'weeksOff: 20'],
    'weeksOff running.weeksOff',
  ],
  [
    'marten',
    'thirteen runs a week',
    ['runsPerWeek: 3', 'runsPerWeek: 13'],
    'runsPerWeek running.runsPerWeek',
  ],
  [
    'otter',
    'a step rate of 216',
    ['stepsPerMin: 162', 'stepsPerMin: 216'],
    'stepsPerMin running.stepsPerMin',
  ],
  [
    'otter',
    'a step rate of one foot and a half',
    ['stepsPerMin: 162', 'stepsPerMin: 126'],
    'stepsPerMin running.stepsPerMin',
  ],
  [
    'otter',
    'kilometres of somebody who does not run',
    ['runs: yes\n  decision: keep', 'runs: no\n  decision: none'],
    'runsNot running.weeklyKm',
  ],
  [
    'heron',
    'no running, and it is kept',
    ['decision: none', 'decision: keep'],
    'keepsNothing running.decision',
  ],
  ['otter', 'a race of 100 km', RACE(100), 'raceKm running.races.0.km'],
  // time
  ['marten', 'six minutes a day', ['minutesPerDay: 60', 'minutesPerDay: 6'], 'minutesPerDay minutesPerDay'],
  [
    'heron',
    'a block at the wheel in hours',
    ['    - 110', '    - 1.8'],
    'sittingShort sitting.fixedBlocksMinutes.0',
  ],
  [
    'otter',
    'a goal of sitting in hours',
    ['goalMinutes: 90', 'goalMinutes: 1.5'],
    'sittingShort sitting.goalMinutes',
  ],
  [
    'otter',
    'sitting tolerated in hours',
    ['toleranceMinutes: 25', 'toleranceMinutes: 0.4', '    sittingMinutes: 25\n', ''],
    'sittingShort sitting.toleranceMinutes',
  ],
  [
    'heron',
    'sitting of 120 minutes and of 12 on one day',
    ['toleranceMinutes: 12', 'toleranceMinutes: 120'],
    'sittingTwice outcomes.0.sittingMinutes',
  ],
  [
    'marten',
    'two scores of one day',
    ['  - on: 2026-09-14', '  - on: 2026-11-20'],
    'scoreTwice outcomes.2.on',
  ],
  ['otter', 'a review the next day', ['reviewOn: 2026-12-15', 'reviewOn: 2026-11-25'], 'reviewSoon reviewOn'],
  // the body
  ['marten', 'a mass in pounds', ['massKg: 74', 'massKg: 163'], 'bodyMassIndex massKg'],
  ['marten', 'a mass with its digits turned', ['massKg: 74', 'massKg: 47'], 'bodyMassIndex massKg'],
  [
    'otter',
    'a sudden start under 18, at 38',
    ['suddenOnsetUnder18: no', 'suddenOnsetUnder18: yes'],
    'underAge ageYears',
  ],
  ['heron', 'pregnant at 54', ['cannotDo:\n', 'pregnancy:\n  weeks: 20\ncannotDo:\n'], 'childAtAge ageYears'],
  [
    'heron',
    'six weeks after birth at 54',
    ['cannotDo:\n', 'afterBirth:\n  weeks: 6\ncannotDo:\n'],
    'childAtAge ageYears',
  ],
];

const FINE: readonly (readonly [Base, string, readonly string[]])[] = [
  ['otter', 'as it stands', []],
  ['heron', 'as it stands', []],
  ['marten', 'as it stands', []],
  [
    'otter',
    'a bow that hurt beyond the bend of its set',
    ['hip-hinge\n    pain: 4', 'hip-hinge\n    pain: 6'],
  ],
  [
    'marten',
    'a test three from its set',
    ['pain: 4\n    painFreeHipFlexionDeg: 80', 'pain: 5\n    painFreeHipFlexionDeg: 80'],
  ],
  ['otter', 'a harder card that hurts more than the test', BRIDGE_SET('single-leg-long-lever-bridge', 0, 6)],
  [
    'otter',
    'an easier card without weight that hurts less',
    ['raised\n    pain: 2', 'raised\n    pain: 6', ...BRIDGE_SET('long-lever-bridge', 0, 1)],
  ],
  [
    'otter',
    'a set of the sound leg, to compare',
    ['    side: right\n    loadKg: 3.5', '    side: left\n    loadKg: 3.5'],
  ],
  ['heron', 'usual pain no more than the worst test', ['usualMorningPain: 3', 'usualMorningPain: 6']],
  ['otter', 'three weeks off after 24 km', ['weeksOff: 0', 'weeksOff: 3']],
  [
    'otter',
    'twenty weeks off and 0 km',
    [
      'weeksOff: 0',
      'weeksOff: 20',
      'weeklyKm: 24',
      'weeklyKm: 0',
      'longestIn30DaysKm: 9',
      'longestIn30DaysKm: 0',
    ],
  ],
  [
    'otter',
    'walking into running',
    ['runs: yes\n  decision: keep\n  weeklyKm: 24', 'runs: no\n  decision: walk-run'],
  ],
  ['otter', 'a marathon', RACE(42.2)],
  ['otter', 'no sitting at all', ['toleranceMinutes: 25', 'toleranceMinutes: 0']],
  ['otter', 'a set fifteen degrees beyond the card', ['rangeDeg: 45', 'rangeDeg: 75']],
  ['otter', 'five years after birth', ['cannotDo: []', 'cannotDo: []\nafterBirth:\n  weeks: 250']],
];

describe('a slip', () => {
  it.each(ASKED)('%s, %s', (base, _, changes, asked) => {
    const found = doubts(base, changes);
    expect(found.map(({ rule, path }) => `${rule} ${path.join('.')}`).join(', ')).toBe(asked);
    for (const doubt of found)
      expect(Object.values(doubtWords(doubt)).join(' ')).not.toMatch(/undefined|NaN|Infinity/);
  });
});

describe('on the near side', () => {
  it.each(FINE)('%s, %s', (base, _, changes) => {
    expect(doubts(base, changes).map(({ rule, path }) => `${rule} ${path.join('.')}`)).toEqual([]);
  });
});
