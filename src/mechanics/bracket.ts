/** Estimates too near to each other to be told apart. */

/** Two estimates nearer than this share are the same to the model. */
export const NOT_SEPARABLE = 0.25;

/**
 * For each value the number of its bracket, counted from 0 at the smallest: a bracket holds all values within 25 % of
 * its lowest. Values of 0 or more, in any order and unit.
 * @example brackets([0.56, 0.33, 0.69, 0.7]) // => [1, 0, 1, 1]
 */
export function brackets(values: readonly number[]): readonly number[] {
  const ascending = [...values].sort((left, right) => left - right);
  const lowest: number[] = [];
  for (const value of ascending)
    if (lowest.length === 0 || value > (lowest.at(-1) as number) * (1 + NOT_SEPARABLE)) lowest.push(value);
  return values.map((value) => lowest.findLastIndex((low) => value >= low));
}
