/** Key names as words. */
import { capital } from '../plain.ts';

/** @example words('stepGrowth') // => 'Step growth' */
export function words(key: string): string {
  return capital(key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`).replaceAll('-', ' '));
}
