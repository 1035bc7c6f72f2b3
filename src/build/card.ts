/** One exercise card of a library, whatever else lies in it. */
import { exerciseCard } from '../content/exercise.ts';
import { FOLDERS } from '../content/kind.ts';
import type { ExerciseCard } from '../content/library.ts';
import type { Problem } from '../content/problem.ts';
import { readFolder as readKind } from '../content/readFolder.ts';
import type { SourceFile } from '../content/source.ts';
import { readLayers, upperFiles } from './layers.ts';

export interface CardReading {
  /** Null when there is none of the id, or it has Problems. */
  readonly card: ExerciseCard | null;
  /** Of its own file alone. */
  readonly problems: readonly Problem[];
  readonly files: readonly SourceFile[];
  /** Ids of all cards in the folder. */
  readonly known: readonly string[];
}

/** The card of an id. What it says of other cards is not followed, and a clinic file need not be there. */
export function readCard(content: string, id: string): CardReading {
  const files = upperFiles(readLayers(content)).filter(({ file }) => file.startsWith(`${FOLDERS.exercise}/`));
  const reading = readKind(files, 'exercise');
  const own = reading.files.get(id)?.file;
  const problems = reading.problems.filter(({ file }) => file === own);
  const found = reading.cards.find((one) => one.id === id);
  return {
    card: found === undefined || problems.length > 0 ? null : exerciseCard(id, found.value, found.body),
    problems,
    files,
    known: [...reading.files.keys()],
  };
}
