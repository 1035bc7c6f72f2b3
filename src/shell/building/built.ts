/** What a build has done, for whoever tells of it. */
import type { Problem } from '../../content/problem.ts';
import type { Outcome } from '../io/site.ts';
import type { Workspace } from '../io/workspace.ts';
import type { Chosen } from './buildAsk.ts';

export interface Built {
  readonly workspace: Pick<Workspace, 'files' | 'counts' | 'blocked' | 'unreadable' | 'stopped' | 'toBeSeen'>;
  readonly programmes: readonly Chosen[];
  /** Aliases that were asked for and have no programme, sorted. */
  readonly failed: readonly string[];
  /** Of the aliases that were asked for, and of the library; sorted by place. */
  readonly problems: readonly Problem[];
  /** Null when the library has an error: then nothing was touched but what a red flag takes away. */
  readonly outcome: Outcome | null;
  /** Whether the disk keeps private files to this user. */
  readonly isClosed: boolean;
  /** Aliases whose files were put aside. */
  readonly setAside: readonly string[];
  /** Leaflets that were sealed by this build, with the words that open them. */
  readonly sealed: readonly { readonly alias: string; readonly words: string | null }[];
}
