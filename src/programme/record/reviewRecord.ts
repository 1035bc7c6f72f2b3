/** The review of the revision before, for the record. */
import type { Decided } from '../../decisions/decide.ts';
import {
  askText,
  decisionText,
  otherThanReviewText,
  reviewTable,
  weeksTable,
} from '../../messages/en/clinician/review.ts';
import type { Review } from '../../review/terms.ts';
import type { RecordedReview } from '../programme.ts';

export function reviewRecord(review: Review, { person, stage, step }: Decided): RecordedReview {
  const titleOf = (card: string) => person.library.exercises.get(card)?.title ?? card;
  const other = otherThanReviewText(review, { stage: stage.chosen, step });
  return {
    heading: `Review of revision ${review.revision}`,
    sentences: [decisionText(review), ...(other === null ? [] : [other])],
    table: reviewTable(review, titleOf),
    weeks: weeksTable(review, titleOf),
    asksHeading: 'To ask',
    asks: review.asks.map((one) => askText(one, titleOf)),
  };
}
