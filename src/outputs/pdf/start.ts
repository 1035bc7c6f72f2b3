/**
 * Page one: enough to start. Who, the next session, whom to call. The emergency box stands at its foot whatever
 * happens; exercises, for whom and why, and the safety texts that find no room above it come first overleaf.
 */
import type { Block } from './block.ts';
import { pour } from './flow.ts';
import { columnsOf, flow, place, roomPt, turnPage, type Pages } from './pages.ts';
import { drawRules } from './pen.ts';
import { drawRows, fitRows, rowsHeightPt, rowsOf, type Row } from './rows.ts';
import { SAFETY_COLUMNS } from './safety.ts';
import {
  looseEmergency,
  looseMasthead,
  looseOpening,
  looseSafety,
  looseSession,
  type Loose,
  type Session,
  type Start,
} from './startParts.ts';
import { adopt, plant, type Tag } from './tag.ts';

/** One way to set page one. */
interface PageOneLayout {
  readonly session: Loose<Session>;
  readonly abreast: 2 | 3;
  /** For whom and why stands above the session. */
  readonly opened: boolean;
}

/** More exercises than these never stand two in a row on one page. */
const TWO_ABREAST_MOST = 4;

/** White around rules, points; room to spare makes it wider, up to so many times. */
const GAP_PT = 6;
const GAP_GROWTH = 2;

/** Where white stands on page one, in gaps: below the masthead, round the session's heading, below the exercises. */
const GAPS = 4;

/** Draws page one, in the first of the ways that holds all exercises, and the pages that what it left needs. */
export function drawStart(pages: Pages, root: Tag, start: Start): void {
  const { pen } = pages;
  const masthead = looseMasthead(pen, start);
  const opening = looseOpening(pen, start);
  const emergency = looseEmergency(pen, start);
  const safety = looseSafety(pen, start);
  const roomFor = ({ opened, session }: PageOneLayout) =>
    roomPt(pages) -
    masthead.content.heightPt -
    (opened ? opening.content.gapPt + opening.content.heightPt : 0) -
    session.content.heading.heightPt -
    emergency.content.heightPt -
    GAPS * GAP_PT;
  const ways = waysOf(pages, start);
  const rowsIn = ({ session, abreast }: PageOneLayout) => rowsOf(session.content.cells, abreast);
  const fits = (way: PageOneLayout) =>
    fitRows(rowsIn(way), roomFor(way), GAP_PT).count === rowsIn(way).length;
  const way = ways.find(fits) ?? (ways.at(-1) as PageOneLayout);
  const rows = rowsIn(way);
  const { scale, count } = fitRows(rows, roomFor(way), GAP_PT);
  const shown = rows.slice(0, count);
  const sparePt = roomFor(way) - rowsHeightPt(shown, scale, GAP_PT);
  const safe = safety.content;
  const safeHere = count === rows.length && way.opened && goesIn(pages, safe, sparePt - 2 * GAP_PT);
  const growth = safeHere ? 0 : Math.max(0, sparePt) / (GAPS + 2 * Math.max(0, count - 1));
  const gapPt = GAP_PT + Math.min(growth, GAP_PT * (GAP_GROWTH - 1));

  hang(pages, root, [masthead, ...(way.opened ? [opening] : []), way.session]);
  place(pages, [masthead.content, ...(way.opened ? [opening.content] : [])]);
  pages.yPt += gapPt;
  drawRule(pages, pages.pen.look.line.heavyPt);
  pages.yPt += gapPt;
  place(pages, [way.session.content.heading]);
  pages.yPt += gapPt;
  drawRows(pages, shown, way.abreast, scale, gapPt);
  const boxPt = pages.bottomPt - emergency.content.heightPt;
  if (safeHere) {
    hang(pages, root, [safety]);
    pages.bottomPt = boxPt;
    flow(pages, safe, SAFETY_COLUMNS, GAP_PT);
  }
  hang(pages, root, [emergency]);
  emergency.content.draw(pages.pen.look.sheet.leftPt, boxPt);
  hang(pages, root, [...(way.opened ? [] : [opening]), ...(safeHere ? [] : [safety])]);
  turnPage(pages);
  drawLeft(pages, rows.slice(count), way);
  if (!way.opened) flow(pages, [opening.content], 1, pages.pen.look.space.mediumPt);
  if (!safeHere) flow(pages, safe, SAFETY_COLUMNS, pages.pen.look.space.largePt);
}

/** From the roomiest: two in a row, for whom and why above them, then overleaf; then three in a row. */
function waysOf({ pen }: Pages, start: Start): readonly PageOneLayout[] {
  const text = pen.look.style('body');
  const few = start.exercises.length <= TWO_ABREAST_MOST;
  return (few ? ([2, 3] as const) : ([3] as const)).flatMap((abreast) => {
    const session = looseSession(pen, start, { text, abreast });
    return [true, false].map((opened) => ({ session, abreast, opened }));
  });
}

/** Whether the blocks go whole into so much height below what is drawn. */
function goesIn({ pen }: Pages, blocks: readonly Block[], heightPt: number): boolean {
  return pour(blocks, columnsOf(pen, SAFETY_COLUMNS, 0, heightPt)).rest.length === 0;
}

/** Hangs parts into the tree in the order they are read. */
function hang({ pen }: Pages, root: Tag, parts: readonly Loose<unknown>[]): void {
  for (const { tag } of parts) adopt(root, tag);
  plant(pen.doc, root);
}

function drawRule({ pen, yPt }: Pages, widthPt: number): void {
  const { sheet, colour } = pen.look;
  drawRules(pen, [[sheet.leftPt, yPt, sheet.rightPt, yPt]], widthPt, colour.rule);
}

/** Exercises that page one could not hold. */
function drawLeft(pages: Pages, left: readonly Row[], { abreast }: PageOneLayout): void {
  let rows = left;
  while (rows.length > 0) {
    const { scale, count } = fitRows(rows, roomPt(pages), GAP_PT);
    if (count === 0) throw new Error('an exercise is higher than a page');
    drawRows(pages, rows.slice(0, count), abreast, scale, GAP_PT);
    rows = rows.slice(count);
    if (rows.length > 0) turnPage(pages);
  }
}
