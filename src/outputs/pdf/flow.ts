/** Blocks poured into columns: nothing cut, no heading parted from its text, columns of equal length where they end. */
import { stackHeightPt, type Block } from './block.ts';

export interface Column {
  readonly xPt: number;
  readonly topPt: number;
  readonly bottomPt: number;
}

export interface Placed {
  readonly block: Block;
  readonly xPt: number;
  readonly yPt: number;
}

export interface Poured {
  readonly placed: readonly Placed[];
  /** What found no room, in order. */
  readonly rest: readonly Block[];
  /** Lowest point reached, points. */
  readonly bottomPt: number;
}

/** Steps of the search for equal columns: a thousandth of a page is below a hair. */
const SEARCH_STEPS = 12;

/**
 * Pours blocks into columns, left to right. A block that fits in no empty column and cannot be parted is an error of
 * the caller and throws: cutting it would hide a dose.
 */
export function pour(blocks: readonly Block[], columns: readonly Column[]): Poured {
  const placed: Placed[] = [];
  let rest = blocks;
  let bottomPt = Math.min(...columns.map((column) => column.topPt));
  for (const column of columns) {
    const filled = fill(rest, column);
    placed.push(...filled.placed);
    rest = filled.rest;
    if (filled.placed.length > 0) bottomPt = Math.max(bottomPt, filled.bottomPt);
    if (rest.length === 0) break;
  }
  return { placed, rest, bottomPt };
}

/** As `pour`, in the shortest columns that hold everything; in full ones when even these do not. */
export function pourEven(blocks: readonly Block[], columns: readonly Column[]): Poured {
  const full = pour(blocks, columns);
  if (full.rest.length > 0) return full;
  const roomPt = Math.max(...columns.map((column) => column.bottomPt - column.topPt));
  let [short, long] = [stackHeightPt(blocks) / columns.length - 1, roomPt];
  let best = full;
  for (let step = 0; step < SEARCH_STEPS; step++) {
    const heightPt = (short + long) / 2;
    const tried = pour(
      blocks,
      columns.map((column) => ({ ...column, bottomPt: Math.min(column.bottomPt, column.topPt + heightPt) })),
    );
    if (tried.rest.length === 0) [best, long] = [tried, heightPt];
    else short = heightPt;
  }
  return best;
}

function fill(blocks: readonly Block[], column: Column): Poured {
  const placed: Placed[] = [];
  let yPt = column.topPt;
  for (let next = 0; next < blocks.length;) {
    const chain = chainAt(blocks, next);
    const gapPt = placed.length === 0 ? 0 : (chain[0]?.gapPt ?? 0);
    const fitted = fitChain(chain, column.bottomPt - yPt - gapPt);
    if (!fitted) return { placed, rest: blocks.slice(next), bottomPt: yPt };
    yPt += gapPt;
    fitted.head.forEach((block, at) => {
      if (at > 0) yPt += block.gapPt;
      placed.push({ block, xPt: column.xPt, yPt });
      yPt += block.heightPt;
    });
    next += chain.length;
    if (fitted.tail.length > 0)
      return { placed, rest: [...fitted.tail, ...blocks.slice(next)], bottomPt: yPt };
  }
  return { placed, rest: [], bottomPt: yPt };
}

/** A run of blocks that must begin in one column: headings and the first thing that is none. */
function chainAt(blocks: readonly Block[], from: number): readonly Block[] {
  let end = from;
  while (blocks[end]?.keepWithNext) end += 1;
  return blocks.slice(from, end + 1);
}

function fitChain(
  chain: readonly Block[],
  roomPt: number,
): { head: readonly Block[]; tail: readonly Block[] } | null {
  if (stackHeightPt(chain) <= roomPt + DUST_PT) return { head: chain, tail: [] };
  const heads = chain.slice(0, -1);
  const last = chain.at(-1);
  const usedPt = heads.length === 0 ? 0 : stackHeightPt(heads) + (last?.gapPt ?? 0);
  const parts = last?.split?.(roomPt - usedPt) ?? null;
  return parts ? { head: [...heads, parts[0]], tail: [parts[1]] } : null;
}

/** Sums of the same heights in another order differ by less. */
const DUST_PT = 0.001;
