/** What a screen item does, said at the desk beside each that is not answered no. */
import type { Effect } from '../../../decisions/screen/screen.ts';

export const EFFECT_WORDS: Readonly<Record<Effect, string>> = {
  emergency: 'no programme: emergency assessment now',
  block: 'no programme before it is assessed and cleared',
  noRunning: 'no running and no jumping',
  lightHolds: 'light holds at most, and only with a recorded decision',
  shortHolds: 'short holds, and nothing strained',
  under18: 'counts under 18: no programme before a picture and a decision',
};

export const ANSWER_WORDS = { no: 'No', yes: 'Yes', notAsked: 'Not asked' } as const;

export const ALL_NO = 'Asked, all no';

/** @example effectText('yes', 'no running') // => 'Yes: no running.' */
export function effectText(answer: string, effect: string): string {
  return answer === 'yes' ? `Yes: ${effect}.` : `Not asked, which acts like a yes: ${effect}.`;
}
