/** The section of a protocol's page that says what a clinic changed in it. */
import { type Extension, stageAndSlot } from '../content/extending/extension.ts';
import type { Library, Protocol } from '../content/library.ts';
import { pathText } from '../content/path.ts';
import { protocolSchema } from '../content/schema/protocol.ts';
import { sentenceAt } from '../content/schema/schemaAt.ts';
import { paragraph, section, type Section, table } from '../messages/shapes.ts';
import type { Messages } from '../messages/messages.ts';

/** None for a protocol that is whole by itself. */
export function ownChanges(say: Messages, protocol: Protocol, library: Library): readonly Section[] {
  const { extension } = protocol;
  if (extension === null) return [];
  const { of, addedCards, hiddenCards } = extension;
  const titleOf = (id: string) => library.exercises.get(id)?.title ?? id;
  return [
    section('own-changes', say.OWN_CHANGES.heading, [
      paragraph(say.changedLead(library.protocols.get(of)?.title ?? of, of === protocol.id)),
      ...(extension.values.length === 0 ? [] : [valueTable(say, extension, protocol)]),
      ...addedCards.map(({ slot, card }) =>
        paragraph(say.addedText(titleOf(card), stageAndSlot(protocol, slot) || pathText(slot))),
      ),
      ...(hiddenCards.length === 0 ? [] : [paragraph(say.leftOutText(hiddenCards.map(titleOf)))]),
    ]),
  ];
}

function valueTable(say: Messages, { values }: Extension, protocol: Protocol) {
  return table(
    say.OWN_CHANGES.caption,
    say.OWN_CHANGES.columns,
    values.map(({ path, shipped, value, mark, cite }) => [
      say.changedText(sentenceAt(protocolSchema, path) ?? pathText(path), stageAndSlot(protocol, path)),
      shipped === null ? say.OWN_CHANGES.none : String(shipped),
      String(value),
      mark === undefined ? say.OWN_CHANGES.none : say.MARK_WORDS[mark],
      cite ?? say.OWN_CHANGES.none,
    ]),
  );
}
