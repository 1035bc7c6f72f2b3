/** What the page says to an entry of the log: the leaflet's own rules, house rules 5, 7 and 8 [choice], usual pain 2. */
import { describe, expect, it } from 'vitest';
import { answerTo } from '../../src/client/inUse/answers.ts';
import type { LogRow } from '../../src/content/log/columns.ts';
import { sheetInUse } from '../../src/programme/inUse.ts';
import { otter } from '../fixtures/programme.ts';

const sheet = sheetInUse(otter);
const BLANK: LogRow = {
  date: '2026-03-06', occasion: 1, kind: 'session', card: '', side: null, edit: 0, done: null, sets: null, repetitions: null,
  seconds: null, loadKg: null, painDuring: null, morning: null, minutes: null, km: null, note: '',
}; // prettier-ignore
const words = (...entries: Partial<LogRow>[]) => {
  const rows = entries.map((entry) => ({ ...BLANK, ...entry }));
  return answerTo(rows, rows, sheet).words;
};
const curl = { card: 'prone-leg-curl' };
const MORE = 'That is more than planned. Keep to the numbers of this sheet: they grow one at a time.';

describe('an exercise', () => {
  const dose = sheet.exercises.find(({ card }) => card === curl.card)!;

  it.each([
    ['nothing', [{}], ''],
    ['done', [{ done: 'yes' }], 'Done. Note the pain too: it says how to go on.'],
    ['left out', [{ done: 'no' }], 'Left out. Do not do two to catch up.'],
    ['one leg of two', [{ done: 'yes' }, { done: 'no' }], 'A part counts. Carry on with the next session as planned.'],
    ['a part, with its pain', [{ done: 'part', painDuring: 2 }], '2: all right. A part counts. Carry on with the next session as planned.'],
    ['one leg of two, with its pain', [{ done: 'yes', painDuring: 2 }, { done: 'no' }], '2: all right. A part counts. Carry on with the next session as planned.'],
    ['a part that hurt', [{ done: 'part', painDuring: 6 }], '6: stop this exercise for today. Use the easier numbers next time.'],
    ['the worse leg decides', [{ painDuring: 1 }, { painDuring: 6 }], '6: stop this exercise for today. Use the easier numbers next time.'],
    ['as planned', [{ painDuring: 2, sets: dose.sets }], '2: all right.'],
    ['a set more', [{ painDuring: 2, sets: dose.sets + 1 }], `2: all right. ${MORE}`],
    ['one more in a set', [{ repetitions: dose.repetitions! + 1 }], MORE],
    ['a weight of one\'s own', [{ loadKg: (dose.loadKg ?? 0) + 1 }], MORE],
  ] as const)('%s', (_, entries, said) => {
    expect(words(...entries.map((entry) => ({ ...curl, ...entry })))).toBe(said);
  }); // prettier-ignore
});

describe('running and sitting', () => {
  const run = sheet.days.find(({ runKm }) => runKm !== null)!;
  const planned = run.runKm!;

  it.each([
    [{ kind: 'run', km: planned }, `${planned} km: within the plan.`],
    [
      { kind: 'run', km: planned + 1 },
      `${planned + 1} km: more than the ${planned} km of the plan. Keep to the plan next time.`,
    ],
    [{ kind: 'run', painDuring: 6 }, '6: stop the run for today, and walk home.'],
    [
      { kind: 'run', painDuring: 5 },
      '5: go no further than planned. Next time do the same again, add nothing.',
    ],
    [{ kind: 'run', done: 'no' }, 'Left out. Do not run further to catch up.'],
    [{ kind: 'sitting', minutes: 10 }, '10: all right.'],
    [
      { kind: 'sitting', minutes: 15 },
      '15: all right upright on a cushion. On a hard seat, up to 10 minutes.',
    ],
    [{ kind: 'sitting', minutes: 21 }, '21: over your 20 minutes. Stand up and walk a little sooner.'],
    // From 17 March the plan gives five minutes more.
    [
      { kind: 'sitting', minutes: 21, date: '2026-03-17' },
      '21: all right upright on a cushion. On a hard seat, up to 12 minutes.',
    ],
    [{ kind: 'sitting', painDuring: 6 }, '6: too much for so long a time. Stand up sooner next time.'],
  ] as const)('%j', (entry, said) => {
    expect(words({ date: run.on, ...entry })).toBe(said);
  });
});
