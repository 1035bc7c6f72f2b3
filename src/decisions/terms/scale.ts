/** The words a number of a card is put under when no person is known, and what a card is found by. */

/** Body weights up to which a value is low, and up to which middling. */
export interface Marks {
  readonly low: number;
  readonly middle: number;
}

export type Word = 'low' | 'middle' | 'high' | 'unknown';

/** In the order they are shown. `cannot` holds what a card asks of a person. */
export const FILTER_KEYS = ['bend', 'squeeze', 'pull', 'kind', 'position', 'stage', 'kit', 'cannot'] as const;
export type FilterKey = (typeof FILTER_KEYS)[number];
