/** Headings, paragraphs and lists as blocks. */
import type { Block } from './block.ts';
import { drawLines, type Pen } from './pen.ts';
import type { Run } from './run.ts';
import type { TextStyle } from './sheet.ts';
import { open, openList, type Bookmark, type Tag, type TagName } from './tag.ts';
import type { Line } from './measurer.ts';
import { naturalWidthPt, wrap } from './wrap.ts';

/** A paragraph may be parted only where two lines stay on each side. */
const LINES_KEPT = 2;

/** One text in one style. */
export function plain(text: string, style: TextStyle): readonly Run[] {
  return [{ text, style }];
}

/** A text of a structure type, wrapped to a width. White above in points. */
export function textBlock(
  pen: Pen,
  parent: Tag,
  name: TagName,
  runs: readonly Run[],
  widthPt: number,
  gapPt: number,
): Block {
  return runsBlock(pen, open(parent, name), runs, widthPt, gapPt);
}

/** Runs as the content of an element that is there already, or of those they bring along. */
export function runsBlock(pen: Pen, tag: Tag, runs: readonly Run[], widthPt: number, gapPt: number): Block {
  const leadingPt = Math.max(...runs.map((run) => run.style.leadingPt));
  return linesBlock(pen, tag, wrap(runs, widthPt, pen.measurer), leadingPt, gapPt);
}

/** The block whole, and kept with what follows. */
export function stuck({ heightPt, gapPt, draw }: Block): Block {
  return { heightPt, gapPt, keepWithNext: true, draw };
}

/** A heading that stays with what follows and may become a bookmark. */
export function headingBlock(
  pen: Pen,
  parent: Tag,
  level: 1 | 2 | 3 | 4,
  text: string,
  style: TextStyle,
  widthPt: number,
  gapPt: number,
): Block {
  const tag = open(parent, `H${level}`);
  const block = stuck(runsBlock(pen, tag, [{ text, style }], widthPt, gapPt));
  const bookmark: Bookmark = { title: text, level, at: null };
  tag.bookmark = bookmark;
  return {
    ...block,
    draw: (xPt, yPt) => {
      const pages = pen.doc.bufferedPageRange();
      bookmark.at = { page: pages.start + pages.count - 1, yPt };
      block.draw(xPt, yPt);
    },
  };
}

function linesBlock(pen: Pen, tag: Tag, lines: readonly Line[], leadingPt: number, gapPt: number): Block {
  return {
    heightPt: lines.length * leadingPt,
    gapPt,
    keepWithNext: false,
    draw: (xPt, yPt) => drawLines(pen, tag, lines, xPt, yPt, leadingPt),
    split: (roomPt) => {
      const fits = Math.min(Math.floor(roomPt / leadingPt), lines.length - LINES_KEPT);
      if (fits < LINES_KEPT) return null;
      const part = (some: readonly Line[], gap: number) => linesBlock(pen, tag, some, leadingPt, gap);
      return [part(lines.slice(0, fits), gapPt), part(lines.slice(fits), 0)];
    },
  };
}

/** One entry of a list: its text, and a list under it. */
export interface Entry {
  readonly runs: readonly Run[];
  readonly entries: readonly Entry[];
  readonly ordered: boolean;
}

/** White between the entries of a list, as a part of the leading. */
const ENTRY_GAP = 0.2;

/** The blocks of a list, one for each entry; the label hangs left of the text. */
export function listBlocks(
  pen: Pen,
  parent: Tag,
  entries: readonly Entry[],
  ordered: boolean,
  widthPt: number,
  gapPt: number,
): readonly Block[] {
  const style = entries[0]?.runs[0]?.style;
  if (!style) return [];
  const list = openList(parent, ordered ? 'Decimal' : 'Disc');
  const labels = entries.map((_, at) => plain(ordered ? `${at + 1}.` : '•', style));
  const indentPt =
    Math.max(...labels.map((label) => naturalWidthPt(label, pen.measurer))) + style.sizePt * 0.5;
  return entries.flatMap((entry, at) => {
    const item = open(list, 'LI');
    const label = textBlock(pen, item, 'Lbl', labels[at] ?? [], indentPt, 0);
    const body = open(item, 'LBody');
    const gap = at === 0 ? gapPt : style.leadingPt * ENTRY_GAP;
    const text = runsBlock(pen, body, entry.runs, widthPt - indentPt, gap);
    const below =
      entry.entries.length === 0
        ? []
        : listBlocks(
            pen,
            body,
            entry.entries,
            entry.ordered,
            widthPt - indentPt,
            style.leadingPt * ENTRY_GAP,
          );
    return [hanging(text, indentPt, label), ...below.map((block) => hanging(block, indentPt, null))];
  });
}

/** An entry higher than this, in lines, may be parted: the part without a label would be taken for a paragraph [choice]. */
const LINES_WHOLE = 12;

/** A block moved right, with a label drawn beside its first line. */
function hanging(block: Block, indentPt: number, label: Block | null): Block {
  const whole = label !== null && block.heightPt <= LINES_WHOLE * label.heightPt;
  const { heightPt, gapPt, keepWithNext } = block;
  const drawn = {
    heightPt,
    gapPt,
    keepWithNext,
    draw: (xPt: number, yPt: number) => {
      label?.draw(xPt, yPt);
      block.draw(xPt + indentPt, yPt);
    },
  };
  if (whole) return drawn;
  return {
    ...drawn,
    split: (roomPt) => {
      const parts = block.split?.(roomPt);
      return parts ? [hanging(parts[0], indentPt, label), hanging(parts[1], indentPt, null)] : null;
    },
  };
}
