/** The words of a card, a section or a sentence list as blocks. */
import type { Block as ProseBlock, Inline, ListEntry } from '../../content/prose/block.ts';
import { isOutward } from '../../content/prose/link.ts';
import type { Part } from '../../messages/shapes.ts';
import { kept, type Block } from './block.ts';
import type { Pen } from './pen.ts';
import type { Run } from './run.ts';
import type { TextStyle } from './sheet.ts';
import { tableBlock } from './table.ts';
import type { Tag } from './tag.ts';
import { listBlocks, plain, textBlock, type Entry } from './text.ts';

/** A table no higher than this stays whole, points. */
const WHOLE_PT = 200;

/** Blocks of a card's prose; `opening` stands before the words of the first paragraph. */
export function proseBlocks(
  pen: Pen,
  parent: Tag,
  blocks: readonly ProseBlock[],
  style: TextStyle,
  widthPt: number,
  opening: readonly Run[] = [],
): readonly Block[] {
  const gapPt = pen.look.space.smallPt;
  return blocks.flatMap((block, at) =>
    block.kind === 'paragraph'
      ? [
          textBlock(
            pen,
            parent,
            'P',
            [...(at === 0 ? opening : []), ...runsOf(block.text, style)],
            widthPt,
            gapPt,
          ),
        ]
      : listBlocks(
          pen,
          parent,
          block.entries.map((entry) => entryOf(entry, style)),
          block.ordered,
          widthPt,
          gapPt,
        ),
  );
}

/** Blocks of a section's parts. */
export function partBlocks(
  pen: Pen,
  parent: Tag,
  parts: readonly Part[],
  style: TextStyle,
  widthPt: number,
): readonly Block[] {
  const gapPt = pen.look.space.smallPt;
  return parts.flatMap((part): readonly Block[] => {
    if (part.kind === 'table')
      return [kept(tableBlock(pen, parent, part.table, style, widthPt, gapPt), WHOLE_PT)];
    if (part.kind === 'paragraph')
      return [
        textBlock(pen, parent, 'P', plain(part.text, weighted(pen, style, part.weight)), widthPt, gapPt),
      ];
    return listBlocks(
      pen,
      parent,
      part.entries.map((text) => plainEntry(text, style)),
      part.ordered,
      widthPt,
      gapPt,
    );
  });
}

/** An entry of plain text, nothing under it. */
export function plainEntry(text: string, style: TextStyle): Entry {
  return { runs: plain(text, style), entries: [], ordered: false };
}

function weighted(pen: Pen, style: TextStyle, weight: 'normal' | 'strong' | 'quiet'): TextStyle {
  if (weight === 'strong') return { ...style, cut: 'bold' };
  return weight === 'quiet' ? { ...style, colour: pen.look.colour.quiet } : style;
}

function entryOf(entry: ListEntry, style: TextStyle): Entry {
  return {
    runs: runsOf(entry.text, style),
    entries: entry.entries.map(({ text }) => ({ runs: runsOf(text, style), entries: [], ordered: false })),
    ordered: entry.ordered,
  };
}

function runsOf(inlines: readonly Inline[], style: TextStyle, href?: string): readonly Run[] {
  return inlines.flatMap((inline) => {
    if (inline.kind === 'text')
      return [{ text: inline.text, style, ...(href === undefined ? {} : { href }) }];
    // The library's pages do not lie beside a printed sheet.
    if (inline.kind === 'link')
      return runsOf(inline.children, style, isOutward(inline.href) ? inline.href : undefined);
    const marked: TextStyle =
      inline.kind === 'strong' ? { ...style, cut: 'bold' } : { ...style, slanted: true };
    return runsOf(inline.children, marked, href);
  });
}
