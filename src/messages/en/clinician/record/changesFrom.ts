/** What has changed since the revision before. */
import type { Decided } from '../../../../decisions/decide.ts';
import { listText } from '../../plain.ts';
import type { Exercise, Programme } from '../../../../programme/programme.ts';
import type { Prescription } from '../../../../decisions/session/prescribe.ts';
import { stageWord } from '../../../../decisions/stage/stageChoice.ts';

/** Stage and step, exercises that came and went, and every cell whose text is another; none for the first revision. */
export function changesFrom(previous: Programme | null, { stage, step, shown }: Decided): string[] {
  if (previous === null) return [];
  const { prescriptions } = shown[0];
  const before = new Map(previous.exercises.map((exercise) => [exercise.card, exercise]));
  const now = new Set(prescriptions.map(({ card }) => card.id));
  const added = prescriptions.filter(({ card }) => !before.has(card.id)).map(({ card }) => card.title);
  const gone = previous.exercises.filter(({ card }) => !now.has(card)).map(({ title }) => title);
  return [
    `From ${stageWord(previous.stage.chosen)} step ${previous.step} (revision ${previous.revision}) to ${stageWord(stage.chosen)} step ${step}.`,
    ...(added.length === 0 ? [] : [`New: ${listText(added)}.`]),
    ...(gone.length === 0 ? [] : [`No longer: ${listText(gone)}.`]),
    ...prescriptions.flatMap((one) => cellChanges(one, before.get(one.card.id))),
  ];
}

function cellChanges({ card, cells }: Prescription, before: Exercise | undefined): string[] {
  if (before === undefined) return [];
  return cells.flatMap(({ cell, text }) => {
    const old = before.cells.find((one) => one.cell === cell);
    return old === undefined || old.text === text
      ? []
      : [`${card.title}, ${cell}: ${old.text || '-'} to ${text || '-'}.`];
  });
}
