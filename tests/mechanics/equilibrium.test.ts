import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import { loadingAt } from '../../src/mechanics/loading.ts';
import type { Movement } from '../../src/mechanics/movement.ts';
import { postureOf } from '../../src/mechanics/kinematics.ts';
import { equilibriumFaultAt } from '../../src/mechanics/equilibrium.ts';
import { sweep } from '../../src/mechanics/sweep.ts';
import { weightsOf } from '../../src/mechanics/weight.ts';
import { cardNamed, cards } from '../published/exercise-cards.ts';

const fixed = { mode: 'active', horizontal: 'none', range: 'fixed' } as const;
const bridge = cardNamed('Double-leg bridge, from the floor').movement;
const nordic = cardNamed('Nordic curl, 30 deg lean (strap)').movement;

const refused: readonly (readonly [string, Movement, string])[] = [
  [
    'a bridge whose shoulders lie two metres above the feet',
    { ...bridge, solve: { ...bridge.solve!, dh: 2 } },
    'notClosed',
  ],
  [
    'sitting with both feet behind the weight',
    {
      ...fixed,
      supports: ['seat', 'both.mid'],
      start: { trunk: -60, work: { hip: 20, knee: 90, pitch: 0 } },
    },
    'supportInTheAir',
  ],
  [
    'a curl whose knee hangs from the hand',
    { ...nordic, supports: ['hands', 'both.knee'] },
    'supportInTheAir',
  ],
  [
    'two supports one above the other',
    {
      ...fixed,
      supports: ['seat', 'shoulder'],
      start: { trunk: -5.9, work: { hip: 90, knee: 90, pitch: 0 } },
    },
    'supportInTheAir',
  ],
  [
    'standing with the trunk bent and nothing solved',
    { ...fixed, supports: ['both.mid'], start: { trunk: 60, work: { hip: 60, knee: 0, pitch: 0 } } },
    'offBalance',
  ],
];

describe('a pose that cannot rest gives no loading and says why', () => {
  it.each(refused)('%s', (_title, movement, fault) => {
    expect(equilibriumFaultAt(movement, REFERENCE_BODY, 0, 0)).toBe(fault);
    expect(loadingAt(movement, REFERENCE_BODY, 0, 0)).toBeNull();
    expect(
      sweep(
        movement,
        REFERENCE_BODY,
        0,
        { from: 0, to: 1 },
        { goSeconds: 3, holdSeconds: 0, backSeconds: 3 },
      ),
    ).toBeNull();
  });

  it('a standing ankle bent too far is a fault of the card, but its statics hold', () => {
    const deep: Movement = {
      ...cardNamed('Squat to 90 deg hip').movement,
      end: { trunk: 20, arms: 90, work: { hip: 90, knee: 120, pitch: 0 } },
    };
    expect(equilibriumFaultAt(deep, REFERENCE_BODY, 0, 1)).toBe('ankleBeyondReach');
    expect(loadingAt(deep, REFERENCE_BODY, 0, 1)).not.toBeNull();
  });

  // The centre of pressure of quiet standing sways by some 3 cm at most; weights and points give the offset independently.
  it('without a balance closure the weight may stand 3 cm from the foot, and no further', () => {
    const bows = Array.from({ length: 41 }, (_, i) => i / 2).map((deg) => {
      const bow: Movement = {
        ...fixed,
        supports: ['both.mid'],
        start: { trunk: deg, work: { hip: deg, knee: 0, pitch: 0 } },
      };
      const posture = postureOf(bow.start, REFERENCE_BODY);
      const { downN, momentNm } = weightsOf(posture, REFERENCE_BODY, undefined, 0);
      const offsetCm = 100 * Math.abs(posture.work.mid.x + momentNm / downN);
      return { offsetCm, fault: equilibriumFaultAt(bow, REFERENCE_BODY, 0, 0) };
    });
    for (const { offsetCm, fault } of bows) expect(fault).toBe(offsetCm > 3 ? 'offBalance' : null);
    const within = (from: number, to: number) =>
      bows.filter(({ offsetCm }) => offsetCm > from && offsetCm < to).length;
    expect([within(2, 3), within(3, 4), within(4, 5)].every((count) => count > 0)).toBe(true);
  });

  it('only an ankle may be held down', () => {
    expect(loadingAt(nordic, REFERENCE_BODY, 0, 0)!.reactions[1]!.upN).toBeLessThan(0);
    expect(equilibriumFaultAt(nordic, REFERENCE_BODY, 0, 0)).toBeNull();
  });

  it('every exercise of the specification rests along its whole movement', () => {
    for (const { movement, loadKg } of cards)
      for (const t of [0, 0.25, 0.5, 0.75, 1])
        expect(equilibriumFaultAt(movement, REFERENCE_BODY, loadKg, t)).toBeNull();
  });
});
