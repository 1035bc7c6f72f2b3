/** Range and load solved under caps: the worked examples of the specification, sections 10 and 14, at 70 kg, 1.75 m. */
import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import { demandsUpTo, type Caps } from '../../src/mechanics/cap.ts';
import { largestLoad } from '../../src/mechanics/load.ts';
import { loadingAt } from '../../src/mechanics/loading.ts';
import type { Movement } from '../../src/mechanics/movement.ts';
import { admits, largestRange } from '../../src/mechanics/range.ts';
import { cardNamed } from './exercise-cards.ts';

const NO_CAPS: Caps = {
  angle: 'hipFlexion',
  angleDeg: null,
  compressionBw: null,
  tensionBw: null,
  demand: null,
  supportMargin: 1,
};
const hip = (deg: number): Caps => ({ ...NO_CAPS, angleDeg: deg });
const squeeze = (bw: number): Caps => ({ ...NO_CAPS, compressionBw: bw });

describe('largest range', () => {
  it.each([
    ['closed form: hip cap 70 from 5 to 90 is 65/85', 'RDL 20 kg to 90 deg hip', hip(70), 65 / 85, 1e-9],
    ['section 10: squeeze 1.0 BW', 'RDL 20 kg to 90 deg hip', squeeze(1), 0.5786, 5e-5],
    ['section 10: squeeze 0.6 BW', 'Split squat', squeeze(0.6), 0.658, 5e-4],
    [
      'section 10: squeeze 0.5 BW, from the raised end',
      'Single-leg bridge, from the floor',
      squeeze(0.5),
      0.534,
      5e-4,
    ],
    [
      'section 10: hip 60 and squeeze 1',
      'Forward lunge (deep)',
      { ...hip(60), compressionBw: 1 },
      0.385,
      5e-4,
    ],
  ])('%s (%s)', (_source, name, caps, fraction, tolerance) => {
    const { movement, loadKg } = cardNamed(name);
    const range = largestRange(movement, REFERENCE_BODY, loadKg, caps);
    if (!range.admitted) throw new Error(`barred by ${range.barredBy}`);
    expect(Math.abs(range.fraction - fraction)).toBeLessThanOrEqual(tolerance);
  });

  it('14.53-54: at squeeze 1.0 BW the deadlift stops at hip 54.18, on the cap', () => {
    const { movement, loadKg } = cardNamed('RDL 20 kg to 90 deg hip');
    const range = largestRange(movement, REFERENCE_BODY, loadKg, squeeze(1));
    if (!range.admitted) throw new Error(`barred by ${range.barredBy}`);
    expect(range.decidedBy).toBe('compression');
    expect(Math.abs(range.angleDeg - 54.18)).toBeLessThanOrEqual(0.01);
    const { work } = loadingAt(movement, REFERENCE_BODY, loadKg, range.interval.to)!;
    expect(Math.abs(work.compressionBw - 1)).toBeLessThanOrEqual(1e-6);
  });

  it('14.56: a bridge is anchored at its raised end, and a split squat stops at hip 61', () => {
    const { movement } = cardNamed('Single-leg bridge, from the floor');
    const bridge = largestRange(movement, REFERENCE_BODY, 0, squeeze(0.5));
    expect(bridge).toMatchObject({ gentleEnd: 'end', decidedBy: 'compression', interval: { to: 1 } });
    expect(bridge.admitted && Math.round(bridge.angleDeg)).toBe(28);
    const split = largestRange(cardNamed('Split squat').movement, REFERENCE_BODY, 0, squeeze(0.6));
    expect(split.admitted && Math.round(split.angleDeg)).toBe(61);
  });

  it('the margin of a card on two supports works like a cap so much lower; on one support it does nothing', () => {
    const split = cardNamed('Split squat').movement;
    const withMargin = largestRange(split, REFERENCE_BODY, 0, { ...squeeze(0.75), supportMargin: 1.25 });
    expect(withMargin).toEqual(largestRange(split, REFERENCE_BODY, 0, squeeze(0.6)));
    const { movement, loadKg } = cardNamed('RDL 20 kg to 90 deg hip');
    expect(largestRange(movement, REFERENCE_BODY, loadKg, { ...squeeze(1), supportMargin: 1.25 })).toEqual(
      largestRange(movement, REFERENCE_BODY, loadKg, squeeze(1)),
    );
  });

  it('says what bars an exercise whose gentler end breaks a cap, and that a lifted cap breaks nothing', () => {
    const nordic = cardNamed('Nordic curl, 30 deg lean (strap)').movement;
    expect(admits(nordic, REFERENCE_BODY, 0, { ...NO_CAPS, tensionBw: 2.5, supportMargin: 1.25 })).toEqual({
      admitted: false,
      barredBy: 'tension',
    });
    expect(admits(nordic, REFERENCE_BODY, 0, { ...NO_CAPS, demand: 0.9 })).toEqual({
      admitted: false,
      barredBy: 'demand',
    });
    expect(admits(nordic, REFERENCE_BODY, 0, NO_CAPS)).toMatchObject({
      admitted: true,
      fraction: 1,
      decidedBy: 'full',
    });
  });

  it('an exercise done in full or not at all is barred by what would have cut it short', () => {
    const { movement, loadKg } = cardNamed('RDL 20 kg to 70 deg hip');
    expect(admits(movement, REFERENCE_BODY, loadKg, squeeze(1))).toEqual({
      admitted: false,
      barredBy: 'compression',
    });
    expect(admits(movement, REFERENCE_BODY, loadKg, squeeze(1.6))).toMatchObject({
      admitted: true,
      fraction: 1,
    });
  });

  it('a pose that cannot rest ends the range, or bars the exercise', () => {
    const { movement } = cardNamed('Single-leg bridge, from the floor');
    const shortSearch: Movement = { ...movement, solve: { ...movement.solve!, range: [-140, -95] } };
    expect(largestRange(shortSearch, REFERENCE_BODY, 0, NO_CAPS)).toMatchObject({
      admitted: true,
      decidedBy: 'pose',
    });
    const nowhere: Movement = { ...movement, solve: { ...movement.solve!, range: [-40, -20] } };
    expect(largestRange(nowhere, REFERENCE_BODY, 0, NO_CAPS)).toEqual({ admitted: false, barredBy: 'pose' });
  });
});

