/** The pages after the first: every number, how to do it, the plan of the week, the steps to come, advice, the log. */
import type { Programme, Section } from '../programme/programme.ts';
import type { Block } from './block.ts';
import { headedProse, howToBlocks, type HowTo } from './howTo.ts';
import { logBlocks, logColumnsFor } from './log.ts';
import { columnWidthPt, flow, flowTogether, type Pages } from './pages.ts';
import { measuringPen, type Pen } from './pen.ts';
import { sectionBlocks, sectionGapPt } from './section.ts';
import type { TextStyle } from './sheet.ts';
import { comingBlocks, presentBlocks } from './steps.ts';
import { MEASURED_ONLY, type Tag } from './tag.ts';
import { headingBlock, plain, textBlock } from './text.ts';

/** Columns of text on these pages. */
const COLUMNS = 2;

/** What these pages are made from. */
export interface Later extends HowTo {
  readonly programme: Programme;
}

/** Pages a leaflet should keep to: two sheets printed on both sides, or else three. */
const PAGES = [4, 6];

/** How close these pages are set. */
export interface Density {
  /** Running text. */
  readonly text: TextStyle;
  /** Tables of numbers. */
  readonly numbers: TextStyle;
  /** The steps to come. */
  readonly preview: TextStyle;
}

/** The largest type with which the leaflet keeps to two sheets, else to three; else one still easy to read. */
export function densityFor(pages: Pages, later: Later): Density {
  const { look } = pages.pen;
  const [body, small, note] = [look.style('body'), look.style('small'), look.style('note')];
  const between: TextStyle = { ...body, sizePt: 9.5, leadingPt: 12.75 };
  const smaller: TextStyle = { ...small, sizePt: 8.5, leadingPt: 11.25 };
  const easy: Density = { text: small, numbers: smaller, preview: note };
  const densities: readonly Density[] = [
    { text: body, numbers: small, preview: small },
    { text: between, numbers: small, preview: smaller },
    easy,
    { text: smaller, numbers: note, preview: note },
  ];
  const counts = new Map<Density, number>();
  const countOf = (density: Density): number => {
    const known = counts.get(density);
    if (known !== undefined) return known;
    const dry: Pages = { ...pages, pen: measuringPen(pages.pen) };
    drawLater(dry, MEASURED_ONLY, later, density);
    counts.set(density, dry.count);
    return dry.count;
  };
  for (const most of PAGES) {
    const found = densities.find((density) => countOf(density) <= most);
    if (found) return found;
  }
  return easy;
}

/** Draws everything after page one from the place in hand. */
export function drawLater(pages: Pages, root: Tag, later: Later, { text, numbers, preview }: Density): void {
  const { programme, labels } = later;
  const { steps, whatComesNext, log } = programme;
  const { pen } = pages;
  const gapPt = sectionGapPt(text);
  const columnPt = columnWidthPt(pen, COLUMNS);
  const widePt = columnWidthPt(pen, 1);
  const tables = [
    ...presentBlocks(pen, root, steps, labels, numbers, widePt),
    ...planBlocks(pen, root, programme.easier, numbers, widePt),
  ];
  const words = [
    ...howToBlocks(pen, root, later, text, columnPt),
    ...planOf(programme).flatMap((section) => planBlocks(pen, root, section, text, columnPt)),
    ...comingBlocks(pen, root, steps, labels, { text, preview }, columnPt),
    ...planBlocks(pen, root, whatComesNext, text, columnPt),
    ...adviceBlocks(pen, root, programme, text, columnPt),
  ];
  flow(pages, tables, 1, gapPt);
  flow(pages, words, COLUMNS, gapPt);
  const logColumns = logColumnsFor(pen, log);
  flowTogether(pages, logBlocks(pen, root, log, columnWidthPt(pen, logColumns)), logColumns, gapPt);
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
    const tag = root.open('Sect');
    return [
      headingBlock(pen, tag, 2, heading, look.style('heading2'), widthPt, sectionGapPt(text)),
      ...headedProse(pen, tag, body, text, widthPt),
    ];
  });
  const notices = notice.map((words) =>
    textBlock(pen, root, 'P', plain(words, look.style('note', 'quiet')), widthPt, look.space.smallPt),
  );
  return [...cards, ...notices];
}
