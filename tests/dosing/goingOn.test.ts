import { describe, expect, it } from 'vitest';
import {
  leastDaysOfStep,
  missingToGoOn,
  missingToGoOnStage,
  type StepLog,
} from '../../src/dosing/goingOn.ts';
import { easeBack } from '../../src/dosing/easeBack.ts';

// Rules 4 [choice].
const RULES = {
  doneSessions: 2,
  checkOverUsual: 1,
  checkDays: 7,
  sessionsDoneShare: 0.7,
  leastSessions: 3,
  leastDays: 7,
};
const READY: StepLog = {
  doneInFull: 2,
  sessionsDone: 3,
  sessionsPlanned: 4,
  daysOnStep: 7,
  checksOverUsual: [0, 1, 1, 0, -1, 0, 1],
};

describe('going on a step', () => {
  it('misses nothing when all is done', () => {
    expect(missingToGoOn(READY, RULES)).toEqual([]);
  });

  it.each([
    ['doneSessions', { doneInFull: 1 }, 1, 2],
    ['leastSessions', { sessionsDone: 2, sessionsPlanned: 2 }, 2, 3],
    ['leastDays', { daysOnStep: 6 }, 6, 7],
    ['sessionsDoneShare', { sessionsPlanned: 5 }, 0.6, 0.7],
    ['checkDays', { checksOverUsual: [0, 0, null, 0, 0, 0, 0] }, 6, 7],
    ['checkDays', { checksOverUsual: [0, 0, 0] }, 3, 7],
    ['checkOverUsual', { checksOverUsual: [0, 0, 2, 0, 0, 0, 0] }, 2, 1],
  ] as const)('misses %s', (what, change, have, need) => {
    expect(missingToGoOn({ ...READY, ...change }, RULES)).toEqual([{ what, have, need }]);
  });

  it('looks at the last seven mornings only', () => {
    expect(missingToGoOn({ ...READY, checksOverUsual: [3, 3, ...READY.checksOverUsual] }, RULES)).toEqual([]);
  });

  it('says all that is missing, without a session at all too', () => {
    const fresh: StepLog = {
      doneInFull: 0,
      sessionsDone: 0,
      sessionsPlanned: 0,
      daysOnStep: 0,
      checksOverUsual: [],
    };
    expect(missingToGoOn(fresh, RULES).map(({ what }) => what)).toEqual([
      'doneSessions',
      'leastSessions',
      'leastDays',
      'sessionsDoneShare',
      'checkDays',
    ]);
  });

  it('asks for six sessions of a stage', () => {
    expect(missingToGoOnStage(READY, RULES, 6, 6)).toEqual([]);
    expect(missingToGoOnStage(READY, RULES, 5, 6)).toEqual([{ what: 'leastSessions', have: 5, need: 6 }]);
  });

  it('lasts a week at three sessions a week and eleven days at two', () => {
    expect([leastDaysOfStep(3, RULES), leastDaysOfStep(2, RULES), leastDaysOfStep(7, RULES)]).toEqual([
      7, 11, 7,
    ]);
  });
});

describe('easing back', () => {
  const rules = { setsFactor: 0.5, loadFactor: 0.8, rangeLessDeg: 15 };
  const card = {
    card: 'a',
    rangesDeg: [20, 25, 30, 35, 40, 45],
    loadsKg: [0, 4, 6, 8, 10],
    legs: 'each',
  } as const;
  const tempo = { goSeconds: 3, holdSeconds: 0, backSeconds: 3 };
  const at = {
    exercise: 'a',
    card: 'a',
    rangeDeg: 45,
    loadKg: 8,
    daysPerWeek: 3,
    dose: {
      kind: 'slow',
      sets: 3,
      repetitions: 10,
      holdSeconds: null,
      tempo,
      restSeconds: 60,
      timesPerDay: 1,
      reserve: 3,
    },
  } as const;

  it('halves the sets down, takes 20 % of the load as the kit can, and 15°', () => {
    expect(easeBack(at, card, rules)).toEqual({
      ...at,
      rangeDeg: 30,
      loadKg: 6,
      dose: { ...at.dose, sets: 1 },
    });
  });

  it('goes no further than the gentlest setting, and never under one set', () => {
    const low = { ...at, rangeDeg: 25, loadKg: 0, dose: { ...at.dose, sets: 1 } };
    expect(easeBack(low, card, rules)).toEqual({ ...low, rangeDeg: 20 });
  });

  it('leaves a range alone that cannot be graded', () => {
    const fixed = { ...at, rangeDeg: null };
    expect(easeBack(fixed, { ...card, rangesDeg: [] }, rules).rangeDeg).toBeNull();
  });
});

it('a stage counts its own sessions, not those of the step', () => {
  const few: StepLog = { ...READY, sessionsDone: 2, sessionsPlanned: 2 };
  expect(missingToGoOnStage(few, RULES, 6, 6)).toEqual([]);
  expect(missingToGoOnStage(few, RULES, 5, 6)).toEqual([{ what: 'leastSessions', have: 5, need: 6 }]);
});
