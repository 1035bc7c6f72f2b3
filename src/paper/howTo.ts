/** How to do each exercise, and what to watch for; what page one had no room for comes first. */
import type { LeafletLabels } from '../programme/phrases/labels.ts';
import type { Exercise } from '../programme/programme.ts';
import type { Block } from './block.ts';
import { factBlocks, type Detail } from './exercise.ts';
import type { Pen } from './pen.ts';
import { plainEntry, proseBlocks } from './prose.ts';
import type { TextStyle } from './sheet.ts';
import { openList, type Tag } from './tag.ts';
import { headingBlock, listBlocks, plain, textBlock } from './text.ts';

/** Blocks for a column; `detail` says what stands on page one already. */
export function howToBlocks(
  pen: Pen,
  root: Tag,
  exercises: readonly Exercise[],
  labels: LeafletLabels,
  detail: Detail,
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  if (exercises.length === 0) return [];
  const { look } = pen;
  const tag = root.open('Sect');
  return [
    headingBlock(pen, tag, 2, labels.atAGlance, look.style('heading2'), widthPt, look.space.largePt),
    ...exercises.flatMap((exercise) => {
      const own = tag.open('Sect');
      const { title, body, cautions } = exercise;
      return [
        headingBlock(pen, own, 3, title, look.style('heading3'), widthPt, look.space.mediumPt),
        ...overleafBlocks(pen, own, exercise, labels, detail, text, widthPt),
        ...headedProse(pen, own, 4, body, text, widthPt),
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

/** A card's words under its headings. */
export function headedProse(
  pen: Pen,
  parent: Tag,
  level: 3 | 4,
  body: Exercise['body'],
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  return body.flatMap(({ heading, blocks }) => [
    ...(heading === '' ? [] : [underHeading(pen, parent, level, heading, widthPt)]),
    ...proseBlocks(pen, parent, blocks, text, widthPt),
  ]);
}

function underHeading(pen: Pen, parent: Tag, level: 3 | 4, heading: string, widthPt: number): Block {
  return headingBlock(
    pen,
    parent,
    level,
    heading,
    pen.look.style('label', 'accent'),
    widthPt,
    pen.look.space.smallPt,
  );
}

/** Captions and landmarks that page one left out; the other numbers stand in the table of all numbers. */
function overleafBlocks(
  pen: Pen,
  parent: Tag,
  { figures, howFar }: Exercise,
  labels: LeafletLabels,
  { captions, whole }: Detail,
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  const { smallPt } = pen.look.space;
  const shown = captions || !figures ? [] : figures.captions;
  const pictures =
    shown.length === 0 ? [] : [textBlock(pen, parent, 'P', plain(shown.join(' '), text), widthPt, smallPt)];
  if (whole) return pictures;
  const far = howFar.map((words, at) => ({ label: at === 0 ? labels.howFar : '', text: words }));
  return [...pictures, ...factBlocks(pen, openList(parent, 'None'), far, text, widthPt)];
}
