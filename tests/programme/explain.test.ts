/** Every printed number says why: rule, inputs, source and what decided it are those that did. */
import { describe, expect, it } from 'vitest';
import type { Consult } from '../../src/content/library.ts';
import { RUNNER, person, testedSet } from './person.ts';
import { programmeOf } from './shipped.ts';

const cellOf = (different: Partial<Consult>, card: string, name: string) =>
  programmeOf(person(different))
    .exercises.find((one) => one.card === card)
    ?.cells.find(({ cell }) => cell === name);

describe('what decided', () => {
  it('a range by the stage, with its cap', () => {
    expect(cellOf({}, 'hip-hinge', 'hipFlexionDeg')).toMatchObject({
      value: 45,
      decidedBy: 'hipFlexion',
      inputs: { capDeg: 45, heldToDeg: 45 },
      source: { cite: 'hip bend cap of the stage, house rules 3', mark: 'choice' },
    });
  });

  it('a range by what hurt, less the margin', () => {
    const tests = [
      { test: 'single-leg-bridge-raised', pain: 1 },
      { test: 'hip-hinge', pain: 5, painFreeHipFlexionDeg: 52 },
    ];
    expect(cellOf({ tests }, 'hip-hinge', 'hipFlexionDeg')).toMatchObject({
      value: 40,
      decidedBy: 'provokedAngle',
      inputs: { provokedLessMarginDeg: 42 },
    });
  });

  it('a load by the formula the clinic has chosen', () => {
    const testedSets = [testedSet('romanian-deadlift', 12, 8, 2, { rangeDeg: 60 })];
    const cell = cellOf({ stage: 3, testedSets }, 'romanian-deadlift', 'loadKg');
    expect(cell?.source).toEqual({
      cite: 'Epley 1985, as handbooks give it; of kilograms and hip moment the lower',
      mark: 'secondary',
    });
    expect(cell?.inputs).toMatchObject({ testedKg: 12, testedRepetitions: 8, testedReserve: 2 });
  });

  it('sets by the minutes, with what the protocol asks for', () => {
    const programme = programmeOf(person({ minutesPerDay: 25 }));
    const cut = programme.exercises.flatMap(({ cells }) =>
      cells.filter(({ decidedBy }) => decidedBy === 'minutes'),
    );
    expect(cut.length).toBeGreaterThan(0);
    for (const { cell, value, inputs } of cut) {
      expect(['sets', 'timesPerDay']).toContain(cell);
      expect(Number(value)).toBeLessThan(Number(inputs['byRule']));
    }
    expect(programme.record.week.gaveUp.length).toBeGreaterThan(0);
  });

  it('a step, from where it began; what was eased for it is told as eased', () => {
    const { steps } = programmeOf(person({ stage: 1, tests: [{ test: 'long-lever-bridge-hold', pain: 4 }] }));
    const later = steps.flatMap(({ present, prescriptions }) =>
      present
        ? []
        : prescriptions.flatMap(({ cells }) => cells.filter(({ decidedBy }) => decidedBy === 'step')),
    );
    expect(later.some(({ rule }) => rule.startsWith('step of the ladder, from '))).toBe(true);
    expect(later.some(({ rule }) => rule.startsWith('taken down by a step of the ladder, from '))).toBe(true);
    for (const { inputs } of later) expect(inputs).toHaveProperty('from');
  });
});

describe('the record', () => {
  it('adds up: the week is the sum of its days', () => {
    const { record, exercises } = programmeOf(
      person({ running: RUNNER, testedSets: [testedSet('hip-hinge', 8, 10, 4)] }),
    );
    const rows = new Map(
      record.totals.rows.map(([name, days, squeeze, pull]) => [name, [days, squeeze, pull]]),
    );
    const own = exercises.flatMap(({ title }) =>
      rows.has(title) ? [rows.get(title)?.map(Number) as number[]] : [],
    );
    const [, squeeze, pull] = rows.get('The week')?.map(Number) ?? [];
    const sum = (index: number) => own.reduce((total, row) => total + (row[0] ?? 0) * (row[index] ?? 0), 0);
    // Each row is rounded to whole body weights x seconds before it is added here.
    const rounding = own.reduce((total, row) => total + 0.5 * (row[0] ?? 0), 0.5);
    expect(Math.abs(sum(1) - (squeeze ?? NaN))).toBeLessThanOrEqual(rounding);
    expect(Math.abs(sum(2) - (pull ?? NaN))).toBeLessThanOrEqual(rounding);
  });

  it('gives no estimate of another tendon, and says so', () => {
    const { record } = programmeOf(
      person({ protocol: 'gluteal-tendon', tests: [{ test: 'week-one-exercises', pain: 2 }] }),
    );
    for (const { estimate, remarks } of record.exercises) {
      expect(estimate).toBeNull();
      expect(remarks.join(' ')).toContain('knows the hamstring tendon alone');
    }
  });

  it('prints what was not recorded as that', () => {
    const unmeasured = Object.fromEntries(
      Object.entries(person()).filter(([key]) => key !== 'heightM' && key !== 'massKg'),
    ) as Consult;
    const rows = programmeOf(unmeasured).record.findings.flatMap((table) => table.rows);
    expect(rows).toContainEqual(['Height', 'not recorded; the reference body is used']);
    expect(rows).toContainEqual(['Pain area', 'not recorded']);
    expect(rows).toContainEqual(['Goals', 'not recorded']);
  });

  it('a day between is no day when every day has its session', () => {
    const { record, exercises } = programmeOf(person({ days: ['mon', 'wed', 'fri'] }));
    expect(exercises.every(({ cells }) => cells.find(({ cell }) => cell === 'days')?.value !== '')).toBe(
      true,
    );
    expect(record.passedOver).toContainEqual(expect.objectContaining({ limit: 'days', stage: 2 }));
  });
});
