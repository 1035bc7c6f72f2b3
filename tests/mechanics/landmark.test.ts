import { describe, expect, it } from 'vitest';
import { REFERENCE_BODY } from '../../src/mechanics/body.ts';
import { closePose } from '../../src/mechanics/closure.ts';
import { landmarks, PILLOW_CM, type Landmark } from '../../src/mechanics/landmark.ts';
import { poseAt } from '../../src/mechanics/trajectory.ts';
import { cardNamed, cards } from '../published/exercise-cards.ts';

const WHOLE = { from: 0, to: 1 };
const of = (name: string, interval = WHOLE) => {
  const { movement, loadKg } = cardNamed(name);
  return landmarks(movement, REFERENCE_BODY, loadKg, interval);
};
const cmOf = (list: readonly Landmark[], kind: Landmark['kind']) => {
  const found = list.find((landmark) => landmark.kind === kind);
  return found && 'cm' in found ? found.cm : null;
};

describe('home landmarks', () => {
  it.each(cards.map(({ name }) => name))('%s has one a patient can check alone', (name) => {
    const list = of(name);
    expect(list.length).toBeGreaterThan(0);
    for (const landmark of list) for (const value of Object.values(landmark)) expect(value).not.toBeNaN();
  });

  it.each([
    ['RDL 20 kg to 70 deg hip', ['handsAboveKnee', 'buttockBack']],
    ['RDL 20 kg to 90 deg hip', ['handsBelowKnee', 'buttockBack']],
    ['Good-morning 20 kg to 70 deg', ['buttockBack']],
    ['Squat to 90 deg hip', ['hipsAboveFloor', 'buttockBack', 'kneeOverToes']],
    ['Split squat', ['rearKneeAboveFloor', 'stanceLength', 'hipsAboveFloor', 'kneeOverToes']],
    ['Single-leg bridge, top range 20-0', ['buttockAboveFloor', 'heelDistance']],
    ['Hip thrust 40 kg (bench 0.40 m)', ['buttockAboveFloor', 'heelDistance']],
    ['Prone leg-curl hold 30 deg, 5 kg', ['footLift']],
    ['Nordic curl, 30 deg lean (strap)', ['shouldersForward']],
    ['Sitting, leaning 45 deg', ['shouldersPastHips']],
    ['Passive deep stretch (long sit)', ['shouldersPastHips']],
  ])('%s: %j', (name, kinds) => {
    expect(of(name).map(({ kind }) => kind)).toEqual(kinds);
  });

  it('the hands of a deadlift to 70 degrees are 7 cm above the knee, by plane trigonometry', () => {
    const { movement, loadKg } = cardNamed('RDL 20 kg to 70 deg hip');
    const trunk =
      (closePose(movement, poseAt(movement, 1), REFERENCE_BODY, loadKg)!.pose.trunk * Math.PI) / 180;
    const thigh = (70 * Math.PI) / 180 - trunk;
    const handsM = 1.75 * (0.288 * Math.cos(trunk) - 0.386);
    const kneeM = -1.75 * 0.245 * Math.cos(thigh);
    expect(cmOf(of('RDL 20 kg to 70 deg hip'), 'handsAboveKnee')).toBe(Math.ceil((handsM - kneeM) * 100));
  });

  it('a narrower range of a deadlift keeps the hands higher and the buttock nearer', () => {
    const [wide, narrow] = [
      of('RDL 20 kg to 70 deg hip'),
      of('RDL 20 kg to 70 deg hip', { from: 0, to: 0.6 }),
    ];
    expect(cmOf(narrow, 'handsAboveKnee')).toBeGreaterThan(cmOf(wide, 'handsAboveKnee')!);
    expect(cmOf(narrow, 'buttockBack')).toBeLessThan(cmOf(wide, 'buttockBack')!);
  });

  // Plane trigonometry: the trunk of 0.288 body heights, leant by 45 degrees.
  it('somebody sitting who leans by 45 degrees has the shoulders 35 cm in front of the hips', () => {
    const cm = Math.floor(100 * 0.288 * 1.75 * Math.SQRT1_2);
    expect(of('Sitting, leaning 45 deg')).toEqual([{ kind: 'shouldersPastHips', cm }]);
  });

  it('a bridge from the floor lies on the floor and needs no pillow', () => {
    const floor = of('Single-leg bridge, from the floor');
    expect(cmOf(floor, 'buttockAboveFloor')).toBeLessThanOrEqual(1);
    expect(cmOf(floor, 'pillows')).toBeNull();
  });

  it.each([
    [0.2, 16, 2],
    [0.25, 17, null],
    [0.35, 20, null],
    [0.7, 31, null],
  ])(
    'a thrust from %d of the way, %d cm: %j pillows of 8 cm, none where whole ones are higher',
    (from, cm, count) => {
      const thrust = of('Hip thrust 40 kg (bench 0.40 m)', { from, to: 1 });
      expect([cmOf(thrust, 'buttockAboveFloor'), cmOf(thrust, 'pillows')]).toEqual([
        cm,
        count === null ? null : count * PILLOW_CM,
      ]);
    },
  );

  it('a pile that would leave less than 3 cm of way up is none: 12 cm of an 18 cm bridge are no two pillows', () => {
    const raised = of('Single-leg bridge, top range 20-0');
    expect(cmOf(raised, 'buttockAboveFloor')).toBe(12);
    expect(cmOf(raised, 'pillows')).toBeNull();
  });

  it('a lower leg lifted by 30 degrees: half the shank, 21 cm', () => {
    expect(of('Prone leg-curl hold 30 deg, 5 kg')).toEqual([
      { kind: 'footLift', cm: Math.floor((100 * 0.246 * 1.75) / 2) },
    ]);
  });

  it('a card graded in steps names the step', () => {
    const { movement } = cardNamed('Step-up 40 cm');
    const [first] = landmarks({ ...movement, range: 'steps' }, REFERENCE_BODY, 0, WHOLE);
    expect(first).toEqual({ kind: 'stepHeight', cm: 26 });
  });

  it('none where the pose does not close', () => {
    const { movement } = cardNamed('Single-leg bridge, from the floor');
    const open = { ...movement, solve: { ...movement.solve!, dh: 3 } };
    expect(landmarks(open, REFERENCE_BODY, 0, WHOLE)).toEqual([]);
  });
});
