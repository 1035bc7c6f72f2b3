/** A first dose far below what was tested, and what may stand behind it. */

/** Reasons that may stand behind a dose under the protocol's share of what was tested. */
export type GentlerReason =
  | 'cap'
  | 'growth'
  | 'pain'
  | 'kit'
  | 'effort'
  | 'unusable'
  | 'longest'
  | 'screen'
  | 'sudden'
  | 'between'
  | 'published'
  | 'young'
  | 'minutes'
  | 'clinician';

/** `given` and `tested` in kilograms, seconds, or body weights of pull. */
export interface Gentler {
  readonly what: 'load' | 'hold' | 'pull';
  readonly given: number;
  readonly tested: number;
  /** At least one; a dose without a reason is not that low. */
  readonly reasons: readonly GentlerReason[];
}
