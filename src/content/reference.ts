/** Ids that one file names and another must answer to. */
import type { FrontMatter } from './frontMatter.ts';
import { placeOfValue, writtenAt } from './locate.ts';
import { nearest } from './nearest.ts';
import { pathText, type Path } from './path.ts';
import { errorAt, type Problem } from './problem.ts';

/**
 * A Problem when no card has the id at the path; none when one has. `folder` is where such cards stand, `after` what
 * the author wrote behind the id, `wordsOf` what a card is: an id a letter away may be another exercise.
 */
export function checkCard(
  front: FrontMatter,
  path: Path,
  id: string,
  known: readonly string[],
  {
    folder = 'exercises',
    after = '',
    wordsOf = () => null,
  }: {
    readonly folder?: string;
    readonly after?: string;
    readonly wordsOf?: (id: string) => string | null;
  } = {},
): Problem[] {
  if (known.includes(id)) return [];
  const meant = nearest(id, known);
  const words = meant === null ? null : wordsOf(meant);
  return [
    errorAt(placeOfValue(front, path), 'no-such-card', {
      path: pathText(path),
      found: writtenAt(front, path),
      expected: `the id of a file in ${folder}/`,
      fix:
        meant === null
          ? `add ${folder}/${id}.md, or name one that is there`
          : `write ${meant}${after}${words === null ? '' : ` (${words}), if that is meant`}`,
    }),
  ];
}
