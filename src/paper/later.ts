/** The pages after the first: every number, how to do it, the plan of the week, the steps to come, advice, the log. */
import type { Programme, Section } from '../programme/programme.ts';
import type { Block } from './block.ts';
import { headedProse, howToBlocks, type HowTo } from './howTo.ts';
import { logBlocks } from './log.ts';
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

/** A usual programme's leaflet has at most so many pages. */
const PAGES_USUAL = 4;

/** Running text in the largest of these that keeps the leaflet to its usual pages; the first where none does. */
export function laterText(pages: Pages, later: Later): TextStyle {
  const body = pages.pen.look.style('body');
  const small = pages.pen.look.style('small');
  const between = {
    ...body,
    sizePt: (body.sizePt + small.sizePt) / 2,
    leadingPt: (body.leadingPt + small.leadingPt) / 2,
  };
  const holds = (text: TextStyle) => {
    const dry: Pages = { ...pages, pen: measuringPen(pages.pen) };
    drawLater(dry, MEASURED_ONLY, later, text);
    return dry.count <= PAGES_USUAL;
  };
  return [body, between, small].find(holds) ?? body;
}

/** Draws everything after page one from the place in hand. `text`: the style of running text. */
export function drawLater(pages: Pages, root: Tag, later: Later, text: TextStyle): void {
  const { programme, labels } = later;
  const { pen } = pages;
  const { sheet } = pen.look;
  const columnPt = columnWidthPt(pen, COLUMNS);
  const present = presentBlocks(pen, root, programme.steps, labels, sheet.rightPt - sheet.leftPt);
  const words = [
    ...howToBlocks(pen, root, later, text, columnPt),
    ...planOf(programme).flatMap((section) => planBlocks(pen, root, section, text, columnPt)),
    ...comingBlocks(pen, root, programme.steps, labels, text, columnPt),
    ...planBlocks(pen, root, programme.whatComesNext, text, columnPt),
    ...adviceBlocks(pen, root, programme, text, columnPt),
  ];
  flow(pages, present, 1, sectionGapPt(text));
  flow(pages, words, COLUMNS, sectionGapPt(text));
  flowTogether(pages, logBlocks(pen, root, programme.log, columnPt), COLUMNS, sectionGapPt(text));
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
      ...headedProse(pen, tag, 3, body, text, widthPt),
    ];
  });
  const notices = notice.map((words) =>
    textBlock(pen, root, 'P', plain(words, look.style('note', 'quiet')), widthPt, look.space.smallPt),
  );
  return [...cards, ...notices];
}
