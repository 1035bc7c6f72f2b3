/** Every house number of a protocol with its mark, in the sentences of the schema. */
import type { Protocol } from '../content/library.ts';
import { protocolSchema } from '../content/schema/protocol.ts';
import { sentenceAt } from '../content/schema/schemaAt.ts';
import { houseNumbers, NUMBER_GROUPS } from '../content/houseNumbers.ts';
import { MARK_WORDS } from '../messages/en/catalogue/library.ts';
import { SETTING_COLUMNS, settingValue } from '../messages/en/catalogue/protocol.ts';
import { words } from '../messages/en/catalogue/camelCase.ts';
import type { Table } from '../messages/shapes.ts';

/** A table for each group. */
export function settingTables(protocol: Protocol): readonly Table[] {
  return NUMBER_GROUPS.map((group) => ({
    caption: sentence([group]),
    columns: SETTING_COLUMNS,
    rows: houseNumbers(protocol, group).map(({ name, value, mark, cite }) => [
      sentence([group, name]),
      settingValue(value),
      MARK_WORDS[mark],
      cite ?? '–',
    ]),
  }));
}

function sentence(path: readonly string[]): string {
  return sentenceAt(protocolSchema, path) ?? words(path.at(-1) ?? '');
}
