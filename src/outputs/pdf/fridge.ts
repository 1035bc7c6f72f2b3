/** One sheet for the fridge: the present session, the week, the pain rule, whom to call, and days to tick. */
import { labelsOf } from '../../messages/en/labels.ts';
import { table, type LogSheet, type Part, type Section, type Table } from '../../messages/shapes.ts';
import type { Exercise, Programme } from '../../programme/programme.ts';
import { drawStack, stackHeightPt, withGap, type Block } from './block.ts';
import { bytesOf, openPen } from './document.ts';
import { emergencyBlock } from './emergency.ts';
import { pourEven, type Placed } from './flow.ts';
import { bodyBottomPt, drawRunningLines } from './runningLines.ts';
import type { PaperAssets } from './leaflet.ts';
import { letterRefusals } from './letters.ts';
import { logBlocks } from './log.ts';
import { columnsOf, columnWidthPt, firstPage, type Pages } from './pages.ts';
import type { Pen } from './pen.ts';
import { tableBlocks } from './prose.ts';
import { sectionBlocks } from './section.ts';
import { sessionBlock } from './session.ts';
import { lookOf, type TextStyle } from './sheet.ts';
import { adopt, looseTag, plant, type Tag } from './tag.ts';
import { headingBlock, plain, textBlock } from './text.ts';

/** How the sheet is set. */
interface SheetLayout {
  readonly text: TextStyle;
  readonly logColumns: number;
  /** White above and below the text of a day, points. */
  readonly dayPt: number;
}

/** A way that holds everything on one page. */
interface Sheet {
  readonly top: readonly Block[];
  readonly placed: readonly Placed[];
  readonly emergency: Block;
  readonly loose: Tag;
}

/** A sheet to glance at is set smaller than what is read, points [choice]. */
const BODY_PT = 9.5;

/** Texts in three columns; of the log what is ticked: the day, what is planned, and the first two answers. */
const TEXT_COLUMNS = 3;
const LOG_COLUMNS = 4;

/**
 * The sheet as the bytes of a tagged PDF of one page, the same for the same programme. Where all of it goes on no page in
 * type that can be read, the last weeks go first, of the log and of the plan alike, and the sheet says where they are; the
 * session, the first week, the pain rule and the emergency lines never go. Null where even these go on no page.
 */
export async function fridgePdf(programme: Programme, assets: PaperAssets): Promise<Uint8Array | null> {
  const [missing] = letterRefusals(programme, assets.fonts);
  if (missing) throw new Error(`${missing.code}: ${missing.found}`);
  const { title, clinic, language, startOn, mark } = programme;
  const look = lookOf(programme.paper, BODY_PT, assets.tokens);
  const pen = openPen({ title, author: clinic.name, language, on: startOn, mark }, assets.fonts, look);
  const pages = firstPage(pen, bodyBottomPt(pen, programme));
  const root = looseTag('Document');
  const sheet = fittingSheet(pages, programme);
  if (sheet === null) return null;
  adopt(root, sheet.loose);
  plant(pen.doc, root);
  drawSheet(pages, sheet);
  drawRunningLines(pen, programme);
  return bytesOf(pen, root);
}

/** With as many weeks as go on the page, in the largest type in which they do. */
function fittingSheet(pages: Pages, programme: Programme): Sheet | null {
  const ways = waysOf(pages.pen);
  for (let weeks = programme.plan.at(-1)?.week ?? 0; weeks >= 0; weeks -= 1) {
    const content = contentOf(programme, weeks);
    for (const way of ways) {
      const sheet = sheetIn(pages, content, way);
      if (sheet !== null) return sheet;
    }
  }
  return null;
}

/** From the largest type down. */
function waysOf({ look }: Pen): readonly SheetLayout[] {
  const [small, label] = [look.style('small'), look.style('label')];
  const smaller: TextStyle = { ...label, cut: small.cut };
  const smallest: TextStyle = { ...smaller, sizePt: 8.25, leadingPt: 10.5 };
  return [
    ...[small, smaller, smallest].flatMap((text) =>
      [2, 3].map((logColumns) => ({ text, logColumns, dayPt: 3.5 })),
    ),
    // A tick still finds its place.
    { text: smallest, logColumns: 3, dayPt: 1.5 },
  ];
}

