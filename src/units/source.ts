/** Where a figure comes from and how sure we are of it. */

/**
 * `read`: seen in the paper, table or standard itself · `secondary`: seen on a page that attributes it ·
 * `memory`: recalled, unconfirmed · `choice`: our own default · `common-practice`: the trade does so, no source.
 */
export const MARKS = ['read', 'secondary', 'memory', 'choice', 'common-practice'] as const;
export type Mark = (typeof MARKS)[number];

export interface Source {
  readonly cite: string;
  readonly mark: Mark;
}
