/** Every house number of a protocol with its mark, in the sentences of the schema. */
import type { Messages } from '../messages/messages.ts';
import type { Protocol } from '../content/library.ts';
import { protocolSchema } from '../content/schema/protocol.ts';
import { sentenceAt } from '../content/schema/schemaAt.ts';
import { houseNumbers, NUMBER_GROUPS } from '../content/houseNumbers.ts';

import type { Table } from '../messages/shapes.ts';

/** A table for each group. */
export function settingTables(say: Messages, protocol: Protocol): readonly Table[] {
  return NUMBER_GROUPS.map((group) => ({
    caption: sentence(say, [group]),
    columns: say.SETTING_COLUMNS,
    rows: houseNumbers(protocol, group).map(({ name, value, mark, cite }) => [
      sentence(say, [group, name]),
      say.settingValue(value),
      say.MARK_WORDS[mark],
      cite ?? '–',
    ]),
  }));
}

function sentence(say: Messages, path: readonly string[]): string {
  return sentenceAt(protocolSchema, path) ?? say.words(path.at(-1) ?? '');
}
