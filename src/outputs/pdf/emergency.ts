/** The emergency box on page one, and the strip at the foot of every page after it. */
import type { EmergencyBox } from '../../messages/shapes.ts';
import { spoken, type ForeignWord } from '../../messages/foreign.ts';
import { drawStack, stackHeightPt, type Block } from './block.ts';
import { pourEven } from './flow.ts';
import { drawArtifact, type Pen } from './pen.ts';
import { pt, rgb } from './operators.ts';
import type { Run } from './run.ts';
import type { TextStyle } from './sheet.ts';
import { open, type Tag } from './tag.ts';
import { headingBlock, listBlocks, plain, runsBlock } from './text.ts';
import { plainEntry } from './prose.ts';
import type { Line } from './measurer.ts';
import { naturalWidthPt, wrap } from './wrap.ts';

/** White inside the box, points. */
const PADDING_PT = 5;

/** Share of the width that the call to make takes at most. */
const CALL = 0.26;

/** The box: the number to call white on black, beside it when to call, and what to do when it is less than that. */
export function emergencyBlock(
  pen: Pen,
  root: Tag,
  { heading, call, lines, then, foreign }: EmergencyBox,
  widthPt: number,
): Block {
  const { look } = pen;
  const tag = open(root, 'Sect');
  const large = look.style('heading3', 'paper');
  const wordsPt = naturalWidthPt(plain(heading, large), pen.measurer) + 1;
  const callPt = Math.min(widthPt * CALL, wordsPt + 3 * PADDING_PT);
  const linesPt = widthPt - callPt - 2 * PADDING_PT;
  const number = headingBlock(pen, tag, 2, heading, large, callPt - 2 * PADDING_PT, 0);
  const text = look.style('body');
  const bold: TextStyle = { ...text, cut: 'bold' };
  const when = [
    spokenBlock(pen, tag, call, foreign, bold, linesPt, 0),
    abreast(pen, tag, lines, linesPt),
    ...then.map((words) => spokenBlock(pen, tag, words, foreign, text, linesPt, look.space.hairPt)),
  ];
  const heightPt = Math.max(number.heightPt, stackHeightPt(when)) + 2 * PADDING_PT;
  return {
    heightPt,
    gapPt: look.space.mediumPt,
    keepWithNext: false,
    draw: (xPt, yPt) => {
      const { heavyPt } = look.line;
      const box = [xPt + heavyPt / 2, yPt + heavyPt / 2, widthPt - heavyPt, heightPt - heavyPt]
        .map(pt)
        .join(' ');
      const ground = [xPt, yPt, callPt, heightPt].map(pt).join(' ');
      drawArtifact(pen, 'Layout', () => {
        pen.doc.addContent(
          `q ${rgb(look.colour.ink)} rg ${ground} re f ${rgb(look.colour.ink)} RG ${pt(heavyPt)} w ${box} re S Q`,
        );
      });
      number.draw(xPt + PADDING_PT, yPt + (heightPt - number.heightPt) / 2);
      drawStack(when, xPt + callPt + PADDING_PT, yPt + (heightPt - stackHeightPt(when)) / 2);
    },
  };
}

/** A paragraph whose foreign words are elements of their own, with their language. */
function spokenBlock(
  pen: Pen,
  parent: Tag,
  text: string,
  foreign: readonly ForeignWord[],
  style: TextStyle,
  widthPt: number,
  gapPt: number,
): Block {
  const tag = open(parent, 'P');
  const parts = spoken(text, foreign);
  // Each stretch is an element: content of the paragraph itself would be read after all of its elements.
  const runs = parts.map(({ text: words, language }): Run => {
    if (parts.length === 1 && language === null) return { text: words, style };
    const options = language === null ? {} : { lang: language };
    return { text: words, style, tag: open(tag, 'Span', options) };
  });
  return runsBlock(pen, tag, runs, widthPt, gapPt);
}

/** The signs as one list in two columns: they are short. */
function abreast(pen: Pen, tag: Tag, lines: readonly string[], widthPt: number): Block {
  const { look } = pen;
  const halfPt = (widthPt - PADDING_PT) / 2;
  const entries = lines.map((line) => plainEntry(line, look.style('body')));
  const blocks = listBlocks(pen, tag, entries, false, halfPt, 0);
  const heightPt = stackHeightPt(blocks);
  const columns = [0, halfPt + PADDING_PT].map((xPt) => ({ xPt, topPt: 0, bottomPt: heightPt }));
  const { placed, bottomPt } = pourEven(blocks, columns);
  return {
    heightPt: bottomPt,
    gapPt: look.space.hairPt,
    keepWithNext: false,
    draw: (leftPt, topPt) => {
      for (const { block, xPt, yPt } of placed) block.draw(leftPt + xPt, topPt + yPt);
    },
  };
}

/** Lines of the strip with whom to call in words; without, where that would be more [choice]. */
const STRIP_LINES = 2;
const STRIP_MOST_LINES = 4;

/**
 * For the foot of a page: the number to call and all of the box's signs, or the number alone. A list that left some out
 * would read as if those were none.
 */
export function emergencyStrip(
  pen: Pen,
  { heading, call, lines }: EmergencyBox,
  widthPt: number,
): readonly Line[] {
  const style = pen.look.style('note');
  const strip = (words: string) =>
    wrap(
      [
        { text: `${heading} `, style: { ...style, cut: 'bold' as const } },
        { text: words, style },
      ],
      widthPt,
      pen.measurer,
    );
  const signs = `${lines.join('; ')}.`;
  const whole = strip(`${call} ${signs}`);
  if (whole.length <= STRIP_LINES) return whole;
  const short = strip(signs);
  return short.length <= STRIP_MOST_LINES ? short : strip('');
}
