/** Exercises the leaflet names besides the present ones: picture, how to begin, how to move. */
import { drawScene } from '../../drawing/scene.ts';
import type { LeafletLabels } from '../../messages/en/labels.ts';
import type { NamedExercise, Programme } from '../../programme/programme.ts';
import type { Block } from './block.ts';
import { figureBlocks } from './figures.ts';
import { cautionBlocks, headedProse, titleBlocks } from './howTo.ts';
import type { Pen } from './pen.ts';
import { sectionGapPt } from './section.ts';
import type { TextStyle } from './sheet.ts';
import { open, type Tag } from './tag.ts';
import { headingBlock, plain, stuck, textBlock } from './text.ts';

/** Blocks for a column of text; none when every name is that of a present exercise. */
export function namedBlocks(
  pen: Pen,
  root: Tag,
  { heading, exercises }: Programme['named'],
  labels: LeafletLabels,
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  if (exercises.length === 0) return [];
  const tag = open(root, 'Sect');
  return [
    headingBlock(pen, tag, 2, heading, pen.look.style('heading2'), widthPt, sectionGapPt(text)),
    ...exercises.flatMap((one) => oneBlocks(pen, open(tag, 'Sect'), one, labels, text, widthPt)),
  ];
}

function oneBlocks(
  pen: Pen,
  tag: Tag,
  { title, where, side, figures, body, cautions }: NamedExercise,
  labels: LeafletLabels,
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  const { look } = pen;
  const quiet: TextStyle = { ...text, colour: look.colour.quiet };
  const drawings = figures === null ? [] : drawScene(figures.scene);
  return [
    ...titleBlocks(pen, tag, title, '', text, widthPt),
    stuck(textBlock(pen, tag, 'P', plain(where, quiet), widthPt, look.space.hairPt)),
    stuck(textBlock(pen, tag, 'P', plain(side, text), widthPt, 0)),
    ...figureBlocks(pen, tag, figures, drawings, widthPt),
    ...headedProse(pen, tag, 4, body, text, widthPt),
    ...cautionBlocks(pen, tag, cautions, labels.watchFor, text, widthPt),
  ];
}
