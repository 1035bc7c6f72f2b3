/** Races in a patient's words: what the plan does for one, and what speaks against one. */
import type { JudgedRace } from '../../week/race.ts';
import type { Part } from '../programme.ts';
import { dayAndYear, dayText, list, numberText, weekdayAndDay } from './plain.ts';

/** The protocol's sentence for everybody (house rules 11.7). */
const TOO_EARLY = 'This race comes before your tendon is ready for it; talk with us before you decide.';

export interface RaceWords {
  readonly races: readonly JudgedRace[];
  readonly reviewOn: string;
  readonly taperDays: number;
  readonly noHeavyDays: number;
}

/** A line for each race. */
export function raceParts({ races, ...words }: RaceWords): Part[] {
  return races.length === 0 ? [] : [list(races.map((race) => raceText(race, words)))];
}

function raceText(race: JudgedRace, words: Omit<RaceWords, 'races'>): string {
  return [
    `Race on ${weekdayAndDay(race.on)}, ${numberText(race.km)} km.`,
    ...againstTexts(race),
    ...(race.inPlan ? planTexts(race, words) : ['It is not in this plan.']),
  ].join(' ');
}

/** What speaks against it: said to the patient as well, with the date from which it would fit. */
function againstTexts({ fitsFrom, doubts, notes, inPlan }: JudgedRace): string[] {
  const noted = (code: string) => notes.some((note) => note.code === code);
  if (fitsFrom !== null) return [TOO_EARLY, `It would fit from ${dayAndYear(fitsFrom)}.`];
  if (noted('race-barred')) return ['There is no running for now; talk with us before you decide.'];
  if (doubts.includes('walk-run'))
    return ['You are not back to running without a break yet; talk with us before you decide.'];
  if (doubts.includes('irritable'))
    return ['Your tendon is easily stirred up just now; talk with us before you decide.'];
  if (doubts.includes('after-another'))
    return ['It comes in the easy days after another race; talk with us before you decide.'];
  return noted('race-beyond-longest') && inPlan
    ? ['It is longer than your longest run allows so far; talk with us before you decide.']
    : [];
}

function planTexts(race: JudgedRace, { taperDays, noHeavyDays }: Omit<RaceWords, 'races'>): string[] {
  return [
    race.decision === undefined
      ? 'Your plan makes room for it.'
      : 'We have decided on it together: your plan makes room for it.',
    `In the ${noHeavyDays} days before it there is nothing heavy and nothing fast, and in the ${taperDays} days before it about half the running.`,
    ...(race.easyUntil > race.on ? [`After it: easy days until ${dayText(race.easyUntil)}.`] : []),
  ];
}
