/**
 * Page one: enough to start. Who and why, the next session, the pain rule and its kin, when to get help. The safety
 * texts stand at its foot whatever happens; the exercises above them in as much detail as goes in.
 */
import type { LeafletLabels } from '../programme/phrases/labels.ts';
import type { Programme } from '../programme/programme.ts';
import type { Block } from './block.ts';
import { emergencyBlock } from './emergency.ts';
import { exerciseCell, type ExerciseCell, type Pictured } from './exercise.ts';
import type { Detail } from './facts.ts';
import { mastheadBlock } from './masthead.ts';
import { columnWidthPt, place, roomPt, type Pages } from './pages.ts';
import { drawRules, measuringPen, type Pen } from './pen.ts';
import { drawRows, fitRows, rowsHeightPt, rowsOf } from './rows.ts';
import { fitSafety, pourSafety, safetyColumns, type SafetyColumn, type SafetyFit } from './safety.ts';
import { sessionBlock } from './session.ts';
import type { TextStyle } from './sheet.ts';
import { MEASURED_ONLY, type Tag } from './tag.ts';

/** What page one left for the pages after it. */
export interface Overleaf {
  /** Exercises not on page one at all, and safety texts that found no room: seldom, and never silently cut. */
  readonly cells: readonly ExerciseCell[];
  readonly blocks: readonly Block[];
  readonly detail: Detail;
}

/** What page one is made from. */
export interface Start {
  readonly programme: Programme;
  readonly exercises: readonly Pictured[];
  readonly logo: Uint8Array | null;
  readonly labels: LeafletLabels;
}

/** Draws page one in the first of these ways that holds all exercises; else in the last, and gives what is left. */
export function drawStart(pages: Pages, root: Tag, start: Start): Overleaf {
  const dry = measuringPen(pages.pen);
  const ways = waysOf(pages.pen, start.programme);
  const holds = (way: Way) => planOf(pages, partsOf(dry, MEASURED_ONLY, start, way), way).left === 0;
  const way = ways.find(holds) ?? (ways.at(-1) as Way);
  return drawParts(pages, partsOf(pages.pen, root, start, way), way);
}

/** One way to set page one. */
interface Way {
  readonly detail: Detail;
  readonly safety: () => SafetyFit;
  /** White around rules, points. */
  readonly gapPt: number;
  readonly opening: TextStyle;
}

/** More exercises than these never stand in full on one page. */
const FULL_MOST = 4;

type Fitting = () => SafetyFit;

/** The answer of the first call, kept. */
function once<Answer>(ask: () => Answer): () => Answer {
  let answer: { readonly is: Answer } | null = null;
  return () => (answer ??= { is: ask() }).is;
}

/** From the fullest down. 8.5 points of this typeface have the height of small letters that 9 points of Times have. */
function waysOf(pen: Pen, programme: Programme): readonly Way[] {
  const [body, small] = [pen.look.style('body'), pen.look.style('small')];
  const smaller = { ...pen.look.style('label'), cut: small.cut };
  const smallest = { ...smaller, sizePt: 8.25, leadingPt: 10.5 };
  const fits = [small, smaller, smallest].map((style) => once(() => fitSafety(pen, programme, style)));
  const [inSmall, inSmaller, inSmallest] = fits as [Fitting, Fitting, Fitting];
  const roomy = { safety: inSmall, gapPt: 8, opening: body };
  const tight = { safety: inSmaller, gapPt: 7, opening: body };
  const close = { ...tight, gapPt: 6, opening: small };
  const closest = { safety: inSmallest, gapPt: 5, opening: small };
  const full = { setting: 'full', abreast: 2, whole: true } as const;
  const shorter = { ...full, whole: false };
  const two = { setting: 'close', abreast: 2, whole: false } as const;
  const three = { ...two, abreast: 3 } as const;
  const inFull = [
    { detail: { text: small, ...full }, ...roomy },
    { detail: { text: smaller, ...full }, ...tight },
    { detail: { text: small, ...shorter }, ...roomy },
    { detail: { text: smaller, ...shorter }, ...tight },
  ];
  return [
    ...(programme.exercises.length > FULL_MOST ? [] : inFull),
    { detail: { text: small, ...two }, ...close },
    { detail: { text: smaller, ...two }, ...close },
    { detail: { text: small, ...three }, ...close },
    { detail: { text: smaller, ...three }, ...close },
    { detail: { text: smallest, ...three }, ...closest },
  ];
}

