/** The present step as a table of cells, and of the next two what changes: a preview that the review must open. */
import { morningBands } from '../week/morning.ts';
import { changeText, goOnTexts, stepCaption, stepHeading } from './phrases/steps.ts';
import { COLUMN_WORDS } from './phrases/dose.ts';
import type { Shown } from './decide.ts';
import type { Person } from './person.ts';
import type { Prescription } from './prescribe.ts';
import type { CellName, StepTable } from './programme.ts';

/** The present step with every exercise; of the next two only the exercises that change. */
export function stepTables(shown: readonly Shown[], { protocol, consult }: Person): StepTable[] {
  return shown.map(({ rung, prescriptions }, index) => {
    const present = index === 0;
    const titleOf = (slot: string) =>
      prescriptions.find(({ exercise }) => exercise.slot.name === slot)?.card.title ?? slot;
    return {
      step: rung.step,
      heading: stepHeading(rung.step, present),
      columns: COLUMN_WORDS,
      caption: stepCaption(rung.step, present),
      change: present ? '' : changeText(rung, titleOf),
      // The second preview goes by the same rule as the first.
      goOnWhen:
        index === 1
          ? goOnTexts(protocol, morningBands(consult.usualMorningPain, protocol.morningCheck).carryOnTo)
          : [],
      present,
      prescriptions: prescriptions
        .filter(
          ({ exercise: { slot } }) => present || rung.changed.some(({ exercise }) => exercise === slot.name),
        )
        .map((prescription) => ({
          card: prescription.card.id,
          title: prescription.card.title,
          slot: prescription.exercise.slot.name,
          cells: prescription.cells,
          news: present ? [] : newsOf(prescription, shown[index - 1]?.prescriptions ?? []),
        })),
    };
  });
}

/** `before`: every exercise of the step before, also those it does not print. */
function newsOf({ card, exercise, cells }: Prescription, before: readonly Prescription[]): CellName[] {
  const last = before.find((one) => one.card.id === card.id && one.exercise.slot.name === exercise.slot.name);
  return cells
    .filter(({ cell, text }) => text !== '' && text !== last?.cells.find((one) => one.cell === cell)?.text)
    .map(({ cell }) => cell);
}
