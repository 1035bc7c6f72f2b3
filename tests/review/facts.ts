/** A revision of three weeks with sessions on Monday, Wednesday and Friday, and logs of it written short. */
import { readFileSync } from 'node:fs';
import type { LogRow } from '../../src/content/log/columns.ts';
import type { Log } from '../../src/content/log/log.ts';
import type { Consult } from '../../src/content/library.ts';
import { readConsults } from '../../src/content/readConsults.ts';
import type { PlanEntry } from '../../src/decisions/terms/planEntry.ts';
import type { ReviewFacts } from '../../src/review/facts.ts';
import { reviewOf } from '../../src/review/review.ts';
import type { Review } from '../../src/review/terms.ts';
import { addDays, daysBetween, weekdayOf, type IsoDate } from '../../src/units/date.ts';
import { readRows, row } from '../content/log/logs.ts';
import { shipped } from '../programme/shipped.ts';

export const START = '2026-03-02' as IsoDate;
export const CARDS = ['slow-prone-curl', 'hip-hinge'];
export const USUAL = 2;

const file = 'consults/otter-r1.md';
const { consults } = readConsults([{ file, bytes: readFileSync(`content/${file}`), link: 'no' }], shipped);

/** The demo's person, seen for so many days from the start. */
export function consultFor(days: number): Consult {
  const consult = consults[0] as Consult;
  return {
    ...consult,
    seenOn: START,
    startOn: START,
    reviewOn: addDays(START, days),
    usualMorningPain: USUAL,
    irritability: 'low',
  };
}

export const onDay = (index: number): IsoDate => addDays(START, index);

function planOf(days: number): PlanEntry[] {
  return Array.from({ length: days }, (_, index) => {
    const on = onDay(index);
    const weekday = weekdayOf(on);
    const has = weekday === 'mon' || weekday === 'wed' || weekday === 'fri';
    const exercises = CARDS.map((card) => ({ slot: card, card }));
    return {
      on,
      weekday,
      week: Math.floor(index / 7) + 1,
      step: 2,
      sessions: has ? [{ exercises, begins: [], without: [] }] : [],
      between: [],
      daily: [],
      runs: weekday === 'sat' ? [{ kind: 'easy' as const, km: 6, minutes: null, walkRun: null }] : [],
      races: [],
      other: [],
      easyAfterRace: false,
      free: !has,
    };
  });
}

/** Facts of a revision at stage 2, step 2. */
export function factsOf(rows: readonly LogRow[], days = 21, more: Partial<ReviewFacts> = {}): ReviewFacts {
  return { ...factsFor(readRows(rows).log, days), ...more };
}

export function factsFor(log: Log, days = 21): ReviewFacts {
  const protocol = shipped.protocols.get('proximal-hamstring');
  if (protocol === undefined) throw new Error('the shipped library has this protocol');
  return {
    consult: consultFor(days),
    earlier: {
      revision: 1,
      seenOn: START,
      protocol: protocol.id,
      stage: 2,
      step: 2,
      exercises: CARDS.map((card) => ({ card, values: { sets: 3, repetitions: 8, loadKg: 10 } })),
      plan: planOf(days),
    },
    protocol,
    isLastStep: false,
    countsSitting: false,
    stageSessionsBefore: 0,
    log,
    seenOn: onDay(days),
  };
}

export function reviewRows(rows: readonly LogRow[], days = 21, more: Partial<ReviewFacts> = {}): Review {
  return reviewOf(factsOf(rows, days, more));
}

/** The whole dose of both exercises on the session days from one day to before another. */
export function sessions(from: number, to: number, more: Partial<LogRow> = {}): LogRow[] {
  return planOf(to)
    .slice(from)
    .filter((day) => day.sessions.length > 0)
    .flatMap(({ on }) =>
      CARDS.map((card) =>
        row(on, 'session', {
          card,
          side: 'right',
          done: 'yes',
          sets: 3,
          repetitions: 8,
          loadKg: 10,
          painDuring: 1,
          ...more,
        }),
      ),
    );
}

/** A score each morning from one day on. */
export function mornings(from: number, scores: readonly number[]): LogRow[] {
  return scores.map((morning, index) => row(onDay(from + index), 'morning', { morning }));
}

export const steady = (days: number, score = USUAL): number[] => Array.from({ length: days }, () => score);

export const dayNumber = (on: string): number => daysBetween(START, on as IsoDate);