describe('largest load', () => {
  it.each([
    ['RDL 20 kg to 45 deg hip', 0.6, 24.6, 0.05],
    ['RDL 20 kg to 70 deg hip', 1.5, 18.697, 0.01],
    ['Good-morning 20 kg to 70 deg', 1.2, 11.4, 0.05],
    ['Hip thrust 40 kg (bench 0.40 m)', 1.5, 35.0, 0.05],
  ])('section 10: %s, squeeze %d BW: %d kg', (name, cap, loadKg, tolerance) => {
    const load = largestLoad(cardNamed(name).movement, REFERENCE_BODY, squeeze(cap));
    if (!load.admitted) throw new Error(`barred by ${load.barredBy}`);
    expect(Math.abs(load.loadKg - loadKg)).toBeLessThanOrEqual(tolerance);
    expect(load.decidedBy).toBe('compression');
  });

  it('is barred where the bare movement already breaks the cap, and full where no load does', () => {
    const { movement } = cardNamed('RDL 20 kg to 70 deg hip');
    expect(largestLoad(movement, REFERENCE_BODY, squeeze(0.5))).toEqual({
      admitted: false,
      barredBy: 'compression',
    });
    expect(largestLoad(movement, REFERENCE_BODY, NO_CAPS)).toEqual({
      admitted: true,
      loadKg: 100,
      decidedBy: 'full',
    });
  });
});

