/** Of many lines about one thing the one that holds: the highest edit. The same line again changes nothing. */
import type { IsoDate } from '../../units/date.ts';
import { LOG_COLUMNS, logKey, type LogColumn } from './columns.ts';
import type { LogEntry } from './log.ts';

/** A line with the number it has in its file. */
export interface Numbered {
  readonly entry: LogEntry;
  readonly line: number;
}

/** Two lines of one edit that say different things. */
export interface Contradiction {
  readonly first: Numbered;
  readonly second: Numbered;
  readonly column: LogColumn;
}

export interface Settled {
  readonly entries: readonly LogEntry[];
  readonly contradictions: readonly Contradiction[];
  readonly contradicted: readonly IsoDate[];
}

/** In whatever order the lines come. */
export function settle(lines: readonly Numbered[]): Settled {
  const groups = groupsOf(lines).map(ofHighestEdit);
  const contradictions = groups.flatMap((group) => contradictionsIn(group));
  const entries = groups.flatMap((group) =>
    contradictionsIn(group).length === 0 && group[0] !== undefined ? [group[0].entry] : [],
  );
  return {
    entries: entries.toSorted(byKey),
    contradictions,
    contradicted: [...new Set(contradictions.map(({ first }) => first.entry.date))].sort(),
  };
}

function groupsOf(lines: readonly Numbered[]): readonly (readonly Numbered[])[] {
  const groups = new Map<string, Numbered[]>();
  for (const line of lines) {
    const group = groups.get(logKey(line.entry));
    if (group === undefined) groups.set(logKey(line.entry), [line]);
    else group.push(line);
  }
  return [...groups.values()];
}

function ofHighestEdit(group: readonly Numbered[]): readonly Numbered[] {
  const highest = Math.max(...group.map(({ entry }) => entry.edit));
  return group.filter(({ entry }) => entry.edit === highest);
}

function contradictionsIn([first, ...others]: readonly Numbered[]): Contradiction[] {
  if (first === undefined) return [];
  return others.flatMap((second) => {
    const column = LOG_COLUMNS.find((one) => first.entry[one] !== second.entry[one]);
    return column === undefined ? [] : [{ first, second, column }];
  });
}

function byKey(a: LogEntry, b: LogEntry): number {
  return (
    compare(a.date, b.date) ||
    a.occasion - b.occasion ||
    compare(a.kind, b.kind) ||
    compare(a.card, b.card) ||
    compare(a.side ?? '', b.side ?? '')
  );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
