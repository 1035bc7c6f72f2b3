/** The headings each kind of file may have under its front matter, in their order. */
import type { Refusal } from '../../units/refusal.ts';

export interface HeadingRules {
  readonly headings: readonly string[];
  /** Whether all of them must stand there; otherwise each may be left out. */
  readonly required: boolean;
}

export const HEADINGS: Readonly<Record<Refusal['kind'], HeadingRules>> = {
  exercise: { headings: ['Set up', 'Move', 'Look out for'], required: true },
  advice: { headings: ['In short', 'What to do'], required: true },
  protocol: { headings: ['How it works'], required: true },
  clinic: { headings: ['About'], required: false },
  consult: { headings: ['Notes'], required: false },
};
