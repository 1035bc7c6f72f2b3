/** Every dosage cell of every step, read back through pdf.js from the tagged tables, one by one. */
import { cellsFor } from '../../../src/decisions/session/cells/angleCell.ts';
import { describe, expect, it } from 'vitest';
import { type Programme } from '../../../src/programme/programme.ts';
import { otter } from '../../fixtures/programme.ts';
import { leafletOf } from './make.ts';
import { cellFaults } from './said.ts';
import { twelve } from './strain.ts';

const six: Programme = {
  ...otter,
  exercises: [...otter.exercises, ...otter.exercises.slice(2)],
  steps: otter.steps.map((step) => ({
    ...step,
    prescriptions: [...step.prescriptions, ...step.prescriptions.slice(2)],
  })),
};

describe('the cells of the tagged tables are the programme’s', () => {
  it.each([
    ['A4', otter],
    ['Letter', { ...otter, paper: 'Letter' as const }],
    ['six exercises', six],
    ['twelve exercises', twelve],
    ['twelve exercises on Letter', { ...twelve, paper: 'Letter' as const }],
  ])('%s', async (_, programme) => {
    const cells = programme.steps.flatMap(({ prescriptions }) => prescriptions.flatMap((one) => one.cells));
    expect(cells).toHaveLength(
      programme.steps.length * programme.exercises.length * cellsFor('hipFlexion').length,
    );
    expect(await cellFaults(programme, await leafletOf(programme))).toEqual([]);
  });

  it('sees a cell that is not the programme’s', async () => {
    const bytes = await leafletOf(otter);
    const [present, ...coming] = otter.steps;
    const [first, ...others] = present!.prescriptions;
    const cells = first!.cells.map((cell) => (cell.cell === 'sets' ? { ...cell, text: '6 holds' } : cell));
    const altered = {
      ...otter,
      steps: [{ ...present!, prescriptions: [{ ...first!, cells }, ...others] }, ...coming],
    };
    expect(await cellFaults(altered, bytes)).toEqual([
      `step 1, ${first!.card}, sets: "5 holds" for "6 holds"`,
    ]);
  });
});
