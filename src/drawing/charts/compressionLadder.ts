/** The ladder: all cards by squeeze, the caps of the stages as lines, a bracket round those that cannot be told apart. */
import type { Drawing, Label, Shape } from '../drawing.ts';
import {
  box,
  chart,
  flagsOf,
  flagWords,
  LINE_HEIGHT,
  pointer,
  rowsOf,
  stageWords,
  SMALL,
  stroke,
  TEXT,
  words,
  wrapped,
  type Flag,
} from './shapes.ts';

export interface Ladder {
  readonly rungs: readonly {
    readonly title: string;
    readonly compressionBw: number;
    readonly prescribed: boolean;
    /** Rungs with the same number stand in one bracket. */
    readonly bracket: number;
  }[];
  readonly caps: readonly { readonly stage: string; readonly compressionBw: number }[];
}

const TITLE_SHARE = 0.4;
const ROW_GAP = 16;
const BAR = 18;
const VALUE_ROOM = 86;
const BRACKET_ROOM = 40;

interface Row {
  readonly rung: Ladder['rungs'][number];
  readonly lines: readonly string[];
  readonly top: number;
  readonly bottom: number;
}

/**
 * The ladder, `widthMm` millimetres wide and as tall as its rungs need, in the order of their squeeze (body weights).
 * Prescribed cards are bold, marked and filled; the others are outlined, so that grey says it too.
 */
export function compressionLadder(ladder: Ladder, widthMm: number): Drawing {
  const width = widthMm * 10;
  const titleWidth = width * TITLE_SHARE;
  const left = titleWidth + 24;
  const right = width - VALUE_ROOM - BRACKET_ROOM;
  const most = Math.max(
    0.1,
    ...ladder.rungs.map(({ compressionBw }) => compressionBw),
    ...ladder.caps.map(({ compressionBw }) => compressionBw),
  );
  const xOf = (bw: number) => left + (Math.max(0, bw) / most) * (right - left);
  const caps = capFlags(ladder, xOf, width);
  const rows = rowsFrom(ladder, titleWidth, caps.height + ROW_GAP);
  const bottom = (rows[rows.length - 1]?.bottom ?? caps.height) + ROW_GAP;
  return chart(
    width,
    bottom + 8,
    [
      stroke(
        [
          [left, caps.height + 4],
          [left, bottom],
        ],
        'prop',
        3,
      ),
      ...rows.map((row) => bar(row, left, xOf)),
      ...caps.flags.map(({ x }, index) =>
        stroke(
          [
            [x, (caps.baselines[index] as number) - SMALL],
            [x, bottom],
          ],
          'arc',
          4,
          [14, 9],
        ),
      ),
      ...caps.words.map(({ ground }) => ground),
      ...rows
        .filter(({ rung }) => rung.prescribed)
        .map(({ top }) => pointer(12, top + LINE_HEIGHT / 2, 20, 'workLeg')),
      ...brackets(rows, width - BRACKET_ROOM + 12),
    ],
    [...caps.words.map(({ label }) => label), ...rows.flatMap((row) => rowLabels(row, width - BRACKET_ROOM))],
  );
}

function rowsFrom(ladder: Ladder, titleWidth: number, firstTop: number): readonly Row[] {
  const sorted = ladder.rungs.toSorted((a, b) => a.compressionBw - b.compressionBw);
  return sorted.reduce<readonly Row[]>((rows, rung) => {
    const top = (rows[rows.length - 1]?.bottom ?? firstTop - ROW_GAP) + ROW_GAP;
    const lines = wrapped(rung.title, titleWidth - 40, TEXT);
    return [...rows, { rung, lines, top, bottom: top + lines.length * LINE_HEIGHT }];
  }, []);
}

function bar({ rung, top, bottom }: Row, left: number, xOf: (bw: number) => number): Shape {
  const middle = (top + bottom) / 2;
  const edges = {
    left,
    right: Math.max(left + 3, xOf(rung.compressionBw)),
    top: middle - BAR / 2,
    bottom: middle + BAR / 2,
  };
  return rung.prescribed ? box(edges, 'workLeg') : box(edges, 'propFill', 'prop');
}

function rowLabels({ rung, lines, top, bottom }: Row, valueRight: number): readonly Label[] {
  const weight = rung.prescribed ? 'bold' : 'regular';
  const baseline = (index: number) => top + index * LINE_HEIGHT + TEXT * 0.92;
  const value = { x: valueRight, y: (top + bottom) / 2 + TEXT * 0.34, anchor: 'end' } as const;
  return [
    ...lines.map((line, index) => words(line, { x: 32, y: baseline(index), anchor: 'start' }, 'ink', weight)),
    words(rung.compressionBw.toFixed(2), value, 'quiet', weight),
  ];
}

function brackets(rows: readonly Row[], x: number): readonly Shape[] {
  const numbers = [...new Set(rows.map(({ rung }) => rung.bracket))];
  return numbers.flatMap((number) => {
    const members = rows.filter(({ rung }) => rung.bracket === number);
    const [first, last] = [members[0], members[members.length - 1]];
    if (first === undefined || last === undefined || members.length < 2) return [];
    const [top, bottom] = [first.top + 4, last.bottom - 4];
    return [
      stroke(
        [
          [x, top],
          [x + 14, top],
          [x + 14, bottom],
          [x, bottom],
        ],
        'ink',
        4,
      ),
    ];
  });
}

interface Caps {
  readonly height: number;
  readonly flags: readonly Flag[];
  readonly baselines: readonly number[];
  readonly words: readonly ReturnType<typeof flagWords>[];
}

function capFlags({ caps }: Ladder, xOf: (bw: number) => number, width: number): Caps {
  const flags = flagsOf(
    caps.map(({ stage, compressionBw }) => ({
      x: xOf(compressionBw),
      text: `${stageWords(stage)}: ${compressionBw.toFixed(2)}`,
    })),
    width,
    SMALL,
  );
  const height = rowsOf(flags) * LINE_HEIGHT + 8;
  const baselines = flags.map(({ row }) => height - 12 - row * LINE_HEIGHT);
  return {
    height,
    flags,
    baselines,
    words: flags.map((flag, index) => flagWords(flag, baselines[index] as number, 'arc', 'bold', SMALL)),
  };
}
