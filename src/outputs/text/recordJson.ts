/** The whole programme as one JSON text: same programme, same bytes, on every machine. */
import type { Programme } from '../../programme/programme.ts';

// A tenth of a millimetre in a posture, far below any figure that is shown; hides last bits of sines and cosines.
const DECIMALS = 4;

/** `record.json`: keys in the order of their code units, numbers to four decimals, two spaces, a line feed at the end. */
export function recordJson(programme: Programme): string {
  return `${JSON.stringify(settled(programme), null, 2)}\n`;
}

function settled(value: unknown): unknown {
  if (typeof value === 'number') return rounded(value);
  if (Array.isArray(value)) return value.map(settled);
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1));
  return Object.fromEntries(entries.map(([key, inner]) => [key, settled(inner)]));
}

function rounded(value: number): number {
  if (!Number.isFinite(value)) throw new TypeError(`${value} in a programme`);
  const scale = 10 ** DECIMALS;
  // Adding 0 turns -0 into 0.
  return Number.isInteger(value) ? value + 0 : Math.round(value * scale) / scale + 0;
}
