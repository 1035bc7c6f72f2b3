/** Somebody waits at a screen, and may save again before a build is done. */
import { setImmediate } from 'node:timers/promises';
import { EXIT } from '../exit.ts';
import { Stop } from '../io/stop.ts';
import type { BuildAsk, Haste } from './buildAsk.ts';

// Half a file is no reason to take a leaflet out of force, nor is one that is away while it is saved.
export async function untilSettled({ haste }: BuildAsk): Promise<void> {
  await haste?.settled();
  await makeWay(haste);
}

/** Waits for what has happened meanwhile to be noticed, and stops where it makes this build an old one. */
export async function makeWay(haste: Haste | undefined): Promise<void> {
  if (haste === undefined) return;
  await setImmediate();
  if (haste.isStale()) throw new Stop(EXIT.busy, 'files were saved while the build was at work');
}
