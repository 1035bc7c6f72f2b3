/** The present step as a table of cells, and of the next two what changes: a preview that the review must open. */
import type { Rung } from '../dose/rung.ts';
import { changeText, goOnTexts, stepCaption, stepHeading } from './phrases/steps.ts';
import { COLUMN_WORDS } from './phrases/dose.ts';
import type { Prescription } from './prescribe.ts';
import type { Person } from './person.ts';
import type { StepTable } from './programme.ts';

export function stepTables(
  rungs: readonly { readonly rung: Rung; readonly prescriptions: readonly Prescription[] }[],
  { protocol, consult }: Person,
): StepTable[] {
  return rungs.map(({ rung, prescriptions }, index) => {
    const present = index === 0;
    const titleOf = (slot: string) =>
      prescriptions.find(({ choice }) => choice.slot.name === slot)?.card.title ?? slot;
    return {
      step: rung.step,
      heading: stepHeading(rung.step, present),
      columns: COLUMN_WORDS,
      caption: stepCaption(rung.step, present),
      change: present ? '' : changeText(rung, titleOf),
      // The second preview goes by the same rule as the first.
      goOnWhen: index === 1 ? goOnTexts(protocol, consult.usualMorningPain) : [],
      present,
      prescriptions: prescriptions
        .filter(({ choice }) => present || rung.changed.some(({ exercise }) => exercise === choice.slot.name))
        .map(({ card, choice, cells }) => ({
          card: card.id,
          title: card.title,
          slot: choice.slot.name,
          cells,
        })),
    };
  });
}
