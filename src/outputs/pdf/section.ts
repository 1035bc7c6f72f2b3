/** A section: its heading and what stands under it, as blocks for a column. */
import type { Section } from '../../messages/shapes.ts';
import { withGap, type Block } from './block.ts';
import type { Pen } from './pen.ts';
import { partBlocks } from './prose.ts';
import type { TextStyle } from './sheet.ts';
import { open, type Tag } from './tag.ts';
import { headingBlock } from './text.ts';

/** White above a section in running text of a style, points: a line and a half of it. */
export function sectionGapPt({ leadingPt }: TextStyle): number {
  return 1.5 * leadingPt;
}

/** The blocks of a section with a heading of level 2; none when nothing stands under it. */
export function sectionBlocks(
  pen: Pen,
  parent: Tag,
  section: Section,
  heading: TextStyle,
  text: TextStyle,
  widthPt: number,
  gapPt: number,
): readonly Block[] {
  if (section.parts.length === 0) return [];
  const tag = open(parent, 'Sect');
  const head = headingBlock(pen, tag, 2, section.heading, heading, widthPt, gapPt);
  const [first, ...others] = partBlocks(pen, tag, section.parts, text, widthPt);
  return first ? [head, withGap(first, pen.look.space.hairPt), ...others] : [head];
}
