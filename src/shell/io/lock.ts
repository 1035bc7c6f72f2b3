/**
 * One build at a time in one output folder, on this machine, in another container or on another host. The lock is a folder
 * that holds one file of its holder. Renaming onto a folder that is not empty fails, so of two builds one gets it; and
 * the file's own name makes sure that a lock left by a build that died is broken, never one that was taken a moment ago.
 *
 * A holder on this machine is asked for by its process and when that began; of one elsewhere only its signs of life tell:
 * it writes its file again every few seconds, and one that was not written for long is given up. Times are those of the
 * disk the folder lies on, so that no two clocks are compared.
 */
import {
  existsSync,
  mkdirSync,
  openSync,
  closeSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  rmdirSync,
  statSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { makeFolder, onDisk } from './disk.ts';
import { EXIT } from '../exit.ts';
import { answers, holderOf, lives, thisHolder } from './holder.ts';
import { Stop } from './stop.ts';

const NAME = '.loadleaf-lock';

/** How often a holder shows that it lives [choice]. */
const SIGN_MS = 5_000;

/** After how long without a sign a holder elsewhere is given up: longer than any step of a build takes [choice]. */
const GIVEN_UP_MS = 60_000;

/**
 * Runs the work while holding the lock of the folder, which is created if need be; while another build holds it, stops
 * with 75. The work calls `hold` before everything it changes: it shows that the holder lives, and stops with 75 when
 * the lock was given up by others, as after a sleep of the machine.
 */
export async function locked<T>(out: string, work: (hold: () => void) => Promise<T>): Promise<T> {
  onDisk(out, () => makeFolder(out));
  const lock = join(out, NAME);
  const name = take(lock);
  clearAbandoned(out);
  const place = join(lock, name);
  let signedAt = Date.now();
  const sign = (): void => {
    signedAt = Date.now();
    if (!isSigned(place))
      throw new Stop(EXIT.busy, 'the lock was given up while the build stood still; build again');
  };
  const ticking = setInterval(() => isSigned(place), SIGN_MS).unref();
  try {
    return await work(() => {
      if (Date.now() - signedAt >= SIGN_MS || !existsSync(place)) sign();
    });
  } finally {
    clearInterval(ticking);
    release(lock, name);
  }
}

/** Whether another build is at work, by our own clock: for where a full disk tells no time of its own. */
export function isHeldByOther(out: string): boolean {
  const lock = join(out, NAME);
  return namesIn(lock).some((holder) => isHeld(join(lock, holder), holder, Date.now()));
}

/** Returns the name of our file in the lock. */
function take(lock: string): string {
  const name = `${process.pid}-${randomUUID()}`;
  const own = `${lock}.${name}`;
  onDisk(lock, () => {
    try {
      mkdirSync(own);
      writeFileSync(join(own, name), `${JSON.stringify(thisHolder())}\n`);
    } catch (error) {
      rmSync(own, { recursive: true, force: true });
      throw error;
    }
  });
  if (renamed(own, lock)) return name;
  const present = statSync(join(own, name)).mtimeMs;
  const holders = namesIn(lock);
  if (!holders.some((holder) => isHeld(join(lock, holder), holder, present))) {
    for (const gone of holders) rmSync(join(lock, gone), { force: true });
    if (renamed(own, lock)) return name;
  }
  rmSync(own, { recursive: true, force: true });
  throw new Stop(EXIT.busy, `another build is at work here; wait for it, or remove ${lock} if there is none`);
}

/** Writes our file again, which sets its time on the disk; false when it is not there any more. */
function isSigned(place: string): boolean {
  try {
    const handle = openSync(place, 'r+');
    try {
      writeSync(handle, `${JSON.stringify(thisHolder())}\n`, 0);
    } finally {
      closeSync(handle);
    }
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code !== 'ENOENT';
  }
}

/** Whether the holder of a file is to be waited for. `presentMs`: the disk's own time. */
function isHeld(place: string, name: string, presentMs: number): boolean {
  const found = statSync(place, { throwIfNoEntry: false });
  if (found === undefined) return false;
  const isFresh = presentMs - found.mtimeMs < GIVEN_UP_MS;
  const holder = holderOf(readFileSync(place, 'utf8'));
  if (holder !== null) return lives(holder) ?? isFresh;
  // Of an earlier version, named by the process alone. Our own number was somebody else's, in a container before this one.
  const pid = Number(name);
  return isFresh && Number.isInteger(pid) && pid > 0 && pid !== process.pid && answers(pid);
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

function namesIn(lock: string): string[] {
  return existsSync(lock) ? readdirSync(lock) : [];
}

// Builds that were killed before they had the lock leave their own folder behind.
function clearAbandoned(out: string): void {
  const present = statSync(join(out, NAME)).mtimeMs;
  for (const name of readdirSync(out)) {
    if (!name.startsWith(`${NAME}.`)) continue;
    const own = name.slice(NAME.length + 1);
    if (isHeld(join(out, name, own), own, present)) continue;
    rmSync(join(out, name), { recursive: true, force: true });
  }
}

function release(lock: string, name: string): void {
  rmSync(join(lock, name), { force: true });
  try {
    rmdirSync(lock);
  } catch {
    // The next build has it already.
  }
}
