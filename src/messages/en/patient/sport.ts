/** Sport beside the exercises, in the patient's words: what is kept, what is left out for now, and what keeps clear of it. */
import { entriesOf } from '../../../units/reason.ts';
import type { Weekday } from '../../../units/weekday.ts';
import type { JudgedActivity } from '../../../scheduling/activities.ts';
import type { WeekPlan } from '../../../scheduling/plan.ts';
import { isLeftOut, keptDays, type SportDays } from '../../../scheduling/sport.ts';
import { capital, clearDaysText, countText, listText, timesText, weekdayText } from '../plain.ts';

/** What the week says of sport, a paragraph each; empty where there is none. */
export function sportTexts(plan: WeekPlan): string[] {
  const inWeek = plan.sport.filter((sport) => sport.mayWait && keptDays(sport).length > 0);
  return [
    ...plan.sport.filter(({ leftTimes }) => leftTimes > 0).map(leftOutText),
    ...(inWeek.length === 0
      ? []
      : besideText(
          plan,
          inWeek.map(({ id }) => id),
        )),
    ...plan.sport.filter(({ chosenDays }) => chosenDays.length > 0).map(chosenText),
  ];
}

/** @example keptText({ id: 'football', namedDays: ['tue'], chosenDays: [], leftDays: ['sat'], … }) // => 'for now once a week, on Tuesday, not on Saturday' */
export function keptText(sport: SportDays): string {
  const kept = keptDays(sport);
  const days = sport.leftDays.length === 0 ? '' : `, ${daysText(kept)}, not ${daysText(sport.leftDays)}`;
  return `for now ${timesText(kept.length)} a week${days}`;
}

/** For an activity of which the week keeps nothing. */
export const NO_ROOM = 'Your week has no room for it beside your exercises just now.';

/** For the record. @example 'Football: left out until stage 4, twice a week now.' */
export function waitsText({ what, timesPerWeek, fromStage }: JudgedActivity): string {
  return `${capital(what)}: left out until stage ${fromStage}, ${timesText(timesPerWeek)} a week now.`;
}

/** For the record. @example 'Football: asked about first; no day of the week is kept for it, twice a week now.' */
export function askedText({ what, timesPerWeek }: JudgedActivity): string {
  return `${capital(what)}: asked about first; no day of the week is kept for it, ${timesText(timesPerWeek)} a week now.`;
}

function leftOutText(sport: SportDays): string {
  return isLeftOut(sport)
    ? `${capital(sport.id)}: leave it out for now. ${NO_ROOM}`
    : `${capital(sport.id)}: ${keptText(sport)}. Hard days need clear days between them.`;
}

function besideText({ days, gaveUp, clearOfSport }: WeekPlan, names: readonly string[]): string[] {
  const either = listText(names, 'or');
  const sessions = days.filter(({ session }) => session).length;
  const springs = gaveUp.some(
    ({ code, inputs }) => code === 'plain-session' && entriesOf(inputs['slots']).length > 0,
  );
  return [
    ...(gaveUp.some(({ code }) => code === 'fewer-lifts')
      ? [
          `With ${listText(names)} in the week there is room for ${sessions === 1 ? 'one session' : countText(sessions, 'session')} of exercises a week.`,
        ]
      : []),
    ...(springs
      ? [`There is nothing springy among your exercises for now: the rest of your week has enough of it.`]
      : []),
    ...(clearOfSport === null
      ? []
      : [
          `A day with ${either} holds no run and no session. If you move a session, leave ${clearText(clearOfSport.before)} before ${either} and ${clearText(clearOfSport.after)} after.`,
        ]),
  ];
}

function chosenText({ id, chosenDays }: SportDays): string {
  return `We have put ${id} ${daysText(chosenDays)}, as no day was named for it. If it falls on another day, tell us, and we plan your week again.`;
}

function clearText(days: number): string {
  return days === 0 ? 'the night' : clearDaysText(days);
}

function daysText(days: readonly Weekday[]): string {
  return `on ${listText(days.map(weekdayText))}`;
}
