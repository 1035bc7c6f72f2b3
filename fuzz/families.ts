/** All attacks, in the order in which they are run. */
import { addresses } from './addresses.ts';
import { consults } from './consults.ts';
import { disks } from './disks.ts';
import { desk } from './desk.ts';
import type { Family } from './family.ts';
import { libraries } from './libraries.ts';
import { photos } from './photos.ts';
import { texts } from './texts.ts';

export const FAMILIES: readonly Family[] = [consults, libraries, texts, disks, addresses, photos, desk];
