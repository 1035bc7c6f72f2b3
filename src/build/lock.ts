/**
 * One build at a time in one output folder. The lock is a folder that holds a file named after its holder's process.
 * Renaming onto a folder that is not empty fails, so of two builds one gets it; and the name makes sure that a lock
 * left by a build that died is broken, never one that was taken a moment ago.
 */
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync, rmdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeFolder, onDisk } from './disk.ts';
import { EXIT } from './exit.ts';
import { Stop } from './stop.ts';

const NAME = '.loadleaf-lock';

/** Runs the work while holding the lock of the folder, which is created if need be; while another build holds it, stops with 75. */
export async function locked<T>(out: string, work: () => Promise<T>): Promise<T> {
  onDisk(out, () => makeFolder(out));
  const lock = join(out, NAME);
  take(lock);
  clearAbandoned(out);
  try {
    return await work();
  } finally {
    release(lock);
  }
}

function take(lock: string): void {
  const own = `${lock}.${process.pid}`;
  onDisk(lock, () => {
    rmSync(own, { recursive: true, force: true });
    mkdirSync(own);
    writeFileSync(join(own, String(process.pid)), '');
  });
  if (renamed(own, lock)) return;
  const holders = holdersOf(lock);
  if (!holders.some(lives)) {
    for (const gone of holders) rmSync(join(lock, gone), { force: true });
    if (renamed(own, lock)) return;
  }
  rmSync(own, { recursive: true, force: true });
  throw new Stop(EXIT.busy, `another build is at work here; wait for it, or remove ${lock} if there is none`);
}

function renamed(own: string, lock: string): boolean {
  try {
    renameSync(own, lock);
    return true;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    if (code === 'ENOTEMPTY' || code === 'EEXIST') return false;
    rmSync(own, { recursive: true, force: true });
    return onDisk(lock, () => {
      throw error;
    });
  }
}

function holdersOf(lock: string): string[] {
  return existsSync(lock) ? readdirSync(lock) : [];
}

// Our own number was somebody else's, in a container before this one.
function lives(holder: string): boolean {
  const pid = Number(holder);
  if (!Number.isInteger(pid) || pid <= 0 || pid === process.pid) return false;
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Not being allowed to signal it means that it lives.
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

// Builds that were killed before they had the lock leave their own folder behind.
function clearAbandoned(out: string): void {
  for (const name of readdirSync(out)) {
    if (!name.startsWith(`${NAME}.`) || lives(name.slice(NAME.length + 1))) continue;
    rmSync(join(out, name), { recursive: true, force: true });
  }
}

function release(lock: string): void {
  rmSync(join(lock, String(process.pid)), { force: true });
  try {
    rmdirSync(lock);
  } catch {
    // The next build has it already.
  }
}
