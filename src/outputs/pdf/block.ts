/** The one shape everything on a page has: a height, the white it wants above it, and how to draw itself. */

export interface Block {
  readonly heightPt: number;
  /** White above, dropped at the head of a column. */
  readonly gapPt: number;
  /** A heading stays with what it heads. */
  readonly keepWithNext: boolean;
  /** Upper left corner in points, on the page in hand. */
  draw(xPt: number, yPt: number): void;
  /**
   * Two blocks for this one, the first no higher than the room; null when it cannot be parted there.
   * Left out by what must stay whole.
   */
  split?(roomPt: number): readonly [Block, Block] | null;
}

/** The same block with other white above it. */
export function withGap(block: Block, gapPt: number): Block {
  return { ...block, gapPt };
}

/** Height of blocks set under one another at the head of a column, points. */
export function stackHeightPt(blocks: readonly Block[]): number {
  return blocks.reduce((sum, block, at) => sum + (at === 0 ? 0 : block.gapPt) + block.heightPt, 0);
}

/** Draws blocks under one another from the upper left corner and gives the y below the last, points. */
export function drawStack(blocks: readonly Block[], xPt: number, yPt: number): number {
  let belowPt = yPt;
  blocks.forEach((block, at) => {
    if (at > 0) belowPt += block.gapPt;
    block.draw(xPt, belowPt);
    belowPt += block.heightPt;
  });
  return belowPt;
}

/** The block kept whole while it is no higher than this, so that it moves to the next page instead of parting. */
export function kept(block: Block, mostPt: number): Block {
  if (block.heightPt > mostPt) return block;
  const { heightPt, gapPt, keepWithNext, draw } = block;
  return { heightPt, gapPt, keepWithNext, draw };
}
