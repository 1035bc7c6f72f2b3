/** The review of the revision before, for the record. */
import type { Decided } from '../../decisions/decide.ts';
import type { Messages } from '../../messages/messages.ts';
import type { Review } from '../../review/terms.ts';
import type { RecordedReview } from '../programme.ts';

export function reviewRecord(
  say: Messages,
  review: Review,
  { person, stage, step }: Decided,
): RecordedReview {
  const titleOf = (card: string) => person.library.exercises.get(card)?.title ?? card;
  const other = say.otherThanReviewText(review, { stage: stage.chosen, step });
  return {
    heading: say.reviewHeading(review.revision),
    sentences: [say.decisionText(review), ...(other === null ? [] : [other])],
    table: say.reviewTable(review, titleOf),
    weeks: say.weeksTable(review, titleOf),
    asksHeading: say.ASKS_HEADING,
    asks: review.asks.map((one) => say.askText(one, titleOf)),
  };
}
