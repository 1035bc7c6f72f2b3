/** The pages after the first: every number, how to do it, the plan of the week, the steps to come, advice, the log. */
import type { Programme } from '../../programme/programme.ts';
import type { Section } from '../../messages/shapes.ts';
import type { Block } from './block.ts';
import { headedProse, howToBlocks, type HowTo } from './howTo.ts';
import { logBlocks, logColumnsFor } from './log.ts';
import { namedBlocks } from './named.ts';
import { columnWidthPt, flow, flowTogether, type Pages } from './pages.ts';
import type { Pen } from './pen.ts';
import { sectionBlocks, sectionGapPt } from './section.ts';
import type { TextStyle } from './sheet.ts';
import { comingBlocks, presentBlocks } from './steps.ts';
import { adopt, looseTag, open, plant, type Tag } from './tag.ts';
import { headingBlock, plain, textBlock } from './text.ts';

/** Columns of text on these pages. */
const COLUMNS = 2;

/** What these pages are made from. */
export interface Later extends HowTo {
  readonly programme: Programme;
}

/** Pages a leaflet should keep to: two sheets printed on both sides, or else a few more. */
const PAGES = [4, 5, 6] as const;

/** How close these pages are set. */
export interface Density {
  /** Running text. */
  readonly text: TextStyle;
  /** Tables of numbers. */
  readonly numbers: TextStyle;
  /** The steps to come. */
  readonly preview: TextStyle;
}

/** Draws everything after page one from the place in hand, in the largest type that keeps to the sheets. */
export function drawLater(pages: Pages, root: Tag, later: Later): void {
  const log = logOf(pages.pen, later);
  const composed = composedFor(pages, later, log);
  for (const { loose } of [composed, log]) adopt(root, loose);
  plant(pages.pen.doc, root);
  layOut(pages, composed, log);
}

/** The pages before the log in one density, their tags loose until it is chosen. */
interface Composed {
  readonly tables: readonly Block[];
  readonly words: readonly Block[];
  readonly gapPt: number;
  readonly loose: Tag;
}

/** The log, the same in every density. */
interface Log {
  readonly days: readonly Block[];
  readonly columns: number;
  readonly loose: Tag;
}

function logOf(pen: Pen, { programme: { log } }: Later): Log {
  const loose = looseTag('Sect');
  const columns = logColumnsFor(pen, log);
  return { columns, loose, days: logBlocks(pen, loose, log, columnWidthPt(pen, columns)) };
}

/** In the largest type with which the leaflet keeps to as few pages as in the closest; where none does, in one easy to read. */
function composedFor(pages: Pages, later: Later, log: Log): Composed {
  const densities = densitiesOf(pages.pen);
  const tried: { readonly composed: Composed; readonly count: number }[] = [];
  const at = (index: number) => {
    const composed = tried[index]?.composed ?? compose(pages.pen, later, densities[index] as Density);
    tried[index] ??= { composed, count: pagesOf(pages, composed, log) };
    return tried[index];
  };
  let [largest, closest] = [0, densities.length - 1];
  const most = PAGES.find((count) => at(closest).count <= count);
  if (most === undefined) return at(EASY).composed;
  while (largest < closest) {
    const middle = Math.floor((largest + closest) / 2);
    if (at(middle).count <= most) closest = middle;
    else largest = middle + 1;
  }
  return at(closest).composed;
}

function pagesOf(pages: Pages, composed: Composed, log: Log): number {
  const counting: Pages = { ...pages, drawing: false };
  layOut(counting, composed, log);
  return counting.count;
}

/** The density that is taken where none keeps to the sheets. */
const EASY = 2;

function densitiesOf({ look }: Pen): readonly Density[] {
  const [body, small, note] = [look.style('body'), look.style('small'), look.style('note')];
  const between: TextStyle = { ...body, sizePt: 9.5, leadingPt: 12.75 };
  const smaller: TextStyle = { ...small, sizePt: 8.5, leadingPt: 11.25 };
  return [
    { text: body, numbers: small, preview: small },
    { text: between, numbers: small, preview: smaller },
    { text: small, numbers: smaller, preview: note },
    { text: smaller, numbers: note, preview: note },
  ];
}

function compose(pen: Pen, later: Later, { text, numbers, preview }: Density): Composed {
  const { programme, labels } = later;
  const { steps, whatComesNext } = programme;
  const loose = looseTag('Sect');
  const [widePt, columnPt] = [columnWidthPt(pen, 1), columnWidthPt(pen, COLUMNS)];
  const tables = [
    ...presentBlocks(pen, loose, steps, labels, numbers, widePt),
    ...planBlocks(pen, loose, programme.easier, numbers, widePt),
  ];
  const words = [
    ...howToBlocks(pen, loose, later, text, columnPt),
    ...planOf(programme).flatMap((section) => planBlocks(pen, loose, section, text, columnPt)),
    ...comingBlocks(pen, loose, steps, labels, { text, preview }, columnPt),
    ...namedBlocks(pen, loose, programme.named, labels, text, columnPt),
    ...planBlocks(pen, loose, whatComesNext, text, columnPt),
    ...adviceBlocks(pen, loose, programme, text, columnPt),
  ];
  return { tables, words, gapPt: sectionGapPt(text), loose };
}

function layOut(pages: Pages, { tables, words, gapPt }: Composed, { days, columns }: Log): void {
  flow(pages, tables, 1, gapPt);
  flow(pages, words, COLUMNS, gapPt);
  flowTogether(pages, days, columns, gapPt);
}

function planOf({ week, running, sitting, stretching, activities }: Programme): readonly Section[] {
  return [week, running, sitting, stretching, activities];
}

function planBlocks(
  pen: Pen,
  root: Tag,
  section: Section,
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  return sectionBlocks(pen, root, section, pen.look.style('heading2'), text, widthPt, sectionGapPt(text));
}

function adviceBlocks(
  pen: Pen,
  root: Tag,
  { advice, notice }: Programme,
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  const { look } = pen;
  const cards = advice.flatMap(({ heading, body }) => {
    const tag = open(root, 'Sect');
    return [
      headingBlock(pen, tag, 2, heading, look.style('heading2'), widthPt, sectionGapPt(text)),
      ...headedProse(pen, tag, 3, body, text, widthPt),
    ];
  });
  const notices = notice.map((words) =>
    textBlock(pen, root, 'P', plain(words, look.style('note', 'quiet')), widthPt, look.space.smallPt),
  );
  return [...cards, ...notices];
}
