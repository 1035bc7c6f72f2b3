/** What is left of a library when some of its cards are hidden: protocols pass over them, cards no longer lead to them. */
import type { Placed } from './libraryReferences.ts';
import { errorAt, type Problem } from './problem.ts';
import type { ExerciseFrontMatter } from './schema/exercise.ts';
import type { ProtocolFrontMatter, SlotFrontMatter } from './schema/protocol.ts';
import type { SourceFile } from './source.ts';
import { topOf } from './sourceText.ts';

/** The file that hides a card, by the card's id. */
export type Hidden = ReadonlyMap<string, SourceFile>;

export function cardWithoutHidden<T extends Placed<ExerciseFrontMatter>>(card: T, hidden: Hidden): T {
  const { easier, harder } = card.value;
  const kept = (id: string | undefined) => (id === undefined || hidden.has(id) ? undefined : id);
  return { ...card, value: { ...card.value, easier: kept(easier), harder: kept(harder) } };
}

/** A slot that loses all its cards goes, unless it must be filled: see `hiddenProblems`. */
export function protocolWithoutHidden<T extends Placed<ProtocolFrontMatter>>(protocol: T, hidden: Hidden): T {
  const stages = protocol.value.stages.map((stage) => ({
    ...stage,
    slots: stage.slots
      .map((slot) => ({ ...slot, cards: slot.cards.filter((id) => !hidden.has(id)) }))
      .filter(({ cards }) => cards.length > 0),
  }));
  return { ...protocol, value: { ...protocol.value, stages } };
}

/** A Problem at the hiding file for each slot that must be filled and no longer can, and for a morning check without its card. */
export function hiddenProblems({ id, value }: Placed<ProtocolFrontMatter>, hidden: Hidden): Problem[] {
  const check = hidden.get(value.morningCheck.card);
  const slots = value.stages.flatMap(({ name, slots: all }) =>
    all
      .filter((slot) => slot.needed && slot.cards.every((card) => hidden.has(card)))
      .flatMap((slot) => emptied(slot, name, id, hidden)),
  );
  return [
    ...(check === undefined ? [] : [refused(check, `the card of the morning check of ${id}`, id)]),
    ...slots,
  ];
}

function emptied(slot: SlotFrontMatter, stage: string, protocol: string, hidden: Hidden): Problem[] {
  const last = slot.cards.map((card) => hidden.get(card)).find((file) => file !== undefined);
  if (last === undefined) return [];
  return [refused(last, `the last card of the slot "${slot.name}" in "${stage}" of ${protocol}`, protocol)];
}

function refused({ file }: SourceFile, what: string, protocol: string): Problem {
  return errorAt(topOf(file), 'does-not-fit', {
    path: 'hide',
    found: `said of ${what}`,
    expected: 'said of a card that nothing needed hangs on',
    fix: `delete this file, replace the card with one of your own, or lay a protocols/${protocol}.md of your own over the shipped one`,
  });
}
