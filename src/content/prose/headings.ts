/** The headings each kind of file may have under its front matter, in their order. */
import type { Refusal } from '../../units/refusal.ts';

export interface HeadingRules {
  /** Empty: whatever headings the author likes. */
  readonly headings: readonly string[];
  /** Whether all of them must stand there; otherwise each may be left out. */
  readonly required: boolean;
  /** Whether plain text without any heading is taken for what stands under the first. */
  readonly mayBePlain: boolean;
}

export const HEADINGS: Readonly<Record<Refusal['kind'], HeadingRules>> = {
  exercise: { headings: ['Set up', 'Move', 'Look out for'], required: true, mayBePlain: false },
  advice: { headings: ['In short', 'What to do'], required: true, mayBePlain: false },
  protocol: { headings: ['How it works'], required: true, mayBePlain: false },
  clinic: { headings: ['About'], required: false, mayBePlain: true },
  consult: { headings: ['Notes'], required: false, mayBePlain: true },
  page: { headings: [], required: false, mayBePlain: true },
};
