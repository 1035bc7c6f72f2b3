/** The texts that keep the patient safe: pain rule and missed days, morning check, flare, and when to get in touch. */
import type { Section } from '../../messages/shapes.ts';
import type { Programme } from '../../programme/programme.ts';
import type { Block } from './block.ts';
import { columnWidthPt } from './pages.ts';
import type { Pen } from './pen.ts';
import { sectionBlocks } from './section.ts';
import type { Tag } from './tag.ts';

/** Columns these texts are set in. */
export const SAFETY_COLUMNS = 2;

/** The blocks of one section after the other, in the order of need. */
export function safetyBlocks(pen: Pen, parent: Tag, programme: Programme): readonly Block[] {
  const { look } = pen;
  const { painRule, morningCheck, flare, missedDays, getHelp } = programme;
  const blocksOf = (section: Section) =>
    sectionBlocks(
      pen,
      parent,
      section,
      look.style('heading3'),
      look.style('body'),
      columnWidthPt(pen, SAFETY_COLUMNS),
      look.space.mediumPt,
    );
  return [painRule, morningCheck, flare, missedDays, getHelp].flatMap(blocksOf);
}
