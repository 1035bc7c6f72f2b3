import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import { loadingAt } from '../../src/mechanics/loading.ts';
import { sweep, verticalOnlySqueezeBw } from '../../src/mechanics/sweep.ts';
import { cardNamed } from '../published/exercise-cards.ts';

const HOUSE = { goSeconds: 3, holdSeconds: 0, backSeconds: 3 };
const swept = (name: string, interval = { from: 0, to: 1 }, tempo = HOUSE) => {
  const { movement, loadKg } = cardNamed(name);
  return sweep(movement, REFERENCE_BODY, loadKg, interval, tempo)!;
};

describe('along a movement', () => {
  it('a part reaches less than the whole, and no more than its far end', () => {
    const part = swept('RDL 20 kg to 70 deg hip', { from: 0, to: 0.5 });
    const { movement, loadKg } = cardNamed('RDL 20 kg to 70 deg hip');
    const { work } = loadingAt(movement, REFERENCE_BODY, loadKg, 0.5)!;
    expect(part.peak.hipFlexionDeg).toBe(37.5);
    expect(part.peak.compressionBw).toBe(work.compressionBw);
    expect(part.peak.compressionBw).toBeLessThan(swept('RDL 20 kg to 70 deg hip').peak.compressionBw);
  });

  it('the pause is spent at the gentler end', () => {
    for (const [name, gentleAt] of [
      ['RDL 20 kg to 70 deg hip', 0],
      ['Single-leg bridge, from the floor', 1],
    ] as const) {
      const { movement, loadKg } = cardNamed(name);
      const { work } = loadingAt(movement, REFERENCE_BODY, loadKg, gentleAt)!;
      const paused = swept(name, { from: 0, to: 1 }, { ...HOUSE, holdSeconds: 5 });
      expect(paused.gentleEnd).toBe(gentleAt === 0 ? 'start' : 'end');
      expect(paused.tensionTimeBwS - swept(name).tensionTimeBwS).toBeCloseTo(5 * work.tensionBw, 10);
    }
  });

  it('a hold spends all its seconds in its one pose', () => {
    const hold = swept(
      'Long-lever bridge hold (hip 5)',
      { from: 0, to: 1 },
      { goSeconds: 1, holdSeconds: 30, backSeconds: 1 },
    );
    expect(hold.tensionTimeBwS).toBeCloseTo(32 * hold.peak.tensionBw, 10);
  });

  it('dragging the heels in costs a bridge more than least effort, and changes nothing on one support', () => {
    const dragged = (name: string) => {
      const { movement, loadKg } = cardNamed(name);
      return verticalOnlySqueezeBw(movement, REFERENCE_BODY, loadKg, { from: 0, to: 1 });
    };
    const [bridge, deadlift] = ['Double-leg bridge, from the floor', 'RDL 20 kg to 70 deg hip'] as const;
    expect(dragged(bridge)).toBeGreaterThan(3 * swept(bridge).peak.compressionBw);
    expect(dragged(deadlift)).toBe(swept(deadlift).peak.compressionBw);
  });

  it('an uneven exercise tells of its other leg, an even one of none', () => {
    expect(swept('Single-leg deadlift 0 kg to 80 deg').otherPeak).toMatchObject({
      hipFlexionDeg: 0,
      compressionBw: 0,
    });
    expect(swept('RDL 20 kg to 70 deg hip').otherPeak).toBeNull();
  });
});
