/** What changed since the last leaflet, and why, in two or three sentences the patient recognises. */
import type { Move, Review } from '../../../review/terms.ts';
import { countText, listText, numberText } from '../plain.ts';

/** Exercises whose numbers went up, or down, by title. */
export interface ChangedWork {
  readonly more: readonly string[];
  readonly less: readonly string[];
  readonly fresh: readonly string[];
}

/** What the leaflet does, which may be less than the log alone would lead to. */
export function changedTexts(review: Review, now: Review['before'], work: ChangedWork): string[] {
  return [didText(review), `So: ${soText(directionOf(review, now), review.decision)}${newsText(work)}`];
}

function didText({ counts, decision }: Review): string {
  const { sessionsDone, sessionsPlanned, worstMorning, lastMorning } = counts;
  const done =
    sessionsDone === 0
      ? 'No session is written down'
      : `You did ${numberText(sessionsDone)} of ${countText(sessionsPlanned, 'session')}`;
  if (worstMorning === null) return `${done}, and no mornings are written down.`;
  if (decision === 'moveOn' || decision === 'stay')
    return `${done}, and your mornings stayed at ${numberText(worstMorning)} or less.`;
  return `${done}. Your worst morning was ${numberText(worstMorning)}, and the last one ${numberText(lastMorning ?? 0)}.`;
}

type Direction = 'on' | 'same' | 'back';

function directionOf({ before }: Review, now: Review['before']): Direction {
  const rank = ({ stage, step }: Review['before']) => (stage === 'keepGoing' ? 100 : stage) * 100 + step;
  return rank(now) > rank(before) ? 'on' : rank(now) < rank(before) ? 'back' : 'same';
}

function soText(direction: Direction, decision: Move): string {
  if (direction === 'on') return 'you go on.';
  if (direction === 'same')
    return decision === 'easeBack' || decision === 'startAgain' || decision === 'beSeen'
      ? 'you stay here for now, and take the easier numbers where they are given.'
      : 'the same again for now, until it sits well.';
  return 'one step back for a while. Ups and downs are part of the way, not a new start.';
}

function newsText({ more, less, fresh }: ChangedWork): string {
  const parts = [
    ...(fresh.length === 0 ? [] : [`New: ${listText(fresh)}.`]),
    ...(more.length === 0 ? [] : [`A little more: ${namedText(more)}.`]),
    ...(less.length === 0 ? [] : [`A little less: ${namedText(less)}.`]),
  ];
  return parts.length === 0 ? '' : ` ${parts.join(' ')}`;
}

// Their numbers stand below; a long row of names is read by nobody.
const MOST_NAMES = 3;

function namedText(titles: readonly string[]): string {
  return titles.length <= MOST_NAMES ? listText(titles) : `${numberText(titles.length)} exercises`;
}
