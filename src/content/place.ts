/** Where an author finds what a refusal of another room speaks of. */
import type { Refusal } from '../units/refusal.ts';
import { splitFile, type FrontMatter } from './frontMatter.ts';
import type { Kind } from './kind.ts';
import { placeInValue, placeOfValue } from './locate.ts';
import { pathText, type Path } from './path.ts';
import { errorAt, PROBLEM_CODES, type Place, type Problem, type ProblemCode } from './problem.ts';
import { placeInProse } from './prose/placeInProse.ts';
import { decode, type SourceFile } from './source.ts';
import { topOf } from './sourceText.ts';

/**
 * The place of a path in the file of that kind and id (for the clinic any id): in its front matter, or in its body when
 * the path begins with `body`, as in `['body', 0, 'blocks', 1]`. Where the path is not written, of the nearest group
 * around it. With an offset, of that character of the text at the path. Null when there is no such file.
 */
export type PlaceOf = (kind: Kind, id: string, path: Path, offset?: number) => Place | null;

/** `fileOf` names the file of a kind and id, `frontOf` its head where that is at hand; else the file is read again. */
export function placesIn(
  fileOf: (kind: Kind, id: string) => SourceFile | null,
  frontOf: (kind: Kind, id: string) => FrontMatter | null = () => null,
): PlaceOf {
  return (kind, id, path, offset) => {
    const file = fileOf(kind, id);
    if (file === null) return null;
    const front = frontOf(kind, id) ?? readFront(file);
    return front === null ? topOf(file.file) : placeInFile(front, path, offset);
  };
}

/** The first place that any of them knows: a build asks its library, then its consults. */
export function firstPlace(...places: readonly PlaceOf[]): PlaceOf {
  return (kind, id, path, offset) => {
    for (const placeOf of places) {
      const place = placeOf(kind, id, path, offset);
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

function readFront(file: SourceFile): FrontMatter | null {
  const { source } = decode(file);
  return source === null ? null : splitFile(source).front;
}

function placeInFile(front: FrontMatter, path: Path, offset: number | undefined): Place {
  if (path[0] === 'body') {
    const { source, bodyOffset } = front.elsewhere?.find((one) => one.path[0] === 'body')?.front ?? front;
    return placeInProse(source, bodyOffset, path.slice(1), offset ?? 0);
  }
  return offset === undefined ? placeOfValue(front, path) : placeInValue(front, path, offset);
}

function isProblemCode(code: string): code is ProblemCode {
  return (PROBLEM_CODES as readonly string[]).includes(code);
}
