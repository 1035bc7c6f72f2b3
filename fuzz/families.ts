/** All attacks, in the order in which they are run. */
import { consults } from './consults.ts';
import type { Family } from './family.ts';

export const FAMILIES: readonly Family[] = [consults];
