/** Letters a leaflet cannot be printed with, as Problems at the field they were written in. */
import { fieldOfLetter } from '../../content/fieldOfLetter.ts';
import { pathText } from '../../content/path.ts';
import type { Problem } from '../../content/problem.ts';
import type { PlaceOf } from '../../content/place.ts';
import type { SourceFile } from '../../content/source.ts';
import type { Refusal } from '../../units/refusal.ts';
import type { LetterRefusal } from './letters.ts';

/** What was read, and where what stands in it. */
export interface Read {
  readonly files: readonly SourceFile[];
  readonly placeOf: PlaceOf;
  readonly asProblem: (refusal: Refusal) => Problem;
}

/** A field that is printed in several sentences is told of once. */
export function letterProblems(refusals: readonly LetterRefusal[], read: Read): Problem[] {
  const problems = new Map<string, Problem>();
  for (const problem of refusals.map((refusal) => problemOf(refusal, read))) {
    const { file, line, column, path, found } = problem;
    // Without a field each printed text is a matter of its own.
    const key = [file, line, column, path === '' ? found : path].join(' ');
    if (!problems.has(key)) problems.set(key, problem);
  }
  return [...problems.values()];
}

function problemOf(refusal: LetterRefusal, { files, placeOf, asProblem }: Read): Problem {
  const { kind, id, letters, text } = refusal;
  const file = files.find((one) => one.file === placeOf(kind, id, [])?.file);
  const field = file === undefined ? null : fieldOfLetter(file, letters[0] ?? '', text);
  if (field === null) return asProblem(refusal);
  const place = placeOf(kind, id, field.path, field.offset);
  return { ...asProblem(refusal), ...place, path: pathText(field.path) };
}
