/** Laws of setting text and pages: nothing lost, nothing over the edge, no heading left behind. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stackHeightPt, type Block } from '../../src/outputs/pdf/block.ts';
import { columnWidthsPt } from '../../src/outputs/pdf/columns.ts';
import { pour, pourEven, type Column } from '../../src/outputs/pdf/flow.ts';
import type { TextStyle } from '../../src/outputs/pdf/sheet.ts';
import { wrap } from '../../src/outputs/pdf/wrap.ts';
import { measurer } from '../outputs/pdf/make.ts';

const SEED = { seed: 20260303, numRuns: 300 };

const style = (over: Partial<TextStyle>): TextStyle => ({
  cut: 'regular',
  sizePt: 10,
  leadingPt: 13,
  colour: '#000000',
  tabular: false,
  ...over,
});
const STYLES = [
  style({}),
  style({ cut: 'bold' }),
  style({ tabular: true, sizePt: 8.5 }),
  style({ sizePt: 26 }),
];

const runs = fc.array(
  fc.record({
    text: fc.string({ unit: fc.constantFrom(...'abcdefgh ,-/–0123→ \u00a0éŁ'), maxLength: 60 }),
    style: fc.constantFrom(...STYLES),
  }),
  { minLength: 1, maxLength: 5 },
);

describe('wrapping', () => {
  it('loses no letter and adds none', () => {
    fc.assert(
      fc.property(runs, fc.integer({ min: 20, max: 500 }), (given, roomPt) => {
        const lines = wrap(given, roomPt, measurer);
        const out = lines.flatMap(({ pieces }) => pieces.map(({ text }) => text)).join('');
        const bare = (text: string) => text.replaceAll(' ', '');
        expect(bare(out)).toBe(bare(given.map(({ text }) => text).join('')));
      }),
      SEED,
    );
  });

  it('makes no line wider than its room, unless one letter is', () => {
    fc.assert(
      fc.property(runs, fc.integer({ min: 20, max: 500 }), (given, roomPt) => {
        for (const { widthPt, pieces } of wrap(given, roomPt, measurer)) {
          const letters = [
            ...pieces
              .map(({ text }) => text)
              .join('')
              .trim(),
          ];
          if (letters.length > 1) expect(widthPt).toBeLessThanOrEqual(roomPt + 0.02);
        }
      }),
      SEED,
    );
  });

  it('sets the pieces of a line end to end', () => {
    fc.assert(
      fc.property(runs, fc.integer({ min: 60, max: 500 }), (given, roomPt) => {
        for (const { pieces } of wrap(given, roomPt, measurer))
          pieces.forEach(({ xPt }, at) => {
            const before = pieces[at - 1];
            expect(xPt).toBeCloseTo(before ? before.xPt + before.widthPt : 0, 6);
          });
      }),
      SEED,
    );
  });
});

/** A block of lines ten points high, numbered so that nothing can be lost unseen. */
interface Numbered extends Block {
  readonly lines: readonly number[];
}

function numbered(lines: readonly number[], gapPt: number, keepWithNext: boolean, whole: boolean): Numbered {
  const block = { lines, heightPt: 10 * lines.length, gapPt, keepWithNext, draw: () => undefined };
  if (whole || keepWithNext) return block;
  return {
    ...block,
    split: (roomPt) => {
      const fits = Math.min(Math.floor(roomPt / 10), lines.length - 2);
      if (fits < 2) return null;
      return [
        numbered(lines.slice(0, fits), gapPt, false, false),
        numbered(lines.slice(fits), 0, false, false),
      ];
    },
  };
}

const blocks = fc
  .array(
    fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 0, max: 20 }), fc.boolean(), fc.boolean()),
    {
      minLength: 1,
      maxLength: 25,
    },
  )
  .map((shapes) => {
    let next = 0;
    return shapes.map(([count, gapPt, heads, whole], at) => {
      // A heading is short and never the last thing.
      const isHeading = heads && at < shapes.length - 1 && count < 3;
      return numbered(
        Array.from({ length: count }, () => next++),
        gapPt,
        isHeading,
        whole,
      );
    });
  });

const columns = fc
  .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 150, max: 400 }))
  .map(([count, heightPt]) =>
    Array.from({ length: count }, (_, at): Column => ({ xPt: 100 * at, topPt: 50, bottomPt: 50 + heightPt })),
  );

const linesOf = (some: readonly Block[]) => some.flatMap((block) => (block as Numbered).lines);

describe.each([
  ['pouring', pour],
  ['pouring evenly', pourEven],
])('%s', (_, set) => {
  it('keeps every line, in order', () => {
    fc.assert(
      fc.property(blocks, columns, (given, into) => {
        const { placed, rest } = set(given, into);
        expect([...linesOf(placed.map(({ block }) => block)), ...linesOf(rest)]).toEqual(linesOf(given));
      }),
      SEED,
    );
  });

  it('lets nothing out of its column and nothing over another', () => {
    fc.assert(
      fc.property(blocks, columns, (given, into) => {
        const { placed } = set(given, into);
        for (const column of into) {
          let freePt = column.topPt;
          for (const { block, xPt, yPt } of placed) {
            if (xPt !== column.xPt) continue;
            expect(yPt).toBeGreaterThanOrEqual(freePt - 1e-6);
            freePt = yPt + block.heightPt;
          }
          expect(freePt).toBeLessThanOrEqual(column.bottomPt + 0.01);
        }
      }),
      SEED,
    );
  });

  it('parts no heading from what it heads', () => {
    fc.assert(
      fc.property(blocks, columns, (given, into) => {
        const { placed, rest } = set(given, into);
        placed.forEach(({ block, xPt }, at) => {
          if (!block.keepWithNext) return;
          const next = placed[at + 1];
          expect(next, `a heading is the last thing set, ${rest.length} left`).toBeDefined();
          expect(next?.xPt).toBe(xPt);
        });
      }),
      SEED,
    );
  });
});

describe('pouring evenly', () => {
  it('is never longer than pouring plainly, and never shorter than the average', () => {
    fc.assert(
      fc.property(blocks, columns, (given, into) => {
        const [even, plain] = [pourEven(given, into), pour(given, into)];
        if (plain.rest.length > 0) return;
        expect(even.rest).toEqual([]);
        expect(even.bottomPt).toBeLessThanOrEqual(plain.bottomPt + 0.5);
        const gaps = given.reduce((sum, block) => sum + block.gapPt, 0);
        expect(even.bottomPt - 50).toBeGreaterThanOrEqual((stackHeightPt(given) - gaps) / into.length - 0.5);
      }),
      SEED,
    );
  });
});

describe('column widths', () => {
  const wishes = fc.array(
    fc
      .tuple(fc.integer({ min: 5, max: 120 }), fc.integer({ min: 0, max: 300 }))
      .map(([leastPt, more]) => ({ leastPt, naturalPt: leastPt + more })),
    { minLength: 1, maxLength: 8 },
  );

  it('fill the room, and give every column its widest word where there is room for all', () => {
    fc.assert(
      fc.property(wishes, fc.integer({ min: 50, max: 800 }), (given, roomPt) => {
        const widths = columnWidthsPt(given, roomPt);
        expect(widths.reduce((sum, width) => sum + width, 0)).toBeCloseTo(roomPt, 6);
        const least = given.reduce((sum, { leastPt }) => sum + leastPt, 0);
        if (least <= roomPt)
          widths.forEach((width, at) => expect(width).toBeGreaterThanOrEqual(given[at]!.leastPt - 1e-6));
      }),
      SEED,
    );
  });
});
