/** The texts that keep the patient safe, in three columns at the foot of page one. */
import type { Programme, Section } from '../programme/programme.ts';
import { stackHeightPt, type Block } from './block.ts';
import { pour, type Placed } from './flow.ts';
import { COLUMN_GAP_PT } from './pages.ts';
import { measuringPen, type Pen } from './pen.ts';
import { sectionBlocks } from './section.ts';
import type { TextStyle } from './sheet.ts';
import { MEASURED_ONLY, type Tag } from './tag.ts';

/** How wide the middle column is, of the width of all three; it holds the table of the morning check. */
const MIDDLES = [0.28, 0.33, 0.38, 0.44];

/** One column with its place and texts. */
export interface SafetyColumn {
  readonly xPt: number;
  readonly blocks: readonly Block[];
}

/** How the texts are set. */
export interface SafetyFit {
  readonly text: TextStyle;
  /** Share of the middle column. */
  readonly middle: number;
  /** Height of the longest column, points. */
  readonly heightPt: number;
}

/** The setting in a style whose longest column is shortest. */
export function fitSafety(pen: Pen, programme: Programme, text: TextStyle): SafetyFit {
  const dry = measuringPen(pen);
  const sized = MIDDLES.map((middle) => {
    const columns = safetyColumns(dry, MEASURED_ONLY, programme, { text, middle });
    return { text, middle, heightPt: Math.max(...columns.map(({ blocks }) => stackHeightPt(blocks))) };
  });
  return sized.reduce((least, one) => (one.heightPt < least.heightPt ? one : least));
}

/** Pain rule and flare, morning check, missed days and when to get help; hung into the tree in the order of need. */
export function safetyColumns(
  pen: Pen,
  root: Tag,
  programme: Programme,
  { text, middle }: Pick<SafetyFit, 'text' | 'middle'>,
): readonly SafetyColumn[] {
  const { look } = pen;
  const roomPt = look.sheet.rightPt - look.sheet.leftPt - 2 * COLUMN_GAP_PT;
  const sidePt = (roomPt * (1 - middle)) / 2;
  const blocksOf = (section: Section, widthPt: number) =>
    sectionBlocks(pen, root, section, look.style('heading3'), text, widthPt, look.space.mediumPt);
  const painRule = blocksOf(programme.painRule, sidePt);
  const morningCheck = blocksOf(programme.morningCheck, roomPt * middle);
  const flare = blocksOf(programme.flare, sidePt);
  const missedDays = blocksOf(programme.missedDays, sidePt);
  const getHelp = blocksOf(programme.getHelp, sidePt);
  return [
    { xPt: look.sheet.leftPt, blocks: [...painRule, ...flare] },
    { xPt: look.sheet.leftPt + sidePt + COLUMN_GAP_PT, blocks: morningCheck },
    { xPt: look.sheet.rightPt - sidePt, blocks: [...missedDays, ...getHelp] },
  ];
}

/** What of the columns goes into a height, counted from its top, and what does not. */
export function pourSafety(
  columns: readonly SafetyColumn[],
  heightPt: number,
): { readonly placed: readonly Placed[]; readonly rest: readonly Block[] } {
  const poured = columns.map(({ xPt, blocks }) => pour(blocks, [{ xPt, topPt: 0, bottomPt: heightPt }]));
  return { placed: poured.flatMap(({ placed }) => placed), rest: poured.flatMap(({ rest }) => rest) };
}
