/** What a person did last: the present step of the revision before, read back from its cells. */
import type { Tempo } from '../dosing/dose.ts';
import { angleCellIn } from './cells/angleCell.ts';
import type { Cell, CellName, Prescription, Programme, StageChoice } from './programme.ts';

export interface LastDone {
  readonly card: string;
  readonly revision: number;
  readonly stage: StageChoice['chosen'];
  readonly sets: number;
  /** Exactly one of the two is a number. */
  readonly repetitions: number | null;
  readonly holdSeconds: number | null;
  /** Null where the exercise has no tempo. */
  readonly tempo: Tempo | null;
  readonly reserve: number | null;
  /** Null where it was felt for. */
  readonly loadKg: number | null;
  readonly rangeDeg: number | null;
  readonly timesPerDay: number;
}

/** Every exercise of the present step; none without a revision before, or when it followed another protocol. */
export function lastDoneIn(previous: Programme | null, protocol: string): readonly LastDone[] {
  if (previous === null || previous.record.versions.protocol !== protocol) return [];
  const present = previous.steps.find((step) => step.present);
  return (present?.prescriptions ?? []).map((one) => doneOf(one, previous));
}

function doneOf({ card, cells }: Prescription, { revision, stage }: Programme): LastDone {
  return {
    card,
    revision,
    stage: stage.chosen,
    sets: numberIn(cells, 'sets') ?? 1,
    repetitions: numberIn(cells, 'repetitions'),
    holdSeconds: numberIn(cells, 'holdSeconds'),
    tempo: tempoIn(cells),
    reserve: numberIn(cells, 'reserve'),
    loadKg: numberIn(cells, 'loadKg'),
    rangeDeg: numberIn(cells, angleCellIn(cells)?.cell ?? 'hipFlexionDeg'),
    timesPerDay: numberIn(cells, 'timesPerDay') ?? 1,
  };
}

function valueIn(cells: readonly Cell[], name: CellName): Cell['value'] {
  return cells.find(({ cell }) => cell === name)?.value ?? null;
}

function numberIn(cells: readonly Cell[], name: CellName): number | null {
  const value = valueIn(cells, name);
  return typeof value === 'number' ? value : null;
}

// Written as `3-0-3`; a clinician's own tempo may be words, which say no seconds.
function tempoIn(cells: readonly Cell[]): Tempo | null {
  const value = valueIn(cells, 'tempo');
  const match = typeof value === 'string' ? /^(\d+)-(\d+)-(\d+)$/.exec(value) : null;
  if (match === null) return null;
  const [goSeconds, holdSeconds, backSeconds] = match.slice(1).map(Number) as [number, number, number];
  return { goSeconds, holdSeconds, backSeconds };
}