// A small split squat, a fifth of its way down: pull rises to a top near 75 kg and falls again; the ends do not show it.
describe('the most a load up to this one can pull', () => {
  const lunge: Movement = {
    supports: ['work.mid', 'other.fore'],
    solve: { unknown: 'other.knee', kind: 'height', range: [0, 130] },
    mode: 'active',
    horizontal: 'minEffort',
    loadAt: 'hands',
    start: {
      trunk: 2,
      arms: 'hang',
      work: { hip: 18, knee: 12, pitch: 0 },
      other: { hip: -8, knee: 20, pitch: -30 },
    },
    end: {
      trunk: 5,
      arms: 'hang',
      work: { hip: 55, knee: 68, pitch: 0 },
      other: { hip: -5, knee: 60, pitch: -50 },
    },
    range: 'continuous',
  };
  const pullBw = (kg: number) => {
    const { work, other } = loadingAt(lunge, REFERENCE_BODY, kg, 0.2)!;
    return Math.max(work.tensionBw, other!.tensionBw);
  };

  it.each([20, 60, 100, 140])('with %d kg is that of the worst kilogram on the way up', (mostKg) => {
    const worst = Math.max(...Array.from({ length: 101 }, (_, i) => pullBw((mostKg * i) / 100)));
    const { tensionBw } = demandsUpTo(lunge, REFERENCE_BODY, mostKg, 0.2)!;
    expect(tensionBw).toBeGreaterThanOrEqual(worst - 1e-6);
    expect(tensionBw).toBeLessThanOrEqual(worst * 1.001);
  });

  it('lies above both ends at 100 kg', () => {
    expect(pullBw(75)).toBeGreaterThan(1.1 * Math.max(pullBw(0), pullBw(100)));
  });
});

describe('lumbar bend in the place of hip bend (14.57-59)', () => {
  const { movement, loadKg } = cardNamed('RDL 20 kg to 70 deg hip');
  const end = movement.end!;
  const bentPose = { ...end, lumbar: 20, work: { ...end.work, hip: 50 } };
  const hold: Movement = { ...movement, start: bentPose, end: bentPose };
  const straight = loadingAt(movement, REFERENCE_BODY, loadKg, 1)!;
  const bent = loadingAt(hold, REFERENCE_BODY, loadKg, 0)!;

  it.each([
    ['same trunk, degrees', bent.trunkLeanDeg, straight.trunkLeanDeg, 1e-6],
    ['trunk 46.560841 degrees', bent.trunkLeanDeg, 46.560841, 1e-6],
    ['same hip moment, 96.398954 N·m', bent.work.hipMomentNm, 96.398954, 1e-6],
    ['squeeze 0.6993 of it', bent.work.compressionN / straight.work.compressionN, 0.6993, 5e-4],
  ])('%s', (_title, value, expected, tolerance) => {
    expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance);
  });
});

describe('monotone where the specification says so (14.48-49)', () => {
  const { movement } = cardNamed('RDL 20 kg to 70 deg hip');
  const squeezes = (values: readonly number[], at: (value: number) => readonly [number, number]) =>
    values.map((value) => loadingAt(movement, REFERENCE_BODY, ...at(value))!.work.compressionN);
  it.each([
    ['with load, 0 to 60 kg', squeezes([0, 10, 20, 30, 40, 50, 60], (kg) => [kg, 1])],
    ['from start to end', squeezes([0, 0.2, 0.4, 0.6, 0.8, 1], (t) => [20, t])],
  ])('the squeeze of a deadlift rises %s', (_title, values) => {
    values.slice(1).forEach((value, i) => expect(value).toBeGreaterThan(values[i]!));
  });
});

describe('squeeze that falls with load (section 0.2): a step of 40 cm, weights at the sides', () => {
  const step: Movement = { ...cardNamed('Step-up 40 cm').movement, loadAt: 'hands' };
  const peak = (kg: number) =>
    Math.max(
      ...Array.from(
        { length: 41 },
        (_, i) => loadingAt(step, REFERENCE_BODY, kg, i / 40)!.work.compressionBw,
      ),
    );
  it.each([
    [0, 0.7],
    [20, 0.2],
    [40, 0.09],
  ])('at %d kg it is %d BW', (kg, expected) =>
    expect(Math.abs(peak(kg) - expected)).toBeLessThanOrEqual(0.0051),
  );

  it('so the cap is held against the largest on the way up', () => {
    expect(admits(step, REFERENCE_BODY, 40, squeeze(0.5))).toEqual({
      admitted: false,
      barredBy: 'compression',
    });
    expect(admits(step, REFERENCE_BODY, 40, squeeze(0.71))).toMatchObject({ admitted: true });
  });
});
