/** Why it began, from what changed in the weeks before: two or three sentences, and never a fault of anybody's. */
import type { CHANGES } from '../../../content/schema/consult.ts';
import { capital, listText } from '../plain.ts';

type Change = (typeof CHANGES)[number];

/** More work for the tendon, more pressing, a break, or less room to recover; each kind has its own sentence. */
type Kind = 'load' | 'press' | 'break' | 'recovery';

const CHANGE: Readonly<Record<Exclude<Change, 'nothing-known'>, readonly [Kind, string]>> = {
  hills: ['load', 'more hills'],
  speed: ['load', 'faster running'],
  distance: ['load', 'more distance'],
  'new-class': ['load', 'a new class'],
  'new-shoes': ['load', 'new shoes'],
  'heavy-lifting': ['load', 'heavy lifting'],
  stretching: ['press', 'more stretching'],
  'long-drives': ['press', 'long drives'],
  'more-sitting': ['press', 'more sitting'],
  break: ['break', 'a break'],
  'poor-sleep': ['recovery', 'poor sleep'],
  stress: ['recovery', 'stress'],
};

const NOTHING_RECORDED =
  'What changed before it began has not been written down. Tell us if something comes to mind.';

const MOST_SENTENCES = 3;

/** @example beganTexts(['hills']) // => ['In the weeks before it began, one thing was new: more hills. The tendon was not used to that yet.'] */
export function beganTexts(changed: readonly Change[]): string[] {
  const known = changed.flatMap((change) => (change === 'nothing-known' ? [] : [CHANGE[change]]));
  // Nothing recorded is not the same as nothing found.
  if (changed.length === 0) return [NOTHING_RECORDED];
  if (known.length === 0) return ['No one thing started it, as far as we know; that is common.'];
  const of = (kind: Kind) => known.filter(([one]) => one === kind).map(([, words]) => words);
  return [loadText(of('load')), pressText(of('press')), breakText(of('break')), recoveryText(of('recovery'))]
    .filter((text) => text !== '')
    .slice(0, MOST_SENTENCES);
}

/** The same where it began in one moment: what was new beside it, and no story of too much work. @example besideTexts(['hills']) // => ['In the weeks before it, one thing was new: more hills. Nobody can say whether it had a part in it.'] */
export function besideTexts(changed: readonly Change[]): string[] {
  if (changed.length === 0) return [NOTHING_RECORDED];
  const words = changed.flatMap((change) => (change === 'nothing-known' ? [] : [CHANGE[change][1]]));
  if (words.length === 0) return ['As far as we know, nothing was new in the weeks before it.'];
  return words.length === 1
    ? [`In the weeks before it, one thing was new: ${words[0]}. Nobody can say whether it had a part in it.`]
    : [
        `In the weeks before it, these were new: ${listText(words)}. Nobody can say whether they had a part in it.`,
      ];
}

function loadText(words: readonly string[]): string {
  if (words.length === 0) return '';
  return words.length === 1
    ? `In the weeks before it began, one thing was new: ${words[0]}. The tendon was not used to that yet.`
    : `In the weeks before it began, these were new: ${listText(words)}. Together that was more than the tendon was used to.`;
}

function pressText(words: readonly string[]): string {
  return words.length === 0
    ? ''
    : `${capital(listText(words))} pressed the tendon on the bone more than before.`;
}

function breakText(words: readonly string[]): string {
  return words.length === 0
    ? ''
    : 'After a break a tendon is used to less, so even the old amount was a jump.';
}

function recoveryText(words: readonly string[]): string {
  return words.length === 0 ? '' : `${capital(listText(words))} left less room to recover.`;
}
