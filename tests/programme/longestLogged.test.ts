/** The longest run of a later consult against the runs that were written down (house rules 7: a plan grows from it). */
import { describe, expect, it } from 'vitest';
import type { LogRow } from '../../src/content/log/columns.ts';
import type { Consult } from '../../src/content/library.ts';
import { assembleProgramme } from '../../src/programme/assemble.ts';
import { addDays } from '../../src/units/date.ts';
import { readRows, row } from '../content/log/logs.ts';
import { day, person, RUNNER } from './person.ts';
import { programmeOf, workshop } from './shipped.ts';

/** Refusals of a second revision by paths, after a first of so many days with these runs. */
function refused(
  runs: readonly Partial<LogRow>[],
  longestIn30DaysKm: number,
  { days = 35, more = {} }: { readonly days?: number; readonly more?: Partial<Consult> } = {},
) {
  const before = person({ running: RUNNER, reviewOn: addDays(day('2026-11-24'), days) });
  const seenOn = before.reviewOn;
  const { log } = readRows(
    runs.map((run, index) => row(addDays(seenOn, index - runs.length), 'run', { done: 'yes', ...run })),
  );
  if (log === null) throw new Error('no log');
  const now = person({
    id: 'vole-r2',
    revision: 2,
    seenOn,
    startOn: seenOn,
    reviewOn: addDays(seenOn, 21),
    running: { ...RUNNER, longestIn30DaysKm },
    ...more,
  });
  const made = assembleProgramme(now, programmeOf(before), workshop, { consult: before, log });
  return 'refusals' in made ? made.refusals.map(({ code, path }) => `${code} ${path?.join('.')}`) : [];
}

type Row = readonly [string, readonly Partial<LogRow>[], number, Parameters<typeof refused>[2], string[]];

const ASKED = ['implausible running.longestIn30DaysKm'];

describe('the longest run of thirty days, with a log', () => {
  it.each<Row>([
    ['as long as the longest of the log', [{ km: 6 }, { km: 7.5 }], 7.5, {}, []],
    ['the next whole kilometre', [{ km: 7.5 }], 8, {}, []],
    ['longer: asked about', [{ km: 6 }, { km: 7.5 }], 9, {}, ASKED],
    ['shorter', [{ km: 9 }], 6, {}, []],
    [
      'as long as in the consult before, whose thirty days reach into these',
      [{ km: 6 }],
      9,
      { days: 21 },
      [],
    ],
    ['longer than there, too', [{ km: 6 }], 12, { days: 21 }, ASKED],
    ['no kilometres written down', [{ minutes: 40 }], 9, {}, []],
    [
      'longer and confirmed',
      [{ km: 6 }],
      9,
      {
        more: {
          confirmed: [
            { path: 'running.longestIn30DaysKm', value: 9, reason: 'a run that was not written down' },
          ],
        },
      },
      [],
    ],
  ])('%s', (_, runs, km, at, expected) => {
    expect(refused(runs, km, at)).toEqual(expected);
  });
});
