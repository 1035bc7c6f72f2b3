/** A path as a reader at this terminal would write it. */
import { relative } from 'node:path';

/** Relative below the working folder, whole anywhere else. */
export function shownPath(path: string): string {
  const below = relative(process.cwd(), path);
  return below.startsWith('..') ? path : below || '.';
}
