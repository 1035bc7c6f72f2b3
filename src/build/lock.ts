/** One build at a time in one output folder. */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { EXIT } from './exit.ts';
import { Stop } from './fault.ts';

const NAME = '.loadleaf-lock';

/** Runs the work while holding the lock; a second build stops with 75. A lock left by a build that died is taken over. */
export async function locked<T>(out: string, work: () => Promise<T>): Promise<T> {
  const lock = join(out, NAME);
  try {
    mkdirSync(out, { recursive: true });
  } catch (error) {
    throw new Stop(EXIT.cannotCreate, `cannot create ${out}: ${(error as Error).message}`);
  }
  take(lock);
  try {
    return await work();
  } finally {
    rmSync(lock, { force: true });
  }
}

function take(lock: string): void {
  for (const last of [false, true]) {
    try {
      writeFileSync(lock, String(process.pid), { flag: 'wx' });
      return;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== 'EEXIST') {
        throw new Stop(EXIT.cannotWrite, `cannot write in ${lock}: ${(error as Error).message}`);
      }
      if (last || holderLives(lock))
        throw new Stop(
          EXIT.busy,
          `another build is writing here (${lock}); wait for it, or remove that file if none is running`,
        );
      rmSync(lock, { force: true });
    }
  }
}

function holderLives(lock: string): boolean {
  try {
    const holder = Number(readFileSync(lock, 'utf8'));
    if (!Number.isInteger(holder) || holder <= 0) return false;
    process.kill(holder, 0);
    return true;
  } catch (error) {
    // No such process, or the lock went while we looked; not being allowed to signal means it lives.
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}
