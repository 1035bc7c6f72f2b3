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
import { drawRules, type Pen } from './pen.ts';
import { drawRows, fitRows, rowsHeightPt, rowsOf } from './rows.ts';
import { pourSafety, safetyIn, type Safety } from './safety.ts';
import { sessionBlock } from './session.ts';
import type { TextStyle } from './sheet.ts';
import { adopt, looseTag, open, plant, type Tag } from './tag.ts';

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
  const parts = composer(pages.pen, start);
  const ways = waysOf(pages.pen, start.exercises.length);
  const way = ways.find((one) => planOf(pages, parts(one), one).left === 0) ?? (ways.at(-1) as Way);
  const chosen = parts(way);
  for (const loose of chosen.loose) adopt(root, loose);
  plant(pages.pen.doc, root);
  return drawParts(pages, chosen, way);
}

/** One way to set page one. */
interface Way {
  readonly detail: Detail;
  readonly safety: TextStyle;
  readonly opening: TextStyle;
  /** White around rules, points. */
  readonly gapPt: number;
}

/** More exercises than these never stand in full on one page. */
const FULL_MOST = 4;

/** From the fullest down. 8.5 points of this typeface have the height of small letters that 9 points of Times have. */
function waysOf({ look }: Pen, exercises: number): readonly Way[] {
  const [body, small, label] = [look.style('body'), look.style('small'), look.style('label')];
  const smaller: TextStyle = { ...label, cut: small.cut };
  const smallest: TextStyle = { ...smaller, sizePt: 8.25, leadingPt: 10.5 };
  const roomy = { safety: small, opening: body, gapPt: 8 };
  const tight = { safety: smaller, opening: body, gapPt: 7 };
  const close = { safety: smaller, opening: small, gapPt: 6 };
  const closest = { safety: smallest, opening: small, gapPt: 5 };
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
    ...(exercises > FULL_MOST ? [] : inFull),
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
  readonly safety: Safety;
  readonly emergency: Block;
  /** Their tags in reading order, loose until this way is chosen. */
  readonly loose: readonly Tag[];
}

/** Composes the parts of page one for any way, each part once for every style it is asked for in. */
function composer(pen: Pen, { programme, exercises, logo, labels }: Start): (way: Way) => Parts {
  const widthPt = columnWidthPt(pen, 1);
  const masthead = remembered((opening: TextStyle) => {
    const loose = looseTag('Sect');
    return { block: mastheadBlock(pen, loose, programme, logo, opening, widthPt), loose };
  });
  const safety = remembered((text: TextStyle) => safetyIn(pen, programme, text));
  const session = remembered((detail: Detail) => {
    const loose = looseTag('Sect');
    const tag = open(loose, 'Sect');
    const block = sessionBlock(pen, tag, programme.nextSession, widthPt);
    const cellPt = columnWidthPt(pen, detail.abreast);
    const cells = exercises.map((one) => exerciseCell(pen, tag, one, labels.howFar, detail, cellPt));
    return { block, cells, loose };
  });
  const emergency = remembered((text: TextStyle) => {
    const loose = looseTag('Sect');
    return { block: emergencyBlock(pen, loose, programme.emergency, text, widthPt), loose };
  });
  return (way) => {
    const [top, middle] = [masthead(way.opening), session(way.detail)];
    const [texts, box] = [safety(way.safety), emergency(way.detail.text)];
    return {
      masthead: top.block,
      session: middle.block,
      cells: middle.cells,
      safety: texts,
      emergency: box.block,
      loose: [top.loose, middle.loose, texts.loose, box.loose],
    };
  };
}

/** The answer for each question, kept. */
function remembered<Question extends object, Answer>(
  ask: (question: Question) => Answer,
): (question: Question) => Answer {
  const answers = new Map<Question, Answer>();
  return (question) => {
    const known = answers.get(question);
    if (known !== undefined) return known;
    const answer = ask(question);
    answers.set(question, answer);
    return answer;
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
  const safety = pourSafety(parts.safety.columns, plan.safetyPt);
  for (const { block, xPt, yPt } of safety.placed) block.draw(xPt, safetyPt + yPt);
  parts.emergency.draw(sheet.leftPt, emergencyPt);
  return { cells: rows.slice(plan.rows).flat(), blocks: safety.rest, detail: way.detail };
}
