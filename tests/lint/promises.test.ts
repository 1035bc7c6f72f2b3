/** What words of a card promise of an angle: each sentence beside angles that keep it and angles that break it. */
import { describe, expect, it } from 'vitest';
import { brokenPromises } from '../../src/wording/brokenPromises.ts';

type Joint = 'hip' | 'knee' | 'lean';
type Degrees = readonly [least: number, most: number];

// prettier-ignore
const TABLE: readonly (readonly [sentence: string, joint: Joint, kept: Degrees, broken: Degrees])[] = [
  ['Keep the hip straight.',                            'hip',  [0, 15],   [0, 50]],
  ['Keep your hips straight the whole time.',           'hip',  [-5, 20],  [0, 21]],
  ['Lie on your side with your hips straight.',         'hip',  [10, 10],  [45, 45]],
  ['Your hip stays straight.',                          'hip',  [0, 5],    [0, 30]],
  ['Move with a straight hip.',                         'hip',  [0, 5],    [0, 30]],
  ['Keep the front of your hips open.',                 'hip',  [0, 0],    [0, 40]],
  ['Keep a straight line from knees to shoulders.',     'hip',  [0, 0],    [0, 40]],
  ['Do not bend your hips.',                            'hip',  [0, 10],   [0, 60]],
  ['Lift until your hips are straight.',                'hip',  [5, 60],   [30, 60]],
  ['Lift until hips and knees make one line.',          'hip',  [5, 60],   [30, 60]],
  ['Snap your hips straight.',                          'hip',  [0, 80],   [40, 80]],
  ['Push your hips straight back.',                     'hip',  [5, 60],   [5, 20]],
  ['Bow forward slowly.',                               'hip',  [5, 60],   [0, 20]],
  ['Bend your hips and knees together.',                'hip',  [5, 60],   [0, 5]],
  ['Stay tall.',                                        'lean', [0, 10],   [0, 40]],
  ['Keep your trunk upright like a lift.',              'lean', [2, 10],   [0, 40]],
  ['Come up until you stand tall on that leg.',         'lean', [0, 40],   [30, 40]],
  ['Stand tall at a worktop.',                          'lean', [0, 40],   [85, 95]],
  ['Keep your knees straight but not locked.',          'knee', [2, 10],   [2, 60]],
  ['Lift the leg with the knee straight.',              'knee', [5, 5],    [30, 30]],
  ['Lower until the leg is almost straight.',           'knee', [30, 90],  [50, 90]],
  ['Keep both knees almost straight.',                  'knee', [5, 30],   [5, 60]],
  ['Bend the working knee slowly.',                     'knee', [5, 90],   [0, 5]],
  ['Rest with your knees bent at right angles.',        'knee', [90, 90],  [20, 60]],
];

const NONE = { hip: null, knee: null, lean: null };
const spanOf = ([leastDeg, mostDeg]: Degrees) => ({ leastDeg, mostDeg });

describe('a promise', () => {
  it.each(TABLE)('%s', (sentence, joint, kept, broken) => {
    expect(brokenPromises(sentence, { ...NONE, [joint]: spanOf(kept) })).toEqual([]);
    expect(brokenPromises(sentence, { ...NONE, [joint]: spanOf(broken) })).toHaveLength(1);
  });

  it('says nothing where the card has no pose that says it', () => {
    for (const [sentence] of TABLE) expect(brokenPromises(sentence, NONE)).toEqual([]);
  });
});

// Words that sound alike and promise nothing of the working leg or of the angle.
const NO_PROMISE = [
  'Keep the other leg straight.',
  'Lead with a bent knee, not with a straight hip.',
  'Lower straight down.',
  'Let your shins stand upright at the top.',
  'Do not let your hips drop or bend.',
  'Do not stay tall.',
  'Lean forward rather than stand tall.',
  'Bend the other knee.',
  'Put your feet as wide as your hips, straight ahead.',
];

describe('no promise', () => {
  it.each(NO_PROMISE)('%s', (sentence) => {
    const wild = { leastDeg: -90, mostDeg: 180 };
    const still = { leastDeg: 60, mostDeg: 60 };
    const tiny = { leastDeg: 0, mostDeg: 0 };
    for (const span of [wild, still, tiny])
      expect(brokenPromises(sentence, { hip: span, knee: span, lean: span })).toEqual([]);
  });
});
