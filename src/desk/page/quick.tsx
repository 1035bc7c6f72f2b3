/** Short ways to what is asked: dates from today, homes to start from, the last four weeks of running. */
import { useState } from 'preact/hooks';
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
    <div class="short" role="group" aria-label="Short ways">
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
          Seen today, begins tomorrow
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
              Review in {weeks} {weeks === 1 ? 'week' : 'weeks'}
            </button>
          ))
        : null}
      {starts?.clinician === null ||
      starts?.clinician === undefined ||
      at('clinician') !== undefined ? null : (
        <button type="button" onClick={() => setAll([['clinician', starts.clinician]])}>
          Seen by {starts.clinician}
        </button>
      )}
    </div>
  );
}

export function Homes() {
  return (
    <div class="short" role="group" aria-label="Homes to start from">
      {HOMES.map(({ id, label, kit }) => (
        <button key={id} type="button" data-home={id} onClick={() => setAll([['kit', kit]])}>
          {label}
        </button>
      ))}
    </div>
  );
}

export function Minutes() {
  const usual = catalogue.value?.starts.minutesPerDay ?? null;
  const all = [...new Set([15, 20, 30, 45, 60, ...(usual === null ? [] : [usual])])].sort((a, b) => a - b);
  return (
    <div class="short" role="group" aria-label="Minutes to choose from">
      {all.map((minutes) => (
        <button
          key={minutes}
          type="button"
          class={minutes === usual ? 'usual' : undefined}
          onClick={() => setAll([['minutesPerDay', minutes]])}
        >
          {minutes} minutes
        </button>
      ))}
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
      <legend>Last four weeks, km: from all four follow the usual week and the longest run</legend>
      <span class="presses">
        {weeks.map((_, index) => (
          <span class="one" key={index}>
            <input
              type="text"
              inputMode="decimal"
              autocomplete="off"
              aria-label={index === 0 ? 'Kilometres last week' : `Kilometres ${index + 1} weeks ago`}
              placeholder="week"
              onInput={({ currentTarget }) => change(index, 'km', currentTarget.value)}
            />
            <input
              type="text"
              inputMode="decimal"
              autocomplete="off"
              aria-label={index === 0 ? 'Longest run last week' : `Longest run ${index + 1} weeks ago`}
              placeholder="longest"
              onInput={({ currentTarget }) => change(index, 'longestKm', currentTarget.value)}
            />
          </span>
        ))}
      </span>
    </fieldset>
  );
}
