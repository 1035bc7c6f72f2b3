/** Races in a patient's words: what the plan does for one, and what speaks against one. */
import { addDays, daysBetween } from '../../../units/date.ts';
import type { JudgedRace } from '../../../scheduling/race.ts';
import { type Part, list } from '../../shapes.ts';
import { dayAndYear, dayText, numberText, weekdayAndDay } from '../plain.ts';

/** The protocol's sentence for everybody (house rules 11.7). */
const TOO_EARLY = 'This race comes before your tendon is ready for it; talk with us before you decide.';

const EARLY_ALL_THE_SAME = 'This race comes before your tendon is ready for it.';

const FAR = 'far longer than your longest run of the last weeks';

export interface RaceWords {
  readonly races: readonly JudgedRace[];
  readonly reviewOn: string;
  /** Nobody can say yet from when one fits. */
  readonly dateOpen: boolean;
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
    ...againstTexts(race, words),
    ...(race.inPlan ? planTexts(race, words) : ['It is not in this plan.']),
  ].join(' ');
}

/** What speaks against it: said to the patient as well, with the date from which it would fit. */
function againstTexts(
  { fitsFrom, doubts, notes, inPlan, decision }: JudgedRace,
  { dateOpen }: Pick<RaceWords, 'dateOpen'>,
): string[] {
  const noted = (code: string) => notes.some((note) => note.code === code);
  if (fitsFrom !== null)
    return [
      decision === undefined || !inPlan ? TOO_EARLY : EARLY_ALL_THE_SAME,
      dateOpen
        ? 'From when it would fit is left open for now.'
        : `It would fit from ${dayAndYear(fitsFrom)}${doubts.includes('far-beyond-longest') ? ' at the earliest' : ''}.`,
      ...(doubts.includes('far-beyond-longest') ? [`It is also ${FAR}; that one has to grow first.`] : []),
    ];
  if (inPlan && decision !== undefined) return [];
  if (noted('race-barred')) return ['There is no running for now; talk with us before you decide.'];
  if (doubts.includes('walk-run'))
    return ['You are not back to running without a break yet; talk with us before you decide.'];
  if (doubts.includes('irritable'))
    return ['Your tendon is easily stirred up just now; talk with us before you decide.'];
  if (doubts.includes('far-beyond-longest')) return [`It is ${FAR}; talk with us before you decide.`];
  if (doubts.includes('after-another'))
    return ['It comes in the easy days after another race; talk with us before you decide.'];
  return noted('race-beyond-longest') && inPlan
    ? ['It is longer than your longest run allows so far; talk with us before you decide.']
    : [];
}

function planTexts(race: JudgedRace, { taperDays, noHeavyDays }: Omit<RaceWords, 'races'>): string[] {
  return [
    roomText(race),
    `In the ${noHeavyDays} days before it there is nothing heavy and nothing fast. In the ${taperDays} days before it there is about half the running.`,
    ...(race.easyUntil > race.on
      ? [
          `After it: ${restText(race)}easy days until ${dayText(race.easyUntil)}, with nothing heavy and nothing fast in them.`,
        ]
      : []),
  ];
}

function restText({ on, restUntil }: JudgedRace): string {
  const days = daysBetween(on, restUntil);
  if (days === 0) return '';
  return days === 1 ? 'no run the day after, and ' : `no run before ${dayText(addDays(restUntil, 1))}, and `;
}

/** It says who made up whose mind: nobody yet, the one who recorded it, or there is nothing to decide. */
function roomText({ decision, fitsFrom, notes }: JudgedRace): string {
  if (decision !== undefined) return 'It was decided that you run it, so your plan makes room for it.';
  const open = fitsFrom !== null || notes.some(({ code }) => code === 'race-beyond-longest');
  return open ? 'In case you run it, your plan makes room for it.' : 'Your plan makes room for it.';
}
