/** The words of a card, a section or a sentence list as blocks. */
import type { Block as ProseBlock, Inline, ListEntry } from '../../content/prose/block.ts';
import { isOutward } from '../../content/prose/link.ts';
import type { Part, Table } from '../../messages/shapes.ts';
import { kept, type Block } from './block.ts';
import { factBlocks } from './facts.ts';
import type { Pen } from './pen.ts';
import type { Run } from './run.ts';
import type { TextStyle } from './sheet.ts';
import { tableBlock } from './table.ts';
import type { Tag } from './tag.ts';
import { listBlocks, plain, stuck, textBlock, type Entry } from './text.ts';

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
  return parts.flatMap((part, at): readonly Block[] => {
    if (part.kind === 'table') return tableBlocks(pen, parent, part.table, style, widthPt, gapPt);
    if (part.kind === 'paragraph') {
      const runs = plain(part.text, weighted(pen, style, part.weight));
      const block = textBlock(pen, parent, 'P', runs, widthPt, gapPt);
      // What is said of a table stays with it.
      return [parts[at + 1]?.kind === 'table' ? stuck(block) : block];
    }
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

/** A table; of a single row its cells as a list, since there is nothing to compare. */
export function tableBlocks(
  pen: Pen,
  parent: Tag,
  table: Table,
  style: TextStyle,
  widthPt: number,
  gapPt: number,
): readonly Block[] {
  const [only, ...others] = table.rows;
  if (!only || others.length > 0)
    return [kept(tableBlock(pen, parent, table, style, widthPt, gapPt), WHOLE_PT)];
  const facts = only.map((text, at) => ({ label: table.columns[at] ?? '', text }));
  const said = facts.filter(({ text }) => text !== '');
  return factBlocks(pen, parent, said, style, widthPt, gapPt, table.caption);
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
    // The typeface has no italic on paper, and a slanted upright is none: what is stressed is bold.
    return runsOf(inline.children, { ...style, cut: 'bold' }, href);
  });
}
