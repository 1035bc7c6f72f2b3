/** Watches a folder of an author's files and every folder below it. */
import { readdirSync, watch, type FSWatcher } from 'node:fs';
import { join } from 'node:path';
import { isFolder } from '../io/disk.ts';

export interface Watching {
  close(): void;
}

/**
 * Wakes at every change below the folder. Each folder is watched by itself: Node's own watching of a whole tree keeps to
 * the old file where an editor saves by renaming a new one over it, and sees no later save.
 */
export function watchTree(
  top: string,
  wake: () => void,
  cannot: (error: Error) => void,
  watchFolder: (folder: string, changed: () => void) => FSWatcher = watch,
): Watching {
  const watchers = new Map<string, FSWatcher>();
  const look = (): void => {
    const folders = new Set(foldersBelow(top));
    for (const [folder, watcher] of watchers) if (!folders.has(folder)) drop(folder, watcher);
    for (const folder of folders) if (!watchers.has(folder)) add(folder);
  };
  const drop = (folder: string, watcher: FSWatcher): void => {
    watcher.close();
    watchers.delete(folder);
  };
  const add = (folder: string): void => {
    try {
      const watcher = watchFolder(folder, () => {
        look();
        wake();
      });
      watcher.on('error', (error) => {
        drop(folder, watcher);
        // A folder that was taken away is no fault; its own folder tells of it.
        if (folder === top) cannot(error);
      });
      watchers.set(folder, watcher);
    } catch (error) {
      // One that went between the look and the watching is missed by nobody.
      if (folder === top || isFolder(folder)) cannot(error as Error);
    }
  };
  look();
  return { close: () => watchers.forEach((watcher, folder) => drop(folder, watcher)) };
}

// Hidden ones are passed over: a repository writes into its own all the time.
function foldersBelow(folder: string): string[] {
  return [folder, ...below(folder).flatMap((name) => foldersBelow(join(folder, name)))];
}

function below(folder: string): string[] {
  try {
    return readdirSync(folder, { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && !entry.name.startsWith('.'))
      .map(({ name }) => name);
  } catch {
    return [];
  }
}