function sheetIn(
  pages: Pages,
  { programme, week, log }: Content,
  { text, logColumns, dayPt }: SheetLayout,
): Sheet | null {
  const { pen } = pages;
  const { look } = pen;
  const loose = looseTag('Sect');
  const widthPt = columnWidthPt(pen, 1);
  const top = topBlocks(pen, loose, programme, text, widthPt);
  const sections = [week, programme.painRule].flatMap((section) =>
    sectionBlocks(
      pen,
      loose,
      section,
      look.style('heading3'),
      text,
      columnWidthPt(pen, TEXT_COLUMNS),
      look.space.mediumPt,
    ),
  );
  const rows = log === null ? [] : logBlocks(pen, loose, log, columnWidthPt(pen, logColumns), dayPt);
  const emergency = emergencyBlock(pen, loose, programme.emergency, widthPt);
  const bottomPt = pages.bottomPt - emergency.heightPt - look.space.mediumPt;
  const gapPt = look.space.largePt;
  const textPt = pages.yPt + stackHeightPt(top) + gapPt;
  const texts = pourEven(sections, columnsOf(pen, TEXT_COLUMNS, textPt, bottomPt));
  const days = pourEven(rows, columnsOf(pen, logColumns, texts.bottomPt + gapPt, bottomPt));
  if (texts.rest.length + days.rest.length > 0) return null;
  return { top, placed: [...texts.placed, ...days.placed], emergency, loose };
}

function topBlocks(pen: Pen, tag: Tag, programme: Programme, text: TextStyle, widthPt: number): Block[] {
  const { look } = pen;
  const { title, dates, nextSession } = programme;
  return [
    headingBlock(pen, tag, 1, title, look.style('heading1'), widthPt, 0),
    textBlock(pen, tag, 'P', plain(dates, look.style('label', 'accent')), widthPt, look.space.hairPt),
    withGap(sessionBlock(pen, tag, nextSession, widthPt), look.space.mediumPt),
    ...tableBlocks(pen, tag, sessionTable(programme), text, widthPt, look.space.smallPt),
  ];
}

/** An exercise a row: what, how many, how heavy, how far. */
function sessionTable({ exercises, steps, language }: Programme): Table {
  const labels = labelsOf(language).leaflet;
  const columns = steps.find(({ present }) => present)?.columns;
  const rows = exercises.map((exercise) => [
    nameOf(exercise),
    exercise.doseWords,
    exercise.cells.find(({ cell }) => cell === 'loadKg')?.text ?? '',
    exercise.howFar[0] ?? '',
  ]);
  const heads = [labels.exercise, labels.dose, columns?.loadKg ?? '', columns?.howFar ?? labels.howFar];
  const part = table('', heads, rows);
  if (part.kind !== 'table') throw new Error('a table is one');
  return part.table;
}

/** With its side, and its days where it is no part of the session. */
function nameOf({ title, side, between }: Exercise): string {
  return [title, side, ...(between === null ? [] : [`${between.label}: ${between.text}`])].join(' · ');
}

/** What goes on the sheet of a programme beside its session, pain rule and emergency lines. */
interface Content {
  readonly programme: Programme;
  readonly week: Section;
  /** Null where no week of it is kept. */
  readonly log: LogSheet | null;
}

/** With the first weeks alone; what is not there is said to stand in the leaflet. */
function contentOf(programme: Programme, weeks: number): Content {
  const { plan, log, language } = programme;
  const labels = labelsOf(language).leaflet;
  const shown = new Map(plan.flatMap((day) => (day.week <= weeks ? [[day.on, day]] : [])));
  const days = log.days.filter(({ on }) => shown.has(on));
  const isLater = plan.some(({ on, step }) => shown.has(on) && step !== plan[0]?.step);
  const notes = [
    ...(days.length < log.days.length ? [labels.otherDays] : []),
    ...(isLater ? [labels.laterNumbers] : []),
  ];
  const week = weekOf(programme, Math.max(1, weeks));
  if (days.length === 0) return { programme, week: withNotes(week, notes), log: null };
  const hint = [log.hint, ...notes].join(' ');
  return { programme, week, log: { ...log, hint, days, columns: log.columns.slice(0, LOG_COLUMNS) } };
}

/** Its tables of the first weeks, and what is said in strong words: why the days lie so stands in the leaflet. */
function weekOf({ week }: Programme, weeks: number): Section {
  const tables = week.parts.filter(({ kind }) => kind === 'table').slice(0, weeks);
  const strong = week.parts.filter((part) => part.kind === 'paragraph' && part.weight === 'strong');
  return { ...week, parts: [...tables, ...strong] };
}

function withNotes(section: Section, notes: readonly string[]): Section {
  const parts = notes.map((text): Part => ({ kind: 'paragraph', text, weight: 'normal' }));
  return { ...section, parts: [...section.parts, ...parts] };
}

function drawSheet(pages: Pages, { top, placed, emergency }: Sheet): void {
  const { leftPt } = pages.pen.look.sheet;
  drawStack(top, leftPt, pages.yPt);
  for (const { block, xPt, yPt } of placed) block.draw(xPt, yPt);
  emergency.draw(leftPt, pages.bottomPt - emergency.heightPt);
}
