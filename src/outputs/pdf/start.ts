/**
 * Page one: enough to start. Who and why, the next session, the pain rule and its kin, when to get help. The safety
 * texts stand at its foot whatever happens; the exercises above them in as much detail as goes in.
 */
import type { Block } from './block.ts';
import type { ExerciseCell } from './exercise.ts';
import type { Detail } from './facts.ts';
import { place, roomPt, type Pages } from './pages.ts';
import { drawRules, type Pen } from './pen.ts';
import { drawRows, fitRows, rowsHeightPt, rowsOf } from './rows.ts';
import { pourSafety } from './safety.ts';
import type { TextStyle } from './sheet.ts';
import { composer, type Parts, type Start, type Way } from './startParts.ts';
import { adopt, plant, type Tag } from './tag.ts';

/** What page one left for the pages after it. */
export interface Overleaf {
  /** Exercises not on page one at all, and safety texts that found no room: seldom, and never silently cut. */
  readonly cells: readonly ExerciseCell[];
  readonly blocks: readonly Block[];
  readonly detail: Detail;
}

/** Draws page one in the first of these ways that holds all exercises; else in the last, and gives what is left. */
export function drawStart(pages: Pages, root: Tag, start: Start): Overleaf {
  const parts = composer(pages.pen, start);
  const ways = waysOf(pages.pen, start.exercises.length);
  const way = ways.find((one) => planOf(pages, parts(one), one).left === 0) ?? (ways.at(-1) as Way);
  const chosen = parts(way);
  for (const loose of chosen.loose) adopt(root, loose);
  plant(pages.pen.doc, root);
  return drawParts(pages, chosen, way);
}

/** More exercises than these never stand on one page in full or two in a row. */
const FULL_MOST = 4;

/** From the fullest down. 8.5 points of this typeface have the height of small letters that 9 points of Times have. */
function waysOf({ look }: Pen, exercises: number): readonly Way[] {
  const [body, small, label] = [look.style('body'), look.style('small'), look.style('label')];
  const smaller: TextStyle = { ...label, cut: small.cut };
  const smallest: TextStyle = { ...smaller, sizePt: 8.25, leadingPt: 10.5 };
  const roomy = { safety: small, opening: body, gapPt: 8 };
  const tight = { safety: smaller, opening: body, gapPt: 7 };
  const close = { safety: smaller, opening: small, gapPt: 6 };
  const closest = { safety: smallest, opening: smaller, gapPt: 5 };
  const full = { setting: 'full', abreast: 2, whole: true } as const;
  const shorter = { ...full, whole: false };
  const two = { setting: 'close', abreast: 2, whole: false } as const;
  const three = { ...two, abreast: 3 } as const;
  const few = [
    { detail: { text: small, ...full }, ...roomy },
    { detail: { text: smaller, ...full }, ...tight },
    { detail: { text: small, ...shorter }, ...roomy },
    { detail: { text: smaller, ...shorter }, ...tight },
    { detail: { text: small, ...two }, ...close },
    { detail: { text: smaller, ...two }, ...close },
  ];
  return [
    ...(exercises > FULL_MOST ? [] : few),
    { detail: { text: small, ...three }, ...close },
    { detail: { text: smaller, ...three }, ...close },
    { detail: { text: smallest, ...three }, ...closest },
  ];
}

/** What goes where on page one; heights in points. */
interface Plan {
  readonly safetyPt: number;
  readonly drawingPt: number;
  /** Rows of exercises that go in. */
  readonly rows: number;
  /** Rows that do not, and safety texts that do not; 0 when the way holds everything. */
  readonly left: number;
  /** White around rules, the page's spare room shared among them. */
  readonly gapPt: number;
}

/** Where white stands on page one, in gaps: round the session's heading, below the exercises, round the safety texts. */
const GAPS = { head: 1, session: 1.5, rows: 1.3, foot: 2 };

/** White that spare room may add to a gap, at most this many times the gap itself. */
const GAP_GROWTH = 0.7;

function planOf(pages: Pages, parts: Parts, { detail, gapPt }: Way): Plan {
  const setPt = parts.masthead.heightPt + parts.session.heightPt + parts.emergency.heightPt;
  const gaps = GAPS.head + GAPS.session + GAPS.rows + GAPS.foot;
  const roomAtMostPt = roomPt(pages) - setPt - gaps * gapPt;
  const safetyPt = Math.min(parts.safety.heightPt, roomAtMostPt);
  const rows = rowsOf(parts.cells, detail.abreast);
  const { count } = fitRows(rows, roomAtMostPt - safetyPt, gapPt);
  const { drawingPt } = fitRows(rows.slice(0, count), roomAtMostPt - safetyPt, gapPt);
  const between = 2 * Math.max(0, count - 1);
  const sparePt = roomAtMostPt - safetyPt - rowsHeightPt(rows.slice(0, count), drawingPt, gapPt);
  const grownPt = gapPt + Math.min(Math.max(0, sparePt) / (gaps + between), GAP_GROWTH * gapPt);
  const left = rows.length - count + (safetyPt < parts.safety.heightPt ? 1 : 0);
  return { safetyPt, drawingPt, rows: count, left, gapPt: grownPt };
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
  const safety = pourSafety(parts.safety.columns, plan.safetyPt);
  for (const { block, xPt, yPt } of safety.placed) block.draw(xPt, safetyPt + yPt);
  parts.emergency.draw(sheet.leftPt, emergencyPt);
  return { cells: rows.slice(plan.rows).flat(), blocks: safety.rest, detail: way.detail };
}
