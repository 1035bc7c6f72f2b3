/** The section of a protocol's page that says what a clinic changed in it. */
import { type Extension, stageAndSlot } from '../content/extending/extension.ts';
import type { Library, Protocol } from '../content/library.ts';
import { pathText } from '../content/path.ts';
import { protocolSchema } from '../content/schema/protocol.ts';
import { sentenceAt } from '../content/schema/schemaAt.ts';
import { MARK_WORDS } from '../messages/en/catalogue/library.ts';
import {
  addedText,
  changedLead,
  changedText,
  leftOutText,
  OWN_CHANGES,
} from '../messages/en/catalogue/ownChanges.ts';
import { paragraph, section, type Section, table } from '../messages/shapes.ts';

/** None for a protocol that is whole by itself. */
export function ownChanges(protocol: Protocol, library: Library): readonly Section[] {
  const { extension } = protocol;
  if (extension === null) return [];
  const { of, addedCards, hiddenCards } = extension;
  const titleOf = (id: string) => library.exercises.get(id)?.title ?? id;
  return [
    section('own-changes', OWN_CHANGES.heading, [
      paragraph(changedLead(library.protocols.get(of)?.title ?? of, of === protocol.id)),
      ...(extension.values.length === 0 ? [] : [valueTable(extension, protocol)]),
      ...addedCards.map(({ slot, card }) =>
        paragraph(addedText(titleOf(card), stageAndSlot(protocol, slot) || pathText(slot))),
      ),
      ...(hiddenCards.length === 0 ? [] : [paragraph(leftOutText(hiddenCards.map(titleOf)))]),
    ]),
  ];
}

function valueTable({ values }: Extension, protocol: Protocol) {
  return table(
    OWN_CHANGES.caption,
    OWN_CHANGES.columns,
    values.map(({ path, shipped, value, mark, cite }) => [
      changedText(sentenceAt(protocolSchema, path) ?? pathText(path), stageAndSlot(protocol, path)),
      shipped === null ? OWN_CHANGES.none : String(shipped),
      String(value),
      mark === undefined ? OWN_CHANGES.none : MARK_WORDS[mark],
      cite ?? OWN_CHANGES.none,
    ]),
  );
}
