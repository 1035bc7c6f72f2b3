/** The pages after the first: how to do it, the plan of the week, the steps to come, advice, every number, the log. */
import type { Section } from '../../messages/shapes.ts';
import type { Programme } from '../../programme/programme.ts';
import type { Block } from './block.ts';
import { headedProse, howToBlocks, type HowTo } from './howTo.ts';
import { logBlocks } from './log.ts';
import { namedBlocks } from './named.ts';
import { columnWidthPt, flow, flowTogether, type Pages } from './pages.ts';
import type { Pen } from './pen.ts';
import { sectionBlocks, sectionGapPt } from './section.ts';
import type { TextStyle } from './sheet.ts';
import { comingBlocks, presentBlocks } from './steps.ts';
import { open, plant, type Tag } from './tag.ts';
import { headingBlock, plain, textBlock } from './text.ts';

/** Columns of text on these pages. */
const COLUMNS = 2;

/** What these pages are made from. */
export interface Later extends HowTo {
  readonly programme: Programme;
}

/** Draws everything after page one from the place in hand. */
export function drawLater(pages: Pages, root: Tag, later: Later): void {
  const { pen } = pages;
  const { gapPt, tables, words, days } = composed(pen, root, later);
  plant(pen.doc, root);
  flow(pages, words, COLUMNS, gapPt);
  flow(pages, tables, 1, gapPt);
  flowTogether(pages, days, 1, gapPt);
}

function composed(pen: Pen, root: Tag, later: Later) {
  const { programme, labels } = later;
  const { steps, whatComesNext, log } = programme;
  const [text, numbers] = [pen.look.style('body'), pen.look.style('small')];
  const [widePt, columnPt] = [columnWidthPt(pen, 1), columnWidthPt(pen, COLUMNS)];
  // In reading order: what is composed first is read first.
  const words = [
    ...howToBlocks(pen, root, later, text, columnPt),
    ...planOf(programme).flatMap((section) => planBlocks(pen, root, section, text, columnPt)),
    ...comingBlocks(pen, root, steps, labels, text, columnPt),
    ...namedBlocks(pen, root, programme.named, labels, text, columnPt),
    ...planBlocks(pen, root, whatComesNext, text, columnPt),
    ...adviceBlocks(pen, root, programme, text, columnPt),
  ];
  const tables = [
    ...presentBlocks(pen, root, steps, labels, numbers, widePt),
    ...planBlocks(pen, root, programme.easier, numbers, widePt),
  ];
  const days = logBlocks(pen, root, log, widePt);
  return { tables, words, days, gapPt: sectionGapPt(text) };
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
