/** What an author reads of a doubt, by its rule, and of an entry that confirms nothing. */
import { stringify } from 'yaml';
import type { Doubt, DoubtRule } from './doubt.ts';
import { type Idle, wayText } from './confirmed.ts';
import { EXPECTED } from './expectedWords.ts';

export interface DoubtWords {
  readonly found: string;
  readonly expected: string;
  readonly fix: string;
}

/** `found` reads after "is", `expected` after "must be". */
export function doubtWords(doubt: Doubt): DoubtWords {
  return {
    found: String(doubt.value),
    expected: `${isWrongWord(doubt) ? '' : 'plausible: '}${EXPECTED[doubt.rule](doubt)}`,
    fix: `${CURE[doubt.rule] ?? 'mend it'}; or, if it is right, ${confirmText(doubt)}`,
  };
}

/** Of an entry under `confirmed`; `key`: which of its keys is wrong. */
export function idleWords({ entry, stands }: Idle): DoubtWords & { readonly key: 'path' | 'value' } {
  if (stands !== null)
    return {
      key: 'value',
      found: String(entry.value),
      expected: `${stands}, the value at ${entry.path}`,
      fix: `check ${entry.path} again, then write the value that stands there`,
    };
  return {
    key: 'path',
    found: entry.path,
    expected: 'where a value stands that is not plausible; nothing there needs confirming',
    fix: 'take the entry out, or mend its path',
  };
}

/** Of an activity that the protocol's table does not hold: a wrong word, but one that may be right. */
export function isWrongWord({ rule }: Doubt): boolean {
  return rule === 'unknownActivity';
}

function confirmText({ path, value }: Doubt): string {
  const entry = { path: wayText(path), value, reason: '…' };
  const text = stringify(entry, { collectionStyle: 'flow', lineWidth: 0 }).trim();
  return `check it and add to confirmed: - ${text.replace('reason: …', 'reason: how it was checked')}`;
}

const CURE: Partial<Record<DoubtRule, string>> = {
  unknownActivity: 'write one of these, or take the line out',
  otherSide: 'mend it, or open the right person’s file',
  otherCountry: 'mend it, or open the right person’s file',
  testCount: 'mend it, or the id of the test',
  easierHurtsMore: 'mend it, or the id of the test',
  longestLogged: 'mend it, or write the run into the log',
  weekAboveLongest: 'mend it, or write running.runsPerWeek',
  ageSince: 'mend it, or open the right person’s file',
  heightSince: 'mend it, or open the right person’s file',
  massSince: 'mend it, or open the right person’s file',
  testTwice: 'write side for each leg, or keep the entry that is right',
  setTwice: 'keep the set that is right',
  painApart: 'mend the one that is wrong',
  painlessAngle: 'write the pain that began at this angle, or take the angle out',
  sideOfArea: 'mend it, or the words of painArea',
  sideUntested: 'mend it, or the side of the tests',
  soundLegHurts: 'mend it, or write which leg it was; where both hurt, side: both',
  weeksOff: 'write weeklyKm: 0 and the longest run of the last 30 days, or mend the weeks',
  keepsNothing: 'write none, or walk-run',
  underAge: 'mend it, or answer no to suddenOnsetUnder18',
  scoreTwice: 'mend the day, or keep one of the two',
  overrideMinutes: 'write less, or give minutesPerDay the time',
};
