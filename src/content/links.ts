/** Links of the library's bodies to one another: each must lead to a card, a protocol, advice or the clinic's file. */
import { nameOf } from './fileName.ts';
import { CLINIC_FILE } from './kind.ts';
import { nearest } from './nearest.ts';
import { errorAt, type Problem } from './problem.ts';
import type { FileLink } from './prose/body.ts';

/** A Problem for every link to a file that is not among `files`, the ways to them from the top of the content folder. */
export function linkProblems(links: readonly FileLink[], files: readonly string[]): Problem[] {
  return links.flatMap(({ to, written, place }) => {
    if (to === CLINIC_FILE || files.includes(to)) return [];
    const meant = nearestFile(to, files);
    return [
      errorAt(place, 'link', {
        found: `a link to ${written}`,
        expected: 'the way to a card, a protocol or advice that is there',
        fix:
          meant === null
            ? 'write the way to such a file, or take the link out and leave its words'
            : `write the way to ${meant}`,
      }),
    ];
  });
}

// By names alone: the way to them is much the same for all.
function nearestFile(to: string, files: readonly string[]): string | null {
  const name = nearest(nameOf(to), files.map(nameOf));
  return files.find((file) => nameOf(file) === name) ?? null;
}
