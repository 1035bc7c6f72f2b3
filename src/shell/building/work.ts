/** One build: what it is asked for, what lies there, and what it makes leaflets with. */
import type { PageAssets } from '../../outputs/html/assets.ts';
import type { PaperAssets } from '../../outputs/pdf/leaflet.ts';
import type { Sealing } from '../../post/sealedFiles.ts';
import type { Workshop } from '../../programme/assemble.ts';
import { EXIT } from '../exit.ts';
import { version } from '../io/assets.ts';
import type { Folders } from '../io/folders.ts';
import type { Ledger } from '../io/ledger.ts';
import type { PhotoWork } from '../io/photos.ts';
import type { Reuse } from '../io/reuse.ts';
import type { Manner, OutFile } from '../io/site.ts';
import { isStill, type Sources } from '../io/sources.ts';
import { Stop } from '../io/stop.ts';
import type { BuildAsk } from './buildAsk.ts';
import type { Outfit } from './crewHand.ts';

/** Lies in the private folder. */
export const NOTICE_FILE: OutFile = {
  path: 'private/PRIVATE.txt',
  bytes: [
    'Everything in this folder belongs to single persons. Do not publish it, and do not commit it.',
    'Only the folder public/ beside it is meant for the web.',
    '',
  ].join('\n'),
};

export interface Work {
  readonly folders: Folders;
  readonly ask: BuildAsk;
  /** All that lies there. */
  readonly looked: Sources;
  /** What is to be built of it. */
  readonly sources: Sources;
  readonly ledger: Ledger;
  readonly reuse: Reuse;
}

export interface Shop {
  readonly workshop: Workshop;
  readonly pages: PageAssets;
  readonly paper: PaperAssets;
  readonly photos: PhotoWork;
  /** Null where nothing is sealed. */
  readonly sealing: Sealing | null;
  /** Whether everybody gets the sheet for the fridge. */
  readonly fridge: boolean;
}

export function mannerOf({ on, haste }: BuildAsk): Manner {
  return { on, loadleaf: version(), isHasty: haste !== undefined };
}

export function stopUnlessStill(sources: Sources, folders: Folders): void {
  if (!isStill(sources, folders))
    throw new Stop(EXIT.busy, 'files were saved while the build began; build again');
}

/** What a thread of the crew is given. */
export function outfitOf({ workshop: { library, loadleaf }, paper, pages, fridge }: Shop): Outfit {
  return { library, loadleaf, logo: paper.logo, photos: pages.photos, fridge };
}
