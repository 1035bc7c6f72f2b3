/** Whether a file is the one that was looked at before, without reading it: by its size, its times and its place on the disk. */
import { lstatSync } from 'node:fs';

/** Size in bytes, times of content and of the entry in milliseconds, number of the inode. */
export type FileState = readonly [size: number, mtimeMs: number, ctimeMs: number, inode: number];

/** Of what stands at a place, a link itself; null for nothing, and where nobody may look. */
export function stateOf(place: string): FileState | null {
  try {
    const found = lstatSync(place, { throwIfNoEntry: false });
    return found === undefined ? null : [found.size, found.mtimeMs, found.ctimeMs, found.ino];
  } catch {
    return null;
  }
}

export function isSameState(before: FileState | null, now: FileState | null): boolean {
  return before !== null && now !== null && before.every((value, at) => value === now[at]);
}

/**
 * The clock of a disk stands still between two ticks: 10 ms on Linux at the slowest, 2 s on a memory stick (from memory).
 * What was read this shortly after it was saved may have been saved once more since, at the same time.
 */
const TICK_MS = 2_000;

/** Whether a file saved again since it was read would show another time. */
export function isSettled([, mtimeMs, ctimeMs]: FileState, readAtMs: number): boolean {
  return Math.max(mtimeMs, ctimeMs) < readAtMs - TICK_MS;
}
