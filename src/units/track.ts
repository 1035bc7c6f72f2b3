/** Numbers that change along a way, in as few values as tell them. */
import { wholeOf } from './round.ts';

/** One number for what stays as it is, else its values at even steps from the start to the end. */
export type Track = number | readonly number[];

/** The value at a share of the way (0 to 1), straight between two steps. @example trackAt([0, 10, 40], 0.75) // => 25 */
export function trackAt(track: Track, share: number): number {
  if (typeof track === 'number') return track;
  const place = Math.min(Math.max(share, 0), 1) * (track.length - 1);
  const step = Math.min(Math.floor(place), track.length - 2);
  const [before = 0, after = before] = [track[step], track[step + 1]];
  return before + (after - before) * (place - step);
}

/**
 * The shortest track that comes within `within` of all these values, which stand at even steps: every eighth, fourth,
 * second of them or all; rounded to multiples of 1 / `perUnit`.
 */
export function trackOf(values: readonly number[], within: number, perUnit: number): Track {
  const rounded = values.map((value) => wholeOf(value * perUnit) / perUnit);
  const steps = values.length - 1;
  const thinned = [1, 2, 4, 8]
    .filter((parts) => steps % parts === 0)
    .map((parts) => rounded.filter((_, at) => at % (steps / parts) === 0));
  const first = rounded[0] ?? 0;
  const fits = (track: Track) =>
    values.every((value, at) => Math.abs(trackAt(track, steps === 0 ? 0 : at / steps) - value) <= within);
  return fits(first) ? first : (thinned.find(fits) ?? rounded);
}
