/** Rounding towards the gentle end: never up, and never by binary dust. */

// 0.3 / 0.1 is 2.999…: what lies within a billionth below a multiple counts as that multiple.
const DUST = 1e-9;

/** The largest multiple of `step` not above `value` (both in the same unit, step > 0). @example roundDown(44.9, 5) // => 40 */
export function roundDown(value: number, step: number): number {
  return tidy(Math.floor(value / step + DUST) * step);
}

/** The multiple of `step` nearest to `value`, halves upward (step > 0). @example roundTo(1.26, 0.1) // => 1.3 */
export function roundTo(value: number, step: number): number {
  return tidy(Math.round(value / step + DUST) * step);
}

// Sine and its like differ between engines in their last digits; of what is drawn, a millionth is far above that.
const LAST_DIGITS = 1e-6;

/** The nearest whole number, halves upward in every engine, however a sine came out. @example wholeOf(42.49999999) // => 43 */
export function wholeOf(value: number): number {
  return Math.round(value + LAST_DIGITS) + 0;
}

/** @example wholeMm(0.0425) // => 43 */
export function wholeMm(metres: number): number {
  return wholeOf(metres * 1000);
}

// 7 * 0.1 is 0.7000000000000001; ten decimals are far below any figure shown.
function tidy(value: number): number {
  return Math.round(value * 1e10) / 1e10 + 0;
}
