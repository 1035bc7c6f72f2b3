/** The dose of an exercise in big type, then which leg. */
import type { DoseSign } from '../../messages/shapes.ts';
import type { Exercise } from '../../programme/programme.ts';
import type { Block } from './block.ts';
import type { Detail } from './facts.ts';
import type { Pen } from './pen.ts';
import type { Run } from './run.ts';
import type { Tag } from './tag.ts';
import { plain, textBlock } from './text.ts';

/** Size of the numbers by exercises in a row, points. */
const DOSE_PT = { 2: 26, 3: 20 };

export function doseBlocks(
  pen: Pen,
  tag: Tag,
  { doseSign, side }: Exercise,
  { text, abreast }: Detail,
  widthPt: number,
): readonly Block[] {
  const bold = { ...text, cut: 'bold' as const, colour: pen.look.colour.accent };
  return [
    textBlock(pen, tag, 'P', doseRuns(pen, doseSign, DOSE_PT[abreast]), widthPt, 0),
    textBlock(pen, tag, 'P', plain(side, bold), widthPt, 0),
  ];
}

/** The numbers of a dose big, its unit small: `5 × 30 s`. */
function doseRuns({ look }: Pen, { figures, sign, unit }: DoseSign, sizePt: number): readonly Run[] {
  const big = { ...look.style('dose'), sizePt, leadingPt: sizePt + 1 };
  const small = { ...look.style('heading3'), leadingPt: big.leadingPt };
  return [
    { text: `${figures}${sign}`, style: big },
    { text: unit, style: small },
  ].filter((run) => run.text !== '');
}
