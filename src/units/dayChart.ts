/** What a chart over days shows: what was asked for and done, in the unit that its scale names. */

export interface DayChart {
  /** What is counted upwards, with its unit. */
  readonly up: string;
  /** What runs to the right. */
  readonly across: string;
  readonly low: number;
  readonly high: number;
  /** Between two numbers of the scale. */
  readonly step: number;
  /** Length of the axis; day 0 stands at its left end. */
  readonly days: number;
  readonly ticks: readonly { readonly day: number; readonly text: string }[];
  /** Limits across the whole chart, with their words. */
  readonly limits: readonly { readonly value: number; readonly text: string }[];
  readonly lines: readonly DayLine[];
}

export interface DayLine {
  readonly name: string;
  readonly kind: 'asked' | 'done';
  /** Stretches without a gap; one point alone is a dot, or of what was asked for a short dash. */
  readonly stretches: readonly (readonly DayPoint[])[];
}

export interface DayPoint {
  readonly day: number;
  readonly value: number;
}
