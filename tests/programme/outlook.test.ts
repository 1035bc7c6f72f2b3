/** How long it takes: said where it can be said, and left open where a medicine, a pregnancy or a birth decides. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { ownLines, sectionLines } from './leafletText.ts';
import { ALL_CLEAR, day, person, RUNNER } from './person.ts';
import { programmeOf } from './shipped.ts';

const RACE = { running: { ...RUNNER, races: [{ on: day('2026-12-13'), km: 5 }] } };
const TABLETS: Partial<Consult> = {
  screen: { ...ALL_CLEAR, oralSteroid: 'yes' },
  clearances: [
    { flag: 'oralSteroid', by: 'family doctor', on: day('2026-11-20'), decision: 'light holds may go on' },
  ],
};

describe('how long it takes', () => {
  it.each<[string, Partial<Consult>, string | null]>([
    ['is said to most', {}, null],
    ['is said after a birth, as far as stages go', { afterBirth: { weeks: 14 } }, null],
    ['is open under light holds', TABLETS, 'it waits until more than light holds are allowed'],
    ['is open in pregnancy', { pregnancy: { weeks: 20 } }, 'After a birth there is a time without running'],
    [
      'is open where pregnancy or birth was but named',
      { cannotDo: ['pregnant-or-postpartum'] },
      'After a birth there is a time without running',
    ],
  ])('%s', (_, different, open) => {
    const programme = programmeOf(person({ ...RACE, ...different }));
    const text = ownLines(programme).join('\n');
    const ahead = sectionLines(programme.record.stepsAhead).join('\n');
    expect(text.includes('From here the whole way usually takes')).toBe(open === null);
    expect(ahead.includes('Not before')).toBe(open === null);
    expect(ahead.includes('are left open')).toBe(open !== null);
    expect(/It would fit from \d/.test(text)).toBe(open === null);
    expect(programme.record.note.join(' ').includes('(fits from')).toBe(open === null);
    if (open !== null) expect(text).toContain(open);
  });
});
