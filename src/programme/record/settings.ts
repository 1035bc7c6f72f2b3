/** Every house number of the protocol with its mark, for the record. */
import type { Protocol } from '../../content/library.ts';
import type { Table } from '../programme.ts';

const GROUPS = [
  'painRule',
  'morningCheck',
  'easeBack',
  'missedDays',
  'goingOn',
  'limits',
  'week',
  'runningRules',
  'sittingRules',
] as const;

export function settingsTable(protocol: Protocol): Table {
  return {
    caption: 'House numbers of the protocol',
    columns: ['Setting', 'Value', 'Mark', 'Source'],
    rows: GROUPS.flatMap((group) =>
      Object.entries(protocol[group] as Record<string, unknown>)
        .filter((entry): entry is [string, Setting] => isSetting(entry[1]))
        .map(([name, { value, mark, cite }]) => [`${group}.${name}`, String(value), mark, cite ?? '-']),
    ),
  };
}

interface Setting {
  readonly value: number | string;
  readonly mark: string;
  readonly cite?: string;
}

function isSetting(value: unknown): value is Setting {
  return typeof value === 'object' && value !== null && 'value' in value && 'mark' in value;
}
