/** How heavy an exercise may be under the caps. */
import type { Body } from './body.ts';
import type { Caps, Limit } from './cap.ts';
import { gentleEndOf, WHOLE, type Interval } from './gentle.ts';
import type { Movement } from './movement.ts';
import { bisect, breakIn, type Barred } from './range.ts';
import { samplesOf } from './sweep.ts';

export interface AdmittedLoad {
  readonly admitted: true;
  readonly loadKg: number;
  /** `full`: the heaviest that was asked about. */
  readonly decidedBy: Limit | 'pose' | 'full';
}

/** Heaviest load anybody is asked about, kilograms. */
const HEAVIEST_KG = 100;

/**
 * The largest load up to `mostKg` under which every cap holds at all samples of the interval, for it and every lighter
 * one; barred when a cap breaks with no load at all. Never larger when a cap is tightened. Not rounded to any kit.
 */
export function largestLoad(
  movement: Movement,
  body: Body,
  caps: Caps,
  interval: Interval = WHOLE,
  mostKg: number = HEAVIEST_KG,
): AdmittedLoad | Barred {
  const samples = samplesOf(movement, interval);
  // From the far end on: it mostly decides, and every other sample then costs one look.
  const farFirst = gentleEndOf(movement, body, 0, caps.angle) === 'start' ? samples.toReversed() : samples;
  for (const t of farFirst) {
    const barredBy = breakIn(movement, body, 0, caps, t);
    if (barredBy) return { admitted: false, barredBy };
  }
  let loadKg = mostKg;
  let decidedBy: AdmittedLoad['decidedBy'] = 'full';
  for (const t of farFirst) {
    const broken = breakIn(movement, body, loadKg, caps, t);
    if (!broken) continue;
    const held = bisect((kg) => breakIn(movement, body, kg, caps, t) === null, 0, loadKg);
    decidedBy = breakIn(movement, body, held + (loadKg - held) * HAIR, caps, t) ?? broken;
    loadKg = held;
  }
  return { admitted: true, loadKg, decidedBy };
}

// Just above the solved load, where exactly the deciding cap is broken.
const HAIR = 1e-6;
