/** What has changed since the revision before. */
import type { Messages } from '../../messages/messages.ts';
import type { Decided } from '../../decisions/decide.ts';
import type { Prescription } from '../../decisions/session/prescribe.ts';
import { CELLS } from '../../decisions/terms/cell.ts';

import type { Exercise, Programme } from '../programme.ts';

/** Stage and step, exercises that came and went, and every cell whose text is another; none for the first revision. */
export function changesFrom(
  say: Messages,
  previous: Programme | null,
  { stage, step, shown }: Decided,
): string[] {
  if (previous === null) return [];
  const { prescriptions } = shown[0];
  const before = new Map(previous.exercises.map((exercise) => [exercise.card, exercise]));
  const now = new Set(prescriptions.map(({ card }) => card.id));
  const added = prescriptions.filter(({ card }) => !before.has(card.id)).map(({ card }) => card.title);
  const gone = previous.exercises.filter(({ card }) => !now.has(card)).map(({ title }) => title);
  const { revision } = previous;
  return [
    say.movedText(
      { stage: previous.stage.chosen, step: previous.step, revision },
      { stage: stage.chosen, step },
    ),
    ...say.exchangedTexts(added, gone),
    ...prescriptions.flatMap((one) => cellChanges(say, one, before.get(one.card.id))),
  ];
}

function cellChanges(say: Messages, one: Prescription, before: Exercise | undefined): string[] {
  if (before === undefined) return [];
  const texts = say.cellTexts(one);
  return CELLS.flatMap((cell) => {
    const old = before.cells.find((was) => was.cell === cell);
    return old === undefined || old.text === texts[cell]
      ? []
      : [say.cellChangeText(one.card.title, cell, old.text, texts[cell])];
  });
}
