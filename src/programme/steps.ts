/** The present step as a table of cells, and of the next two what changes: a preview that the review must open. */
import { morningBands } from '../scheduling/morning.ts';
import {
  changeText,
  datedStepHeading,
  goOnTexts,
  partText,
  partWhenTexts,
  stepCaption,
  stepHeading,
  turnText,
} from './phrases/steps.ts';
import { columnsFor } from './cells/angleCell.ts';
import type { Decided } from './decide.ts';
import type { Shown } from './work.ts';
import type { FollowingPart } from './followingParts.ts';
import type { Prescription } from './prescribe.ts';
import type { CellName, StepTable } from './programme.ts';

/**
 * The present step with every exercise; of the next two only the exercises that change. Of a protocol that goes by weeks
 * its next rungs instead, in full and with their dates.
 */
export function stepTables(decided: Decided): StepTable[] {
  const { shown, following } = decided;
  if (following.length === 0) return ladderTables(decided);
  const [present] = ladderTables({ ...decided, shown: [shown[0]] });
  return [
    ...(present === undefined ? [] : [present]),
    ...following.map((part, index) => partTable(part, following[index - 1]?.shown ?? shown[0], decided)),
  ];
}

function ladderTables({ shown, person: { protocol, consult, model }, dated }: Decided): StepTable[] {
  // A step is the exercises' turn to grow, in a week in which nothing else does.
  const turns = dated.plan.weeks.filter(({ turn }) => turn.grows === 'exercises' && turn.because === 'turn');
  return shown.map(({ rung, prescriptions }, index) => {
    const present = index === 0;
    const titleOf = (slot: string) =>
      prescriptions.find(({ exercise }) => exercise.slot.name === slot)?.card.title ?? slot;
    return {
      step: rung.step,
      heading: stepHeading(rung.step, present),
      columns: columnsFor(model.guardedBy),
      caption: stepCaption(rung.step, present),
      change: present ? '' : changeText(rung, titleOf),
      // The second preview goes by the same rule as the first.
      goOnWhen:
        index === 1
          ? [
              ...goOnTexts(protocol, morningBands(consult.usualMorningPain, protocol.morningCheck).carryOnTo),
              turnText(turns.map(({ from }) => from)),
            ]
          : [],
      present,
      prescriptions: prescriptions
        .filter(
          ({ exercise: { slot } }) => present || rung.changed.some(({ exercise }) => exercise === slot.name),
        )
        .map((prescription) => ({
          ...printed(prescription),
          news: present ? [] : newsOf(prescription, shown[index - 1]?.prescriptions ?? []),
        })),
    };
  });
}

function partTable(part: FollowingPart, before: Shown, { person }: Decided): StepTable {
  const { protocol, consult } = person;
  const { step, from, name, painAtMost, settled, sessions, shown } = part;
  const checkAtMost = morningBands(consult.usualMorningPain, protocol.morningCheck).carryOnTo;
  return {
    step,
    heading: datedStepHeading(step, from),
    columns: columnsFor(person.model.guardedBy),
    caption: stepCaption(step, false),
    change: partText(name, step),
    goOnWhen: partWhenTexts({
      sessions,
      painAtMost,
      checkAtMost: settled ? checkAtMost : null,
      checkDays: protocol.goingOn.checkDays.value,
    }),
    present: false,
    prescriptions: shown.prescriptions.map((prescription) => ({
      ...printed(prescription),
      news: newsOf(prescription, before.prescriptions),
    })),
  };
}

function printed({ card, exercise, cells }: Prescription) {
  return { card: card.id, title: card.title, slot: exercise.slot.name, cells };
}

/** `before`: every exercise of the step before, also those it does not print. */
function newsOf({ card, exercise, cells }: Prescription, before: readonly Prescription[]): CellName[] {
  const last = before.find((one) => one.card.id === card.id && one.exercise.slot.name === exercise.slot.name);
  return cells
    .filter(({ cell, text }) => text !== '' && text !== last?.cells.find((one) => one.cell === cell)?.text)
    .map(({ cell }) => cell);
}
