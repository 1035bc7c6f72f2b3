/** How to do each exercise, and what to watch for; what page one had no room for comes first. */
import type { Exercise } from '../../programme/programme.ts';
import type { LeafletLabels } from '../../messages/en/labels.ts';
import { withGap, type Block } from './block.ts';
import type { Pictured } from './exercise.ts';
import { factBlocks } from './facts.ts';
import { figureBlocks } from './figures.ts';
import type { Pen } from './pen.ts';
import { proseBlocks } from './prose.ts';
import type { Run } from './run.ts';
import { sectionGapPt } from './section.ts';
import type { TextStyle } from './sheet.ts';
import { type Tag, open } from './tag.ts';
import { headingBlock, plain, stuck, textBlock } from './text.ts';

/** What the pages after the first need of the exercises. */
export interface HowTo {
  readonly exercises: readonly Pictured[];
  readonly labels: LeafletLabels;
}

/** Blocks for a column of text. */
export function howToBlocks(
  pen: Pen,
  root: Tag,
  { exercises, labels }: HowTo,
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
        ...titleBlocks(pen, own, title, one.exercise.doseWords, text, widthPt),
        ...overleafBlocks(pen, own, one, labels.alsoFar, text, widthPt),
        ...headedProse(pen, own, 4, body, text, widthPt),
        ...cautionBlocks(pen, own, cautions, labels.watchFor, text, widthPt),
      ];
    }),
  ];
}

/** The title, under it the dose in words, which page one has in signs alone. */
export function titleBlocks(
  pen: Pen,
  parent: Tag,
  title: string,
  doseWords: string,
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  const { look } = pen;
  const quiet: TextStyle = { ...text, colour: look.colour.quiet };
  const head = headingBlock(pen, parent, 3, title, look.style('heading3'), widthPt, look.space.mediumPt);
  return doseWords === ''
    ? [head]
    : [head, stuck(textBlock(pen, parent, 'P', plain(doseWords, quiet), widthPt, 0))];
}

/** A card's words under headings of a level, each at the head of its first paragraph. */
export function headedProse(
  pen: Pen,
  parent: Tag,
  level: 3 | 4,
  body: Exercise['body'],
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  return body.flatMap(({ heading, blocks }) => {
    if (heading === '') return proseBlocks(pen, parent, blocks, text, widthPt);
    if (blocks[0]?.kind === 'paragraph')
      return proseBlocks(pen, parent, blocks, text, widthPt, [opening(pen, parent, level, heading, text)]);
    const { look } = pen;
    const style = look.style('label', 'accent');
    // Opened before what it heads: reading order is the order of opening.
    const above = headingBlock(pen, parent, level, heading, style, widthPt, look.space.smallPt);
    const [first, ...others] = proseBlocks(pen, parent, blocks, text, widthPt);
    return first ? [above, withGap(first, 0), ...others] : [above];
  });
}

/** A heading that runs into the words it heads. */
function opening({ look }: Pen, parent: Tag, level: 3 | 4, heading: string, text: TextStyle): Run {
  const style: TextStyle = { ...text, cut: 'bold', colour: look.colour.accent };
  return { text: `${heading} `, style, tag: open(parent, `H${level}`) };
}

/** What to watch for, in one paragraph. */
export function cautionBlocks(
  pen: Pen,
  parent: Tag,
  cautions: readonly string[],
  label: string,
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  if (cautions.length === 0) return [];
  const head = opening(pen, parent, 4, label, text);
  const words: Run = { text: cautions.join(' '), style: text };
  return [textBlock(pen, parent, 'P', [head, words], widthPt, pen.look.space.smallPt)];
}

/** All pictures with their captions, and the landmarks that page one left out. */
function overleafBlocks(
  pen: Pen,
  parent: Tag,
  { exercise: { figures, howFar }, drawings }: Pictured,
  label: string,
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  const pictures = figureBlocks(pen, parent, figures, drawings, widthPt);
  const [, ...more] = howFar;
  if (more.length === 0) return pictures;
  const far = [{ label, text: more.join(' ') }];
  return [...pictures, ...factBlocks(pen, parent, far, text, widthPt, pen.look.space.smallPt)];
}
