/** The texts that keep the patient safe, in three columns at the foot of page one. */
import type { Programme } from '../../programme/programme.ts';
import type { Section } from '../../messages/shapes.ts';
import { stackHeightPt, type Block } from './block.ts';
import { pour, type Placed } from './flow.ts';
import { COLUMN_GAP_PT } from './pages.ts';
import type { Pen } from './pen.ts';
import { sectionBlocks } from './section.ts';
import type { TextStyle } from './sheet.ts';
import { looseTag, type Tag } from './tag.ts';

/** How wide the middle column is, of the width of all three; it holds the table of the morning check. */
const MIDDLES = [0.25, 0.265, 0.28, 0.305, 0.33, 0.38, 0.44];

/** One column with its place and texts. */
export interface SafetyColumn {
  readonly xPt: number;
  readonly blocks: readonly Block[];
}

/** The texts set in one way. */
export interface Safety {
  readonly columns: readonly SafetyColumn[];
  /** Height of the longest column, points. */
  readonly heightPt: number;
  /** Holds their tags until the way is chosen. */
  readonly loose: Tag;
}

/** The texts in a style, the columns shared so that the longest is shortest. */
export function safetyIn(pen: Pen, programme: Programme, text: TextStyle): Safety {
  const ways = MIDDLES.map((middle): Safety => {
    const loose = looseTag('Sect');
    const columns = columnsWith(pen, loose, programme, text, middle);
    return { columns, loose, heightPt: Math.max(...columns.map(({ blocks }) => stackHeightPt(blocks))) };
  });
  return ways.reduce((least, one) => (one.heightPt < least.heightPt ? one : least));
}

/** Pain rule and missed days, morning check, flare and when to get help: so they are about equally long; hung into the tree in the order of need. */
function columnsWith(
  pen: Pen,
  parent: Tag,
  programme: Programme,
  text: TextStyle,
  middle: number,
): readonly SafetyColumn[] {
  const { look } = pen;
  const roomPt = look.sheet.rightPt - look.sheet.leftPt - 2 * COLUMN_GAP_PT;
  const sidePt = (roomPt * (1 - middle)) / 2;
  const blocksOf = (section: Section, widthPt: number) =>
    sectionBlocks(pen, parent, section, look.style('heading3'), text, widthPt, look.space.mediumPt);
  const painRule = blocksOf(programme.painRule, sidePt);
  const morningCheck = blocksOf(programme.morningCheck, roomPt * middle);
  const flare = blocksOf(programme.flare, sidePt);
  const missedDays = blocksOf(programme.missedDays, sidePt);
  const getHelp = blocksOf(programme.getHelp, sidePt);
  return [
    { xPt: look.sheet.leftPt, blocks: [...painRule, ...missedDays] },
    { xPt: look.sheet.leftPt + sidePt + COLUMN_GAP_PT, blocks: morningCheck },
    { xPt: look.sheet.rightPt - sidePt, blocks: [...flare, ...getHelp] },
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
