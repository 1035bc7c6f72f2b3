/** Where an author finds what a refusal of another room speaks of. */
import type { Refusal } from '../units/refusal.ts';
import { splitFile } from './frontMatter.ts';
import type { Kind } from './kind.ts';
import { placeOfValue } from './locate.ts';
import { pathText, type Path } from './path.ts';
import { errorAt, PROBLEM_CODES, type Place, type Problem, type ProblemCode } from './problem.ts';
import { decode, type SourceFile } from './source.ts';
import { topOf } from './sourceText.ts';

/**
 * The place of a path in the front matter of the file of that kind and id (for the clinic any id); where the path is
 * not written, of the nearest group around it. Null when there is no such file.
 */
export type PlaceOf = (kind: Kind, id: string, path: Path) => Place | null;

/** `fileOf` names the file of a kind and id. It is read again at each question: questions are few, files many. */
export function placesIn(fileOf: (kind: Kind, id: string) => SourceFile | null): PlaceOf {
  return (kind, id, path) => {
    const file = fileOf(kind, id);
    return file === null ? null : placeInFile(file, path);
  };
}

/** The first place that any of them knows: a build asks its library, then its consults. */
export function firstPlace(...places: readonly PlaceOf[]): PlaceOf {
  return (kind, id, path) => {
    for (const placeOf of places) {
      const place = placeOf(kind, id, path);
      if (place !== null) return place;
    }
    return null;
  };
}

/** A refusal as a Problem at its place. Throws when it has none or its code is not of the list: that is our defect. */
export function problemOf(refusal: Refusal, placeOf: PlaceOf): Problem {
  const { code, kind, id, path, found, expected, fix } = refusal;
  const place = placeOf(kind, id, path);
  if (place === null) throw new Error(`a refusal must have a place; there is no ${kind} ${id}`);
  if (!isProblemCode(code)) throw new Error(`a refusal must have a code of the list; found ${code}`);
  return errorAt(place, code, { path: pathText(path), found, expected, fix });
}

function placeInFile(file: SourceFile, path: Path): Place {
  const { source } = decode(file);
  const front = source === null ? null : splitFile(source).front;
  return front === null ? topOf(file.file) : placeOfValue(front, path);
}

function isProblemCode(code: string): code is ProblemCode {
  return (PROBLEM_CODES as readonly string[]).includes(code);
}
