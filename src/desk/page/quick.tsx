/** Short ways to what is asked: dates from today, homes to start from, the last four weeks of running. */
import { useState } from 'preact/hooks';
import {
  FLAT_AND_EASY,
  FOUR_WEEKS,
  HABITS_TITLE,
  HOME_NAMES,
  HOMES_TITLE,
  kilometresOf,
  LONGEST_SHORT,
  longestOf,
  MINUTES_TITLE,
  minutesText,
  reviewIn,
  SEEN_TODAY,
  seenBy,
  SHORT_WAYS,
  WEEK_SHORT,
} from '../../messages/en/desk/quick.ts';
import { HOMES } from '../form/home.ts';
import { usualOf, type Week } from '../form/fourWeeks.ts';
import { at, catalogue, setAll } from './state.ts';

const DAY_MS = 24 * 60 * 60 * 1000;
const WEEKS = [1, 2, 3, 4, 6] as const;

/** As the wall calendar of this machine has it. */
export function today(): string {
  const now = new Date();
  return new Date(now.getTime() - now.getTimezoneOffset() * 60_000).toISOString().slice(0, 10);
}

function later(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);
}

export function Dates() {
  const starts = catalogue.value?.starts;
  const [seenOn, startOn] = [at('seenOn'), at('startOn')];
  const isDay = (day: unknown): day is string => typeof day === 'string' && /^\d{4}-\d\d-\d\d$/.test(day);
  return (
    <div class="short" role="group" aria-label={SHORT_WAYS}>
      {isDay(seenOn) ? null : (
        <button
          type="button"
          onClick={() =>
            setAll([
              ['seenOn', today()],
              ['startOn', later(today(), 1)],
            ])
          }
        >
          {SEEN_TODAY}
        </button>
      )}
      {isDay(startOn)
        ? WEEKS.map((weeks) => (
            <button
              key={weeks}
              type="button"
              class={weeks === starts?.reviewAfterWeeks ? 'usual' : undefined}
              onClick={() => setAll([['reviewOn', later(startOn, weeks * 7)]])}
            >
              {reviewIn(weeks)}
            </button>
          ))
        : null}
      {starts?.clinician === null ||
      starts?.clinician === undefined ||
      at('clinician') !== undefined ? null : (
        <button type="button" onClick={() => setAll([['clinician', starts.clinician]])}>
          {seenBy(starts.clinician)}
        </button>
      )}
    </div>
  );
}

export function Homes() {
  return (
    <div class="short" role="group" aria-label={HOMES_TITLE}>
      {HOMES.map(({ id, kit }) => (
        <button key={id} type="button" data-home={id} onClick={() => setAll([['kit', kit]])}>
          {HOME_NAMES[id]}
        </button>
      ))}
    </div>
  );
}

export function Minutes() {
  const usual = catalogue.value?.starts.minutesPerDay ?? null;
  const all = [...new Set([15, 20, 30, 45, 60, ...(usual === null ? [] : [usual])])].sort((a, b) => a - b);
  return (
    <div class="short" role="group" aria-label={MINUTES_TITLE}>
      {all.map((minutes) => (
        <button
          key={minutes}
          type="button"
          class={minutes === usual ? 'usual' : undefined}
          onClick={() => setAll([['minutesPerDay', minutes]])}
        >
          {minutesText(minutes)}
        </button>
      ))}
    </div>
  );
}

const HABITS = ['running.hills', 'running.speed', 'running.hillyRoutes'] as const;

/** Like a group of the screen: three answers for one who was asked all three. */
export function Habits() {
  if (at('running.runs') !== 'yes' && at('running.runs') !== true) return null;
  return (
    <div class="short" role="group" aria-label={HABITS_TITLE}>
      <button
        type="button"
        data-habit="flat"
        aria-pressed={HABITS.every((name) => at(name) === 'no' || at(name) === false)}
        onClick={() => setAll(HABITS.map((name) => [name, 'no']))}
      >
        {FLAT_AND_EASY}
      </button>
    </div>
  );
}

const NO_WEEKS: readonly Week[] = [1, 2, 3, 4].map(() => ({ km: null, longestKm: null }));

export function FourWeeks() {
  const [weeks, setWeeks] = useState(NO_WEEKS);
  if (at('running.runs') !== 'yes' && at('running.runs') !== true) return null;
  const change = (index: number, key: keyof Week, typed: string) => {
    const number = /^\d+([.,]\d+)?$/.test(typed.trim()) ? Number(typed.trim().replace(',', '.')) : null;
    const next = weeks.map((week, one) => (one === index ? { ...week, [key]: number } : week));
    setWeeks(next);
    const usual = usualOf(next);
    if (usual !== null)
      setAll([
        ['running.weeklyKm', usual.weeklyKm],
        ['running.longestIn30DaysKm', usual.longestKm],
      ]);
  };
  return (
    <fieldset class="field fourweeks">
      <legend>{FOUR_WEEKS}</legend>
      <span class="presses">
        {weeks.map((_, index) => (
          <span class="one" key={index}>
            <input
              type="text"
              inputMode="decimal"
              autocomplete="off"
              aria-label={kilometresOf(index)}
              placeholder={WEEK_SHORT}
              onInput={({ currentTarget }) => change(index, 'km', currentTarget.value)}
            />
            <input
              type="text"
              inputMode="decimal"
              autocomplete="off"
              aria-label={longestOf(index)}
              placeholder={LONGEST_SHORT}
              onInput={({ currentTarget }) => change(index, 'longestKm', currentTarget.value)}
            />
          </span>
        ))}
      </span>
    </fieldset>
  );
}
