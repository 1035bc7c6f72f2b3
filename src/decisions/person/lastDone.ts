/** What a person did last: the present step of the revision before, read back from its cells. */
import type { Tempo } from '../../dosing/dose.ts';
import { JOINT_ANGLES } from '../../mechanics/jointAngle.ts';
import type { CellName } from '../terms/cell.ts';
import type { Earlier, EarlierExercise } from '../terms/earlier.ts';
import type { LastDone } from '../terms/lastDone.ts';

/** Every exercise of the present step; none without a revision before, or when it followed another protocol. */
export function lastDoneIn(earlier: Earlier | null, protocol: string): readonly LastDone[] {
  if (earlier === null || earlier.protocol !== protocol) return [];
  return earlier.exercises.map((one) => doneOf(one, earlier));
}

function doneOf({ card, values }: EarlierExercise, { revision, stage }: Earlier): LastDone {
  return {
    card,
    revision,
    stage,
    sets: numberIn(values, 'sets') ?? 1,
    repetitions: numberIn(values, 'repetitions'),
    holdSeconds: numberIn(values, 'holdSeconds'),
    tempo: tempoIn(values),
    reserve: numberIn(values, 'reserve'),
    loadKg: numberIn(values, 'loadKg'),
    rangeDeg:
      JOINT_ANGLES.map((angle) => numberIn(values, `${angle}Deg`)).find((deg) => deg !== null) ?? null,
    timesPerDay: numberIn(values, 'timesPerDay') ?? 1,
  };
}

function numberIn(values: EarlierExercise['values'], name: CellName): number | null {
  const value = values[name];
  return typeof value === 'number' ? value : null;
}

// Written as `3-0-3`; a clinician's own tempo may be words, which say no seconds.
function tempoIn({ tempo: value }: EarlierExercise['values']): Tempo | null {
  const match = typeof value === 'string' ? /^(\d+)-(\d+)-(\d+)$/.exec(value) : null;
  if (match === null) return null;
  const [goSeconds, holdSeconds, backSeconds] = match.slice(1).map(Number) as [number, number, number];
  return { goSeconds, holdSeconds, backSeconds };
}
