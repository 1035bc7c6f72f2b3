/** Every house number of the protocol with its mark, for the record. */
import { numberedStages } from '../../../../content/keepStage.ts';
import type { Clinic, Protocol, Stage } from '../../../../content/library.ts';
import { markedNumbers, NUMBER_GROUPS } from '../../../../content/houseNumbers.ts';
import type { Table } from '../../../shapes.ts';
import type { OwnValue } from '../../../../content/extending/extension.ts';
import { pathText, type Path } from '../../../../content/path.ts';

/** Caps of every stage, then the settings by group, those of the muscles last, each with its mark and source. */
export function settingsTable(protocol: Protocol, { muscles }: Clinic): Table {
  return {
    caption: 'House numbers of the protocol and of the clinic',
    columns: ['Setting', 'Value', 'Mark', 'Source'],
    rows: [
      ...protocol.stages.flatMap((stage, index) => capRows(stage, index, protocol)),
      ...NUMBER_GROUPS.flatMap((group) => numberRows(group, protocol[group])),
      ...listedRows(protocol),
      ...numberRows('muscles', muscles),
    ],
  };
}

function numberRows(group: string, numbers: object): string[][] {
  return markedNumbers(numbers).map(({ name, value, mark, cite }) => [
    `${group}.${name}`,
    String(value),
    mark,
    cite ?? '-',
  ]);
}

// The caps of a stage carry no mark of their own: all are the house's choice (house rules 3), but for what a clinic changed.
function capRows(stage: Stage, index: number, protocol: Protocol): string[][] {
  const { caps, opensToDeg, supportMargin, maxExercises, hoursBetween } = stage;
  const { angle, angleDeg, ...others } = caps;
  const capValues = { [`${angle}Deg`]: angleDeg, ...others };
  const values = {
    ...capValues,
    opensToDeg: opensToDeg ?? null,
    supportMargin,
    maxExercises,
    hoursBetween,
  };
  return Object.entries(values).map(([name, value]) => {
    const own = ownValueAt(protocol, ['stages', index, ...(name in capValues ? ['caps'] : []), name]);
    return [
      `${stageKey(protocol, index)}.${name}`,
      value === null ? 'none' : String(value),
      own?.mark ?? 'choice',
      own?.cite ?? '-',
    ];
  });
}

function ownValueAt({ extension }: Protocol, path: Path): OwnValue | undefined {
  return extension?.values.find((one) => pathText(one.path) === pathText(path));
}

function stageKey({ stages }: Protocol, index: number): string {
  return index < numberedStages(stages).length ? `stage ${index + 1}` : 'keep going';
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
