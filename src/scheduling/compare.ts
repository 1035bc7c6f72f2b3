/** Lists of numbers in the order of a dictionary. */

/** Below 0 when `one` comes first, 0 when they are alike; the first difference decides. */
export function compare(one: readonly number[], other: readonly number[]): number {
  for (let index = 0; index < one.length; index += 1) {
    const difference = (one[index] ?? 0) - (other[index] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}
