/** One exercise card of a library and the clinic's muscles, whatever else lies in it. */
import { exerciseCard } from '../../content/exercise.ts';
import { CLINIC_FILE, FOLDERS } from '../../content/kind.ts';
import type { Clinic, ExerciseCard } from '../../content/library.ts';
import type { Problem } from '../../content/problem.ts';
import { readFolder as readKind } from '../../content/readFolder.ts';
import { readFile } from '../../content/readFile.ts';
import { HOUSE_MUSCLES } from '../../content/schema/clinic.ts';
import type { SourceFile } from '../../content/source.ts';
import { readLayers, upperFiles } from '../io/layers.ts';

export interface CardReading {
  /** Null when there is none of the id, or it has Problems. */
  readonly card: ExerciseCard | null;
  /** What the clinic file sets about muscles, the house's own where there is no such file; null when it has Problems. */
  readonly muscles: Clinic['muscles'] | null;
  /** Of the card's own file and the clinic file. */
  readonly problems: readonly Problem[];
  readonly files: readonly SourceFile[];
  /** Ids of all cards in the folder. */
  readonly known: readonly string[];
}

/** The card of an id. What it says of other cards is not followed, and a clinic file need not be there, but must be right. */
export function readCard(content: string, id: string): CardReading {
  const files = upperFiles(readLayers(content)).filter(
    ({ file }) => file === CLINIC_FILE || file.startsWith(`${FOLDERS.exercise}/`),
  );
  const reading = readKind(files, 'exercise');
  const clinic = musclesIn(files);
  const own = reading.files.get(id)?.file;
  const problems = reading.problems.filter(({ file }) => file === own);
  const found = reading.cards.find((one) => one.id === id);
  return {
    card: found === undefined || problems.length > 0 ? null : exerciseCard(id, found.value, found.body),
    muscles: clinic.muscles,
    problems: [...problems, ...clinic.problems],
    files,
    known: [...reading.files.keys()],
  };
}

function musclesIn(files: readonly SourceFile[]): Pick<CardReading, 'muscles' | 'problems'> {
  const file = files.find((one) => one.file === CLINIC_FILE);
  if (file === undefined) return { muscles: HOUSE_MUSCLES, problems: [] };
  const { value, problems } = readFile(file, 'clinic');
  return { muscles: problems.length > 0 ? null : (value?.muscles ?? null), problems };
}