interface Parts {
  readonly masthead: Block;
  readonly session: Block;
  readonly cells: readonly ExerciseCell[];
  /** Empty while the page is only measured: how high they are, is known. */
  readonly safety: readonly SafetyColumn[];
  readonly emergency: Block;
}

/** The parts of page one, their elements hung into the tree in reading order. */
function partsOf(
  pen: Pen,
  root: Tag,
  { programme, exercises, logo, labels }: Start,
  { detail, safety, opening }: Way,
): Parts {
  const { sheet } = pen.look;
  const widthPt = sheet.rightPt - sheet.leftPt;
  const masthead = mastheadBlock(pen, root, programme, logo, opening, widthPt);
  const session = root.open('Sect');
  const cellPt = columnWidthPt(pen, detail.abreast);
  return {
    masthead,
    session: sessionBlock(pen, session, programme.nextSession, widthPt),
    cells: exercises.map((one) => exerciseCell(pen, session, one, labels.howFar, detail, cellPt)),
    safety: pen.measuring ? [] : safetyColumns(pen, root, programme, safety()),
    emergency: emergencyBlock(pen, root, programme.emergency, detail.text, widthPt),
  };
}

/** What goes where on page one; heights in points. */
interface Plan {
  readonly safetyPt: number;
  readonly drawingPt: number;
  /** Rows of exercises that go in, and how many do not. */
  readonly rows: number;
  readonly left: number;
  /** White around rules, the page's spare room shared among them. */
  readonly gapPt: number;
}

/** Where white stands on page one, in gaps: round the session's heading, below the exercises, round the safety texts. */
const GAPS = { head: 1, session: 1.5, rows: 1.3, foot: 2 };

/** White that spare room may add to a gap, at most this many times the gap itself. */
const GAP_GROWTH = 0.7;

function planOf(pages: Pages, parts: Parts, { detail, safety, gapPt }: Way): Plan {
  const setPt = parts.masthead.heightPt + parts.session.heightPt + parts.emergency.heightPt;
  const gaps = GAPS.head + GAPS.session + GAPS.rows + GAPS.foot;
  const roomAtMostPt = roomPt(pages) - setPt - gaps * gapPt;
  const safetyPt = Math.min(safety().heightPt, roomAtMostPt);
  const rows = rowsOf(parts.cells, detail.abreast);
  const { count } = fitRows(rows, roomAtMostPt - safetyPt, gapPt);
  const { drawingPt } = fitRows(rows.slice(0, count), roomAtMostPt - safetyPt, gapPt);
  const between = 2 * Math.max(0, count - 1);
  const sparePt = roomAtMostPt - safetyPt - rowsHeightPt(rows.slice(0, count), drawingPt, gapPt);
  const grownPt = gapPt + Math.min(Math.max(0, sparePt) / (gaps + between), GAP_GROWTH * gapPt);
  return { safetyPt, drawingPt, rows: count, left: rows.length - count, gapPt: grownPt };
}

function drawParts(pages: Pages, parts: Parts, way: Way): Overleaf {
  const { sheet, line, colour } = pages.pen.look;
  const { gapPt, ...plan } = planOf(pages, parts, way);
  const { abreast } = way.detail;
  const rows = rowsOf(parts.cells, abreast);
  place(pages, [parts.masthead]);
  pages.yPt += GAPS.head * gapPt;
  drawRules(pages.pen, [[sheet.leftPt, pages.yPt, sheet.rightPt, pages.yPt]], line.heavyPt, colour.rule);
  pages.yPt += (GAPS.session * gapPt) / 2;
  place(pages, [parts.session]);
  pages.yPt += (GAPS.session * gapPt) / 2;
  drawRows(pages, rows.slice(0, plan.rows), abreast, plan.drawingPt, gapPt);
  const emergencyPt = pages.bottomPt - parts.emergency.heightPt;
  const safetyPt = emergencyPt - gapPt - plan.safetyPt;
  drawRules(
    pages.pen,
    [[sheet.leftPt, safetyPt - gapPt, sheet.rightPt, safetyPt - gapPt]],
    line.rulePt,
    colour.rule,
  );
  const safety = pourSafety(parts.safety, plan.safetyPt);
  for (const { block, xPt, yPt } of safety.placed) block.draw(xPt, safetyPt + yPt);
  parts.emergency.draw(sheet.leftPt, emergencyPt);
  return { cells: rows.slice(plan.rows).flat(), blocks: safety.rest, detail: way.detail };
}
