/** The days of the page's block: what most days are is left out, and nothing is lost. */
import { expect, it } from 'vitest';
import { sheetInUse } from '../../src/programme/inUse.ts';
import { saidDay, wholeDay } from '../../src/programme/sheetInUse.ts';
import { otter } from '../fixtures/programme.ts';

it('is whole again when it is read', () => {
  const { days } = sheetInUse(otter);
  expect(days.length).toBeGreaterThan(14);
  expect(days.map(saidDay).map(wholeDay)).toEqual(days);
});

it('says a free day by its date alone', () => {
  const { on } = sheetInUse(otter).days[0]!;
  expect(saidDay(wholeDay({ on }))).toEqual({ on });
});
