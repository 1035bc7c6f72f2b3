/** What a tested set says of a load, and how. */
import type { Consult } from '../../content/library.ts';
import type { LoadAnswer } from '../../dosing/load.ts';

export type ConsultSet = Consult['testedSets'][number];

type Loaded = Extract<LoadAnswer, { loadKg: number }>['why'];
type NotLoaded = Extract<LoadAnswer, { none: true }>['why'];

export type TestedReason =
  | { readonly code: 'held'; readonly from: 'test' | 'stage-before' }
  /** `side`: null for a card that works both legs. */
  | { readonly code: 'load'; readonly side: 'left' | 'right' | null; readonly why: Loaded }
  | { readonly code: 'hurt'; readonly set: ConsultSet; readonly painAtMost: number }
  | { readonly code: 'too-short'; readonly set: ConsultSet }
  | { readonly code: 'says-nothing'; readonly set: ConsultSet; readonly why: NotLoaded };
