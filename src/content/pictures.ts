/** Photos beside exercise cards: every one that is named must be there, and every one that is there must be named. */
import { nameOf } from './fileName.ts';
import type { Placed } from './libraryReferences.ts';
import { placeOfValue, writtenAt } from './locate.ts';
import { nearest } from './nearest.ts';
import { pathText } from './path.ts';
import { errorAt, type Problem } from './problem.ts';
import type { ExerciseFrontMatter } from './schema/exercise.ts';
import type { SourceFile } from './source.ts';
import { topOf } from './sourceText.ts';

/** A photo's name as a file of the library: it stands beside the card. */
export function photoFile(cardFile: string, photo: string): string {
  return `${cardFile.slice(0, cardFile.lastIndexOf('/') + 1)}${photo}`;
}

/**
 * `pictures`: those among the cards, `own`: those of them that must be named. Whether they can be shown is seen when they
 * are opened.
 */
export function pictureProblems(
  cards: readonly Placed<ExerciseFrontMatter>[],
  pictures: readonly SourceFile[],
  own: readonly SourceFile[],
): Problem[] {
  const named = new Set(
    cards.flatMap(({ front, value }) =>
      (value.photos ?? []).map(({ file }) => photoFile(front.source.file, file)),
    ),
  );
  const unnamed = own.filter(({ file }) => !named.has(file));
  return [...cards.flatMap((card) => missingOf(card, pictures)), ...unnamed.map(unnamedProblem)];
}

function missingOf(
  { front, value }: Placed<ExerciseFrontMatter>,
  pictures: readonly SourceFile[],
): Problem[] {
  return (value.photos ?? []).flatMap(({ file }, index) => {
    const path = ['photos', index, 'file'];
    const wanted = photoFile(front.source.file, file);
    const there = pictures.find((picture) => picture.file === wanted);
    if (there?.link === 'no' || there?.link === 'inside') return [];
    const meant = nearest(
      file,
      pictures.map((picture) => nameOf(picture.file)),
    );
    const wrong = {
      path: pathText(path),
      found:
        there === undefined
          ? `${writtenAt(front, path)}, which is not there`
          : 'a link that leads out of the folder',
      expected: 'a picture beside the card',
      fix:
        there === undefined && meant !== null
          ? `write ${meant}`
          : `put ${file} beside the card, or take the photo out`,
    };
    return [errorAt(placeOfValue(front, path), there === undefined ? 'image' : 'link-out', wrong)];
  });
}

function unnamedProblem({ file }: SourceFile): Problem {
  return errorAt(topOf(file), 'wrong-file-name', {
    found: `a picture called ${nameOf(file)} that no card names`,
    expected: 'named by a card beside it',
    fix: 'name it under photos of its card, or move it out of this folder',
  });
}
