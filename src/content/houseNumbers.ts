/** The house numbers of a protocol with their marks, group by group. */
import type { Protocol } from './library.ts';
import type { Mark } from '../units/source.ts';

/** Groups of house numbers, in the order of the schema. */
export const NUMBER_GROUPS = [
  'painRule',
  'morningCheck',
  'easeBack',
  'flare',
  'missedDays',
  'goingOn',
  'discharge',
  'minimalChange',
  'limits',
  'session',
  'week',
  'runningRules',
  'sittingRules',
  'maternity',
] as const satisfies readonly (keyof Protocol)[];
export type NumberGroup = (typeof NUMBER_GROUPS)[number];

/** One number, in the unit its name says. */
export interface HouseNumber {
  readonly name: string;
  readonly value: number | string;
  readonly mark: Mark;
  readonly cite: string | undefined;
}

/** The numbers of a group that carry a mark of their own, in the order of the schema. */
export function houseNumbers(protocol: Protocol, group: NumberGroup): readonly HouseNumber[] {
  return markedNumbers(protocol[group]);
}

/** Those of any group of settings. */
export function markedNumbers(group: object): readonly HouseNumber[] {
  return Object.entries(group as Readonly<Record<string, unknown>>).flatMap(([name, one]) =>
    isMarked(one) ? [{ name, value: one.value, mark: one.mark, cite: one.cite }] : [],
  );
}

function isMarked(one: unknown): one is { value: number | string; mark: Mark; cite?: string } {
  return typeof one === 'object' && one !== null && 'value' in one && 'mark' in one;
}
