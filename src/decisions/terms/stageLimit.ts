/** What was looked at on the way to a stage, and what keeps one shut. */
import type { Consult } from '../../content/library.ts';
import type { StageName } from './stageName.ts';
import type { SuddenStart } from './suddenStart.ts';

/** Why the proposal goes no further than it does. */
export type StageLimit =
  | { readonly code: 'stirred-up' | 'irritable' | 'irritable-for-sport' | 'not-settled' | 'no-sport' }
  | { readonly code: 'no-weight-shown'; readonly painAtMost: number }
  | { readonly code: 'not-tested'; readonly tests: readonly string[] }
  | {
      readonly code: 'straight-hip-pain' | 'entry-pain' | 'sport-pain';
      readonly test: string;
      readonly pain: number;
      readonly painAtMost: number;
    }
  | { readonly code: 'sudden-start'; readonly sudden: SuddenStart };

export interface StageLooked {
  readonly stage: StageName;
  /** The tests that opened it, the worst result of each; empty where the stage asks for none. */
  readonly by: readonly Consult['tests'][number][];
  /** Null when it is open. */
  readonly limit: StageLimit | null;
}
