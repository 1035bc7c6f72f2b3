/** The clinician's own numbers for single cells: put in place of the rule's, marked, and refused where they cannot be. */
import type { Consult } from '../../content/library.ts';
import { DECISIONS } from '../../content/schema/override.ts';
import type { Tempo } from '../../dosing/dose.ts';
import type { Prescribed } from '../../dosing/rung.ts';
import { WEEKDAYS, type Weekday } from '../../units/weekday.ts';
import { CELLS, type CellName } from '../terms/cell.ts';
import { ANGLE_CELLS } from './cells/angleCell.ts';

export interface OwnEntry {
  readonly value: number | string;
  readonly reason: string;
}
export type Own = ReadonlyMap<CellName, OwnEntry>;

/** The consult's entries for one card. */
export function ownEntries(cardId: string, { overrides }: Consult): Own {
  return new Map(
    overrides.flatMap(({ path, value, reason }) => {
      const cell = CELLS.find((name) => path === `${cardId}.${name}`);
      return cell === undefined ? [] : [[cell, { value, reason }]];
    }),
  );
}

/** The state of an exercise with the entries' numbers in it. */
export function withOwn(at: Prescribed, own: Own): Prescribed {
  const number = (name: CellName) => {
    const value = own.get(name)?.value;
    return typeof value === 'number' ? value : undefined;
  };
  const { dose } = at;
  return {
    ...at,
    loadKg: number('loadKg') ?? at.loadKg,
    rangeDeg: ANGLE_CELLS.map(number).find((deg) => deg !== undefined) ?? at.rangeDeg,
    daysPerWeek: ownDays(own)?.length ?? at.daysPerWeek,
    dose: {
      ...dose,
      sets: number('sets') ?? dose.sets,
      repetitions: number('repetitions') ?? dose.repetitions,
      holdSeconds: number('holdSeconds') ?? dose.holdSeconds,
      tempo: ownTempo(own) ?? dose.tempo,
      restSeconds: number('restSeconds') ?? dose.restSeconds,
      timesPerDay: number('timesPerDay') ?? dose.timesPerDay,
      reserve: number('reserve') ?? dose.reserve,
    },
  };
}

/** A tempo written as seconds, `3-0-3`; null for one in words, or none. */
export function ownTempo(own: Own): Tempo | null {
  const value = String(own.get('tempo')?.value ?? '');
  const [, goSeconds, holdSeconds, backSeconds] = /^(\d{1,2})-(\d{1,2})-(\d{1,2})$/.exec(value) ?? [];
  return goSeconds === undefined
    ? null
    : { goSeconds: Number(goSeconds), holdSeconds: Number(holdSeconds), backSeconds: Number(backSeconds) };
}

/** The days of an entry, in the order of the week; null when there is none, or a word in it is no day. */
export function ownDays(own: Own): Weekday[] | null {
  const value = own.get('days')?.value;
  if (value === undefined) return null;
  const words = String(value)
    .toLowerCase()
    .split(/[\s,]+/)
    .filter((word) => word !== '');
  return words.every((word) => (WEEKDAYS as readonly string[]).includes(word)) && words.length > 0
    ? WEEKDAYS.filter((day) => words.includes(day))
    : null;
}

/** Whether an entry is a decision of its own, and no cell of a card. */
export function isDecision(path: string): boolean {
  return DECISIONS.some((one) => one === path);
}
