/** How wide the columns of a table are, from what stands in them. */

/** What a column asks for, points: its widest word, and its widest cell set in one line. */
export interface Wish {
  readonly leastPt: number;
  readonly naturalPt: number;
}

/**
 * Widths in points that sum to the room. Every column gets its widest word while there is room for all of them, then a
 * share of what is left by how much more it wishes; too narrow a room is shared by the widest words.
 */
export function columnWidthsPt(wishes: readonly Wish[], roomPt: number): readonly number[] {
  const least = sum(wishes.map((wish) => wish.leastPt));
  const natural = sum(wishes.map((wish) => wish.naturalPt));
  if (least >= roomPt) return wishes.map((wish) => (wish.leastPt / least) * roomPt);
  if (natural <= roomPt) return wishes.map((wish) => wish.naturalPt + (roomPt - natural) / wishes.length);
  const share = (roomPt - least) / (natural - least);
  return wishes.map((wish) => wish.leastPt + (wish.naturalPt - wish.leastPt) * share);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
