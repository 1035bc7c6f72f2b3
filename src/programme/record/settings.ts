/** Every house number of the protocol with its mark, for the record. */
import { numberedStages } from '../../content/keepStage.ts';
import type { Protocol, Stage } from '../../content/library.ts';
import type { Table } from '../programme.ts';

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
] as const;

/** Caps of every stage, then the settings by group, each with its mark and source. */
export function settingsTable(protocol: Protocol): Table {
  return {
    caption: 'House numbers of the protocol',
    columns: ['Setting', 'Value', 'Mark', 'Source'],
    rows: [
      ...protocol.stages.flatMap((stage, index) => capRows(stage, stageKey(protocol, index))),
      ...GROUPS.flatMap((group) =>
        Object.entries(protocol[group] as Record<string, unknown>)
          .filter((entry): entry is [string, Setting] => isSetting(entry[1]))
          .map(([name, { value, mark, cite }]) => [`${group}.${name}`, String(value), mark, cite ?? '-']),
      ),
      ...listedRows(protocol),
    ],
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

// The caps of a stage carry no mark of their own: all are the house's choice (house rules 3).
function capRows(
  { caps, opensToDeg, supportMargin, maxExercises, hoursBetween }: Stage,
  key: string,
): string[][] {
  const values = { ...caps, opensToDeg: opensToDeg ?? null, supportMargin, maxExercises, hoursBetween };
  return Object.entries(values).map(([name, value]) => [
    `${key}.${name}`,
    value === null ? 'none' : String(value),
    'choice',
    '-',
  ]);
}

function stageKey({ stages }: Protocol, index: number): string {
  return index < numberedStages(stages).length ? `stage ${index + 1}` : 'keep';
}

// Numbers that come as a span or as a table.
function listedRows({ flare, runningRules }: Protocol): string[][] {
  const { from, to } = flare.holdsOnlyDays;
  return [
    ['flare.holdsOnlyDays', `${from} to ${to}`, flare.mark, '-'],
    ...runningRules.raceEasyDays.map((row) => [
      `runningRules.raceEasyDays, up to ${row.upToKm} km`,
      `${row.from} to ${row.to}`,
      row.mark,
      '-',
    ]),
  ];
}
