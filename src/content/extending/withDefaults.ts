/** The values of a protocol as they hold. */
import { valueAt } from '../path.ts';

/** What is written, and the defaults of what is not; a default that was transformed when read is as good as written. */
export function withDefaults(written: unknown, read: unknown): unknown {
  if (Array.isArray(written))
    return written.map((entry: unknown, index) => withDefaults(entry, valueAt(read, [index])));
  if (typeof written !== 'object' || written === null) return written;
  const keys = new Set([...Object.keys(written), ...Object.keys((read ?? {}) as object)]);
  return Object.fromEntries(
    [...keys].flatMap((key) => {
      const [own, other] = [valueAt(written, [key]), valueAt(read, [key])];
      if (own !== undefined) return [[key, withDefaults(own, other)]];
      return other === undefined ? [] : [[key, other]];
    }),
  );
}
