/** Short ways to what the form asks. */

export const SHORT_WAYS = 'Short ways';
export const SEEN_TODAY = 'Seen today, begins tomorrow';
export const HOMES_TITLE = 'Homes to start from';
export const MINUTES_TITLE = 'Minutes to choose from';
export const HABITS_TITLE = 'Ways of running to start from';
export const FLAT_AND_EASY = 'Asked: flat and easy only, no hills, no speed';
export const TRIED_TITLE = 'Tests of today that were tried with a weight';
export const FOUR_WEEKS = 'Last four weeks, km: from all four follow the usual week and the longest run';
export const WEEK_SHORT = 'week';
export const LONGEST_SHORT = 'longest';

/** @example reviewIn(1) // => 'Review in 1 week' */
export function reviewIn(weeks: number): string {
  return `Review in ${weeks} ${weeks === 1 ? 'week' : 'weeks'}`;
}

/** @example seenBy('R. Sample') // => 'Seen by R. Sample' */
export function seenBy(clinician: string): string {
  return `Seen by ${clinician}`;
}

/** @example minutesText(30) // => '30 minutes' */
export function minutesText(minutes: number): string {
  return `${minutes} minutes`;
}

/** @example kilometresOf(1) // => 'Kilometres 2 weeks ago' */
export function kilometresOf(weeksAgo: number): string {
  return weeksAgo === 0 ? 'Kilometres last week' : `Kilometres ${weeksAgo + 1} weeks ago`;
}

/** @example longestOf(1) // => 'Longest run 2 weeks ago' */
export function longestOf(weeksAgo: number): string {
  return weeksAgo === 0 ? 'Longest run last week' : `Longest run ${weeksAgo + 1} weeks ago`;
}

/** Homes as they often are. */
export const HOME_NAMES = {
  nothing: 'Nothing at all',
  household: 'Rucksack, bottles, sofa, stairs',
  dumbbells: 'A pair of dumbbells as well',
  bar: 'A bar with plates as well',
} as const;
