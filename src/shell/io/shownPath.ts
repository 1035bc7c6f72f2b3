/** A path as a reader at this terminal would write it. */
import { relative } from 'node:path';
import { visibleInLine } from '../../content/visible.ts';

/** Relative below the working folder, whole anywhere else. */
export function shownPath(path: string): string {
  const below = relative(process.cwd(), path);
  return visibleInLine(below.startsWith('..') ? path : below || '.');
}
