/** The head of page one: the clinic in the line of the running head, then the title, the dates, what to heed. */
import type { Section } from '../../messages/shapes.ts';
import type { Programme } from '../../programme/programme.ts';
import { drawStack, stackHeightPt, type Block } from './block.ts';
import { setBoundingBox } from './drawing.ts';
import type { Pen } from './pen.ts';
import type { Run } from './run.ts';
import type { TextStyle } from './sheet.ts';
import { open, mark, type Tag } from './tag.ts';
import { headingBlock, plain, textBlock } from './text.ts';
import { naturalWidthPt, wrap } from './wrap.ts';

/** Height of a logo on paper and the share of the width it may take [choice]. */
const LOGO_PT = 34;
const LOGO = 0.24;

/** `logo`: a JPEG, or a PNG without transparency. */
export function mastheadBlock(
  pen: Pen,
  root: Tag,
  programme: Programme,
  logo: Uint8Array | null,
  widthPt: number,
): Block {
  const { look } = pen;
  const mark = logo ? logoBlock(pen, root, logo, programme.clinic.name, widthPt * LOGO) : null;
  const titlePt = mark ? widthPt * (1 - LOGO) - look.space.largePt : widthPt;
  const clinic = clinicBlock(pen, root, programme, widthPt);
  const text = (words: string, style: TextStyle, gapPt: number) =>
    textBlock(pen, root, 'P', plain(words, style), widthPt, gapPt);
  const title = headingBlock(pen, root, 1, programme.title, look.style('heading1'), titlePt, TITLE_GAP_PT);
  const below = [
    text(programme.dates, look.style('label', 'accent'), look.space.hairPt),
    ...precautionBlocks(pen, root, programme.precautions, look.style('body'), widthPt),
  ];
  const topPt = clinic.heightPt + TITLE_GAP_PT;
  const belowPt = topPt + Math.max(title.heightPt, mark?.heightPt ?? 0) + look.space.hairPt;
  return {
    heightPt: belowPt + stackHeightPt(below),
    gapPt: 0,
    keepWithNext: false,
    draw: (xPt, yPt) => {
      clinic.draw(xPt, yPt);
      title.draw(xPt, yPt + topPt);
      mark?.draw(xPt + widthPt * (1 - LOGO), yPt + topPt - LOGO_RISE_PT);
      drawStack(below, xPt, yPt + belowPt);
    },
  };
}

/** What to heed, over the whole width: its heading runs into its sentences. None where nothing is to be heeded. */
function precautionBlocks(
  pen: Pen,
  root: Tag,
  { heading, parts }: Section,
  style: TextStyle,
  widthPt: number,
): readonly Block[] {
  const { look } = pen;
  const sentences = parts.flatMap((part) =>
    part.kind === 'list' ? part.entries : part.kind === 'paragraph' ? [part.text] : [],
  );
  if (sentences.length === 0) return [];
  const tag = open(root, 'Sect');
  const bold: TextStyle = { ...style, cut: 'bold', colour: look.colour.accent };
  const head: Run = { text: `${heading}  `, style: bold, tag: open(tag, 'H2') };
  const words: Run = { text: sentences.join(' '), style };
  return [textBlock(pen, tag, 'P', [head, words], widthPt, look.space.smallPt)];
}

/** White between the clinic's line and the title, and how far a logo reaches into it, points. */
const TITLE_GAP_PT = 7;
const LOGO_RISE_PT = 4;

/** The clinic and how to reach it, at the right end of its last line who wrote the programme, or on a line below. */
function clinicBlock(pen: Pen, root: Tag, { clinic, clinician }: Programme, widthPt: number): Block {
  const { look } = pen;
  const quiet = look.style('note', 'quiet');
  const bold = { ...look.style('note'), cut: 'bold' as const };
  const reach: readonly Run[] = [
    { text: `${clinic.name}   `, style: bold },
    { text: clinic.contact.join(' · '), style: quiet },
  ];
  const author = plain(clinician, quiet);
  const authorPt = naturalWidthPt(author, pen.measurer);
  const lastPt = wrap(reach, widthPt, pen.measurer).at(-1)?.widthPt ?? 0;
  const besides = lastPt + look.space.largePt + authorPt <= widthPt;
  const left = textBlock(pen, root, 'P', reach, widthPt, 0);
  const right = textBlock(pen, root, 'P', author, widthPt, 0);
  const downPt = left.heightPt - (besides ? quiet.leadingPt : 0);
  return {
    heightPt: downPt + right.heightPt,
    gapPt: 0,
    keepWithNext: false,
    draw: (xPt, yPt) => {
      left.draw(xPt, yPt);
      right.draw(besides ? xPt + widthPt - authorPt : xPt, yPt + downPt);
    },
  };
}

function logoBlock(pen: Pen, parent: Tag, logo: Uint8Array, name: string, widthPt: number): Block {
  const figure = open(parent, 'Figure', { alt: name });
  return {
    heightPt: LOGO_PT,
    gapPt: 0,
    keepWithNext: true,
    draw: (xPt, yPt) => {
      setBoundingBox(pen, figure, [{ xPt, yPt, widthPt, heightPt: LOGO_PT }]);
      mark(figure, () => pen.doc.image(logo, xPt, yPt, { fit: [widthPt, LOGO_PT], align: 'right' }));
    },
  };
}
