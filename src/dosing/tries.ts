/** What an entry of a progression would do next to one exercise. */
import { mayChange } from './kinds.ts';
import { load } from './loadChange.ts';
import { lever, range } from './rangeChange.ts';
import { amountOf, type ProgressionEntry } from './rung.ts';
import { stopped, type Standing, type Tries } from './step.ts';
import { days, hold, repetitions, sets, tempo } from './volumeChange.ts';

const STEP_OF = { range, load, repetitions, hold, sets, tempo, days, lever } as const;

/** The ways to take the next step of one entry, or that it has come to its end, or what stops it outright. */
export function triesOf(entry: ProgressionEntry, standing: Standing): Tries {
  const { at } = standing;
  const wished = amountOf(entry.change, at);
  if (wished === null) return stopped(entry.change === 'range' ? 'fixedRange' : 'kind', 0);
  if (!mayChange(at.dose.kind, entry.change)) return stopped('kind', wished);
  // A repetition maximum falls as the load rises; without a weight it goes by repetitions like any other set.
  if (entry.change === 'repetitions' && at.dose.kind === 'repetition-maximum' && at.loadKg > 0)
    return load({ ...entry, to: null }, standing);
  return STEP_OF[entry.change](entry, standing);
}
