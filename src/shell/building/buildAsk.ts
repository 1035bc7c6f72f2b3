/** What a build is asked for, and what it tells of each person. */
import type { Programme } from '../../programme/programme.ts';
import type { IsoDate } from '../../units/date.ts';
import type { Flags } from '../flags.ts';
import type { Sealing } from '../../post/sealedFiles.ts';
import type { Meanwhile } from '../server/rebuilder.ts';

/** What was chosen for one person. */
export interface Chosen extends Pick<Programme, 'alias' | 'revision' | 'step'> {
  readonly stage: Pick<Programme['stage'], 'chosen'>;
}

/** For somebody who waits at a screen: the library's pages come first, and older work makes way for newer. */
export interface Haste extends Meanwhile {
  /** Pages of the library were written anew, and are on the disk. */
  readonly libraryWritten: () => void;
}

/** What is to be built. */
export interface BuildAsk {
  /** None for the whole site. */
  readonly aliases: readonly string[];
  /** The day that `issued.jsonl` is told. */
  readonly on: IsoDate;
  readonly flags: Flags;
  readonly haste?: Haste;
  /** Null or left out where nothing is sealed. */
  readonly sealing?: Sealing | null;
}
