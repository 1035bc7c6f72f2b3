/** Every house number of a protocol with its mark, in the sentences of the schema. */
import type { Protocol } from '../../content/library.ts';
import { protocolSchema } from '../../content/schema/protocol.ts';
import { sentenceAt } from '../../content/schema/schemaAt.ts';
import type { Mark } from '../../units/source.ts';
import { MARK_WORDS } from '../phrases/library.ts';
import { SETTING_COLUMNS, settingValue } from '../phrases/protocol.ts';
import { words } from '../phrases/camelCase.ts';
import type { Table } from '../programme.ts';

/** Groups of house numbers, in the order of the schema. */
const GROUPS = [
  'painRule',
  'morningCheck',
  'easeBack',
  'flare',
  'missedDays',
  'goingOn',
  'discharge',
  'limits',
  'week',
  'runningRules',
  'sittingRules',
] as const satisfies readonly (keyof Protocol)[];

export function settingTables(protocol: Protocol): readonly Table[] {
  return GROUPS.map((group) => ({
    caption: sentence([group]),
    columns: SETTING_COLUMNS,
    rows: Object.entries(protocol[group] as Readonly<Record<string, unknown>>)
      .filter((entry): entry is [string, Setting] => isSetting(entry[1]))
      .map(([name, { value, mark, cite }]) => [
        sentence([group, name]),
        settingValue(value),
        MARK_WORDS[mark],
        cite ?? '–',
      ]),
  }));
}

interface Setting {
  readonly value: number | string;
  readonly mark: Mark;
  readonly cite?: string;
}

function isSetting(value: unknown): value is Setting {
  return typeof value === 'object' && value !== null && 'value' in value && 'mark' in value;
}

function sentence(path: readonly string[]): string {
  return sentenceAt(protocolSchema, path) ?? words(path.at(-1) ?? '');
}
