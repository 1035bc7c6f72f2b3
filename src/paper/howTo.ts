/** How to do each exercise, and what to watch for; what page one had no room for comes first. */
import type { Exercise } from '../programme/programme.ts';
import type { LeafletLabels } from '../programme/phrases/labels.ts';
import { withGap, type Block } from './block.ts';
import type { Pictured } from './exercise.ts';
import { factBlocks, type Detail } from './facts.ts';
import { figureBlocks } from './figures.ts';
import type { Pen } from './pen.ts';
import { plainEntry, proseBlocks } from './prose.ts';
import { sectionGapPt } from './section.ts';
import type { TextStyle } from './sheet.ts';
import { openList, type Tag, open } from './tag.ts';
import type { Run } from './wrap.ts';
import { headingBlock, listBlocks, plain, stuck, textBlock } from './text.ts';

/** What the pages after the first need of the exercises. */
export interface HowTo {
  readonly exercises: readonly Pictured[];
  readonly labels: LeafletLabels;
  /** What stands on page one already. */
  readonly detail: Detail;
}

/** Blocks for a column of text. */
export function howToBlocks(
  pen: Pen,
  root: Tag,
  { exercises, labels, detail }: HowTo,
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  if (exercises.length === 0) return [];
  const { look } = pen;
  const tag = open(root, 'Sect');
  return [
    headingBlock(pen, tag, 2, labels.atAGlance, look.style('heading2'), widthPt, sectionGapPt(text)),
    ...exercises.flatMap((one) => {
      const own = open(tag, 'Sect');
      const { title, body, cautions } = one.exercise;
      return [
        headingBlock(pen, own, 3, title, look.style('heading3'), widthPt, look.space.mediumPt),
        ...overleafBlocks(pen, own, one, labels.howFar, detail, text, widthPt),
        ...cardProse(pen, own, body, text, widthPt),
        ...(cautions.length === 0 ? [] : [underHeading(pen, own, 4, labels.watchFor, widthPt)]),
        ...listBlocks(
          pen,
          own,
          cautions.map((words) => plainEntry(words, text)),
          false,
          widthPt,
          look.space.hairPt,
        ),
      ];
    }),
  ];
}

/** A card's words, each heading at the head of its first paragraph. */
function cardProse(
  pen: Pen,
  parent: Tag,
  body: Exercise['body'],
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  return body.flatMap(({ heading, blocks }) => {
    const [first] = blocks;
    if (heading === '' || first?.kind !== 'paragraph')
      return headed(pen, parent, 4, heading, blocks, text, widthPt);
    const style: TextStyle = { ...text, cut: 'bold', colour: pen.look.colour.accent };
    const opening: Run = { text: `${heading} `, style, tag: open(parent, 'H4') };
    return proseBlocks(pen, parent, blocks, text, widthPt, [opening]);
  });
}

/** An advice card's words under its headings. */
export function headedProse(
  pen: Pen,
  parent: Tag,
  body: Exercise['body'],
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  return body.flatMap(({ heading, blocks }) => headed(pen, parent, 3, heading, blocks, text, widthPt));
}

function headed(
  pen: Pen,
  parent: Tag,
  level: 3 | 4,
  heading: string,
  blocks: Exercise['body'][number]['blocks'],
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  const above = heading === '' ? [] : [underHeading(pen, parent, level, heading, widthPt)];
  const words = proseBlocks(pen, parent, blocks, text, widthPt);
  return [...above, ...words.map((block, at) => (at === 0 && above.length > 0 ? withGap(block, 0) : block))];
}

function underHeading(pen: Pen, parent: Tag, level: 3 | 4, heading: string, widthPt: number): Block {
  const { look } = pen;
  return headingBlock(
    pen,
    parent,
    level,
    heading,
    look.style('label', 'accent'),
    widthPt,
    look.space.smallPt,
  );
}

/** Pictures, captions and landmarks that page one left out; other numbers stand in the table of all numbers. */
function overleafBlocks(
  pen: Pen,
  parent: Tag,
  { exercise: { figures, howFar, doseWords }, drawings }: Pictured,
  howFarLabel: string,
  detail: Detail,
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  const bold: TextStyle = { ...text, cut: 'bold' };
  const pictures =
    detail.setting === 'full'
      ? []
      : [
          ...figureBlocks(pen, parent, figures, drawings, widthPt),
          stuck(textBlock(pen, parent, 'P', plain(doseWords, bold), widthPt, pen.look.space.hairPt)),
        ];
  if (detail.whole || howFar.length === 0) return pictures;
  const far = howFar.map((words, at) => ({ label: at === 0 ? howFarLabel : '', text: words }));
  return [...pictures, ...factBlocks(pen, openList(parent, 'None'), far, text, widthPt)];
}
