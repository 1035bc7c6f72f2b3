/** What bars straining. */
import type { ScreenItem } from '../../content/schema/consult.ts';

/** An item of the screen; or pregnancy, or the first weeks after birth, or that they were not recorded. */
export type StrainBar = ScreenItem | 'afterBirth' | 'pregnancy';
