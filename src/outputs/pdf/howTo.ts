/** How to do each exercise, and what to watch for; what page one had no room for comes first. */
import type { Exercise } from '../../programme/programme.ts';
import type { LeafletLabels } from '../../messages/en/labels.ts';
import { withGap, type Block } from './block.ts';
import type { Pictured } from './exercise.ts';
import { factBlocks, type Detail } from './facts.ts';
import { figureBlocks } from './figures.ts';
import type { Pen } from './pen.ts';
import { proseBlocks } from './prose.ts';
import type { Run } from './run.ts';
import { sectionGapPt } from './section.ts';
import type { TextStyle } from './sheet.ts';
import { openList, type Tag, open } from './tag.ts';
import { headingBlock, textBlock } from './text.ts';

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
        titleBlock(pen, own, title, detail.setting === 'full' ? '' : one.exercise.doseWords, text, widthPt),
        ...overleafBlocks(pen, own, one, labels.howFar, detail, text, widthPt),
        ...headedProse(pen, own, 4, body, text, widthPt),
        ...cautionBlocks(pen, own, cautions, labels.watchFor, text, widthPt),
      ];
    }),
  ];
}

/** The title, on its line the dose in words where page one has it in signs alone. */
export function titleBlock(
  pen: Pen,
  parent: Tag,
  title: string,
  doseWords: string,
  text: TextStyle,
  widthPt: number,
): Block {
  const { look } = pen;
  const head = look.style('heading3');
  const style: TextStyle = { ...text, colour: look.colour.quiet };
  return headingBlock(
    pen,
    parent,
    3,
    title,
    head,
    widthPt,
    look.space.mediumPt,
    doseWords === '' ? [] : [{ text: `  ${doseWords}`, style, tag: open(parent, 'P') }],
  );
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
    const [first, ...others] = proseBlocks(pen, parent, blocks, text, widthPt);
    const above = headingBlock(pen, parent, level, heading, style, widthPt, look.space.smallPt);
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

/** Pictures, captions and landmarks that page one left out; its dose and first landmark are not said again. */
function overleafBlocks(
  pen: Pen,
  parent: Tag,
  { exercise: { figures, howFar }, drawings }: Pictured,
  howFarLabel: string,
  detail: Detail,
  text: TextStyle,
  widthPt: number,
): readonly Block[] {
  const pictures = detail.setting === 'full' ? [] : figureBlocks(pen, parent, figures, drawings, widthPt);
  if (detail.whole || howFar.length < 2) return pictures;
  const far = howFar.slice(1).map((words, at) => ({ label: at === 0 ? howFarLabel : '', text: words }));
  return [...pictures, ...factBlocks(pen, openList(parent, 'None'), far, text, widthPt)];
}
