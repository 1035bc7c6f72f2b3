/** Cards whose next review has passed. */
import { reviewOverdue } from '../messages/en/author/library.ts';
import type { LibraryFiles } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import type { IsoDate } from '../units/date.ts';
import { warn } from './fieldPlace.ts';

/** On its review day itself a card is not overdue. */
export function overdueReviews({ exercises }: LibraryFiles, onDay: IsoDate, placeOf: PlaceOf): Problem[] {
  return [...exercises.values()]
    .filter(({ nextReviewOn }) => nextReviewOn < onDay)
    .map(({ id, nextReviewOn }) =>
      warn(
        placeOf,
        { kind: 'exercise', id, path: ['nextReviewOn'] },
        'review-overdue',
        reviewOverdue(nextReviewOn, onDay),
      ),
    );
}
