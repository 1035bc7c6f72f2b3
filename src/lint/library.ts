/** Everything that `check` says of a library beyond what content refuses. */
import type { Library, LibraryFiles } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import { sortProblems, type Problem } from '../content/problem.ts';
import type { IsoDate } from '../units/date.ts';
import { bannedWords } from './bannedWords.ts';
import { weakEvidence } from './evidence.ts';
import { manyAtFirst } from './fewAtFirst.ts';
import { cardLength } from './length.ts';
import { longSentences } from './longSentence.ts';
import { misplacedNeighbours } from './neighbours.ts';
import { impossiblePoses } from './poses.ts';
import { leftOut } from './reach.ts';
import { readingGrade } from './readingGrade.ts';
import { overdueReviews } from './review.ts';
import { tradeWords } from './tradeWords.ts';
import { unusedCards } from './unused.ts';
import { wordsAgainstAngle } from './wordsAgainstAngle.ts';

/**
 * Warnings about wording, evidence and review dates as they stand on a day, and errors where a pose or a written number
 * is wrong; by place. `placeOf`: that of the reading the library came from.
 */
export function checkLibrary(library: Library, onDay: IsoDate, placeOf: PlaceOf): Problem[] {
  return sortProblems([
    ...checkShelves(library, onDay, placeOf),
    ...leftOut(library, placeOf),
    ...manyAtFirst(library, placeOf),
    ...misplacedNeighbours(library, placeOf),
    ...unusedCards(library, placeOf),
  ]);
}

/** What of that each file answers for alone, so that a broken one beside it hides nothing. */
export function checkShelves(shelves: LibraryFiles, onDay: IsoDate, placeOf: PlaceOf): Problem[] {
  return sortProblems([
    ...bannedWords(shelves, placeOf),
    ...cardLength(shelves, placeOf),
    ...impossiblePoses(shelves, placeOf),
    ...longSentences(shelves, placeOf),
    ...overdueReviews(shelves, onDay, placeOf),
    ...readingGrade(shelves, placeOf),
    ...tradeWords(shelves, placeOf),
    ...weakEvidence(shelves, placeOf),
    ...wordsAgainstAngle(shelves, placeOf),
  ]);
}
