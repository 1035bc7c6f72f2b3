/** From a path in a file of the library to a Problem at its line and column. */
import { type Path, pathText } from '../content/path.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Mending } from '../messages/shapes.ts';
import { errorAt, warningAt, type Problem, type ProblemCode } from '../content/problem.ts';

export interface Spot {
  readonly kind: Parameters<PlaceOf>[0];
  readonly id: string;
  readonly path: Path;
  /** Of a character in the text at the path; left out for the value as a whole. */
  readonly offset?: number;
}

/** A warning at a spot of a file that content has read. */
export function warn(placeOf: PlaceOf, spot: Spot, code: ProblemCode, words: Mending): Problem {
  return warningAt(placeOfSpot(placeOf, spot), code, { path: keyText(spot), ...words });
}

/** An error at a spot, where a number of the leaflet or the site would be wrong. */
export function refuse(placeOf: PlaceOf, spot: Spot, code: ProblemCode, words: Mending): Problem {
  return errorAt(placeOfSpot(placeOf, spot), code, { path: keyText(spot), ...words });
}

// A body has headings, no keys.
function keyText({ path }: Spot): string {
  return path[0] === 'body' ? '' : pathText(path);
}

function placeOfSpot(placeOf: PlaceOf, { kind, id, path, offset }: Spot) {
  const place = placeOf(kind, id, path, offset);
  if (place === null) throw new Error(`${kind} ${id}: a card of the library must have its file`);
  return place;
}
