/** Sentences a patient or a clinician would stumble over: each of these once stood on a sheet, or said what was not so. */
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import type { Programme, Section } from '../../src/programme/programme.ts';
import { CASES } from './outcome.ts';
import { leafletLines, ownLines } from './leafletText.ts';
import { person, RUNNER } from './person.ts';
import { filesBelow, make, programmeOf, shipped } from './shipped.ts';

const made = (different: Partial<Consult> = {}) => programmeOf(person(different));
const said = ({ parts }: Section) => JSON.stringify(parts);

const everybody: readonly (readonly [name: string, programme: Programme])[] = CASES.flatMap((name) => {
  const one = make(filesBelow(join('tests/cases', name, 'in')));
  return 'programme' in one ? [[name, one.programme] as const] : [];
});
const caseOf = (name: string): Programme => {
  const found = everybody.find(([one]) => one === name);
  if (found === undefined) throw new Error(`case ${name}: expected a programme`);
  return found[1];
};

/** A runner with speed, at the end of the way. */
const FAST: Partial<Consult> = {
  stage: 4,
  minutesPerDay: 60,
  reviewOn: '2026-12-29',
  running: { ...RUNNER, hills: true, speed: true },
  tests: [
    { test: 'single-leg-hinge', pain: 0 },
    { test: 'split-squat', pain: 0 },
  ],
};

describe('how far, for everybody', () => {
  it.each(everybody)('%s: no hand of a clock, and no seat that no house has', (_, programme) => {
    const text = leafletLines(programme).join('\n');
    expect(text).not.toMatch(/clock hand|half past|o'clock/);
    const seatsCm = [...text.matchAll(/seat of (\d+) cm/g)].map(([, cm]) => Number(cm));
    expect(Math.max(0, ...seatsCm)).toBeLessThanOrEqual(shipped.clinic.landmarks.seatAtMostCm.value);
  });

  it('a half squat above every seat is measured at the wall', () => {
    const { exercises } = caseOf('by-feel');
    expect(exercises.find(({ card }) => card === 'half-squat')?.howFar[0]).toMatch(
      /^Buttock \d+ cm back: stand with your heels/,
    );
  });

  it.each(everybody)(
    '%s: a range that is eased has a landmark of its own, or none',
    (_, { exercises, easier }) => {
      const rows = easier.parts.flatMap((part) => (part.kind === 'table' ? part.table.rows : []));
      for (const { title, howFar } of exercises) {
        const [, , , far = ''] = rows.find(([name = '']) => name.startsWith(title)) ?? [];
        if (far.startsWith('No lower than')) expect([title, far]).not.toEqual([title, howFar[0]]);
      }
    },
  );
});

describe('a dose', () => {
  it('of strides is so many strides, one leg in turn with the other', () => {
    const { exercises, steps } = made(FAST);
    const strides = exercises.find(({ card }) => card === 'strides');
    expect(strides).toMatchObject({ dose: '4 strides', doseWords: '4 strides', side: 'Both legs in turn' });
    const [now] = steps;
    const cells = now?.prescriptions.find(({ card }) => card === 'strides')?.cells ?? [];
    expect(
      cells.filter(({ cell }) => cell === 'sets' || cell === 'repetitions').map(({ text }) => text),
    ).toEqual(['4 strides', '']);
  });

  it.each(everybody)('%s: no label and its number say the same word', (_, programme) => {
    expect(ownLines(programme).join('\n')).not.toMatch(/Sets:? \d+ sets?\b|Repetitions:? \d+ repetitions?\b/);
  });
});

describe('what a session gave up', () => {
  it('names the usual length where that cut it, and the minutes there are where they did', () => {
    const cut = (name: string) => caseOf(name).record.week.gaveUp.join(' ');
    expect(cut('after-a-break')).toContain('to keep to the usual 25 minutes of a session');
    expect(cut('after-a-break')).not.toContain('minutes there are');
    expect(cut('quarter-hour')).toContain('to fit the 15 minutes there are');
  });
});

describe('free sitting', () => {
  it('in the last stage says so', () => {
    const free = made({ ...FAST, sitting: { toleranceMinutes: 120, goalMinutes: 90 } });
    expect(said(free.sitting)).toContain('Sit as you like.');
    expect(said(free.sitting)).not.toContain('come back');
  });
});
