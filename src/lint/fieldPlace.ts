/** From a path in a file of the library to a Problem at its line and column. */
import { type Path, pathText } from '../content/path.ts';
import type { PlaceOf } from '../content/place.ts';
import type { CureWords } from '../messages/shapes.ts';
import { errorAt, warningAt, type Problem, type ProblemCode } from '../content/problem.ts';

export interface FieldPlace {
  readonly kind: Parameters<PlaceOf>[0];
  readonly id: string;
  readonly path: Path;
  /** Of a character in the text at the path; left out for the value as a whole. */
  readonly offset?: number;
}

/** A warning at a field of a file that content has read. */
export function warn(placeOf: PlaceOf, field: FieldPlace, code: ProblemCode, words: CureWords): Problem {
  return warningAt(placeInFile(placeOf, field), code, { path: keyText(field), ...words });
}

/** An error at a field, where a number of the leaflet or the site would be wrong. */
export function refuse(placeOf: PlaceOf, field: FieldPlace, code: ProblemCode, words: CureWords): Problem {
  return errorAt(placeInFile(placeOf, field), code, { path: keyText(field), ...words });
}

// A body has headings, no keys.
function keyText({ path }: FieldPlace): string {
  return path[0] === 'body' ? '' : pathText(path);
}

function placeInFile(placeOf: PlaceOf, { kind, id, path, offset }: FieldPlace) {
  const place = placeOf(kind, id, path, offset);
  if (place === null) throw new Error(`${kind} ${id}: a card of the library must have its file`);
  return place;
}
