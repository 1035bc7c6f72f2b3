/** Draws on the page in hand: lines of text, rules, boxes and paths. Where things go is decided elsewhere. */
import type PDFDocument from 'pdfkit';
import type { Drawing } from '../../drawing/drawing.ts';
import type { Fonts } from './fonts.ts';
import type { Line, Measurer, Piece } from './measurer.ts';
import { pt, rgb, ruleOperators, shownText } from './operators.ts';
import type { ShowText } from './pdfkit/content.ts';
import type { Form } from './pdfkit/form.ts';
import type { Look, TextStyle } from './sheet.ts';
import { SIGNS, type Sign } from './signs.ts';
import { elementOf, looseTag, mark, open, type Tag } from './tag.ts';

export interface Pen {
  readonly doc: PDFDocument;
  readonly showText: ShowText;
  readonly fonts: Fonts;
  /** Measures words for this document alone. */
  readonly measurer: Measurer;
  readonly look: Look;
  /** Drawings that are in the file already. */
  readonly forms: Map<Drawing, Form>;
  /** The file, once the document is ended. */
  readonly bytes: Promise<Uint8Array>;
}

/** Stroke of a drawn sign, in ems: about the stem of the regular cut. */
const SIGN_STROKE_EM = 0.085;

/**
 * Draws lines from their upper left corner (points), one leading apart, as content of a tag, or of the tag a run brings
 * along. A link becomes a Link element of its own with an annotation, one for each line it runs over.
 */
export function drawLines(
  pen: Pen,
  tag: Tag,
  lines: readonly Line[],
  xPt: number,
  yPt: number,
  leadingPt: number,
): void {
  const baselineOf = (line: Line, at: number) => yPt + at * leadingPt + baselineDropPt(line, leadingPt);
  if (lines.length > 0 && lines.every(isPlain))
    drawInto(pen, tag, () => {
      lines.forEach((line, at) => drawPieces(pen, line.pieces, xPt, baselineOf(line, at)));
    });
  else drawMixed(pen, tag, lines, xPt, baselineOf);
}

/** Without a link or an element of its own: most lines, drawn in one go. */
function isPlain({ pieces }: Line): boolean {
  return pieces.every(({ href, tag }) => href === undefined && tag === undefined);
}

function drawMixed(
  pen: Pen,
  tag: Tag,
  lines: readonly Line[],
  xPt: number,
  baselineOf: (line: Line, at: number) => number,
): void {
  let waiting: { readonly tag: Tag; readonly draws: (() => void)[] } = { tag, draws: [] };
  const turnTo = (next: Tag) => {
    const { draws } = waiting;
    if (draws.length > 0) drawInto(pen, waiting.tag, () => draws.forEach((draw) => draw()));
    waiting = { tag: next, draws: [] };
  };
  lines.forEach((line, at) => {
    const baselinePt = baselineOf(line, at);
    for (const group of groupsOf(line.pieces)) {
      const [{ href, tag: own = tag }] = group;
      const draw = () => drawPieces(pen, group, xPt, baselinePt);
      if (href !== undefined || own !== waiting.tag) turnTo(own);
      // A space that a link ends with at a line's head is no link to click on.
      if (href === undefined || wordsOf(group) === '') waiting.draws.push(draw);
      else drawLink(pen, own, group, href, xPt, baselinePt, draw);
    }
  });
  turnTo(tag);
}

function drawPieces(pen: Pen, pieces: readonly Piece[], xPt: number, baselinePt: number): void {
  for (const piece of pieces) drawPiece(pen, piece, xPt + piece.xPt, baselinePt);
}

function drawInto(pen: Pen, tag: Tag, draw: () => void): void {
  if (tag === FURNITURE) drawArtifact(pen, 'Layout', draw);
  else mark(tag, draw);
}

/** Draws what is no content of the document: rules, grounds, page furniture. */
export function drawArtifact(pen: Pen, type: 'Layout' | 'Pagination', draw: () => void): void {
  pen.doc.markContent('Artifact', { type });
  draw();
  pen.doc.endMarkedContent();
}

/** Stands for a tag where a run is no content of the document, such as a dot between two numbers. */
const FURNITURE: Tag = looseTag('Span');

/** Draws a line of text that is page furniture, its baseline at `yPt`. Call inside `drawArtifact`. */
export function drawRunningLine(pen: Pen, line: Line, xPt: number, yPt: number): void {
  drawPieces(pen, line.pieces, xPt, yPt);
}

/** Rules as an artifact of the layout. */
export function drawRules(
  pen: Pen,
  rules: readonly (readonly number[])[],
  widthPt: number,
  colour: string,
): void {
  if (rules.length > 0)
    drawArtifact(pen, 'Layout', () => pen.doc.addContent(ruleOperators(rules, widthPt, colour)));
}

/** Capital height of the typeface in ems (fontkit `capHeight`, 668 of 1000). */
const CAPITAL_EM = 0.668;

/** From the top of a line's box to its baseline, points. */
export function baselineDropPt(line: Line, leadingPt: number): number {
  const sizePt = line.pieces.reduce((most, { style }) => Math.max(most, style.sizePt), 0);
  return dropPt(sizePt, leadingPt);
}

/** The same for a line of one style. */
export function styleDropPt({ sizePt, leadingPt }: TextStyle): number {
  return dropPt(sizePt, leadingPt);
}

/** Capitals stand in the middle of the leading. */
function dropPt(sizePt: number, leadingPt: number): number {
  return (leadingPt + sizePt * CAPITAL_EM) / 2;
}

function drawPiece(pen: Pen, piece: Piece, xPt: number, baselinePt: number): void {
  const sign = SIGNS.get(piece.text);
  if (sign) drawSign(pen, sign, piece, xPt, baselinePt);
  else drawText(pen, piece.text, piece.style, xPt, baselinePt);
}

/** Draws one stretch of text from its left end on a baseline. Call inside `mark` or an artifact. */
export function drawText(
  { doc, showText, fonts }: Pen,
  text: string,
  style: TextStyle,
  xPt: number,
  baselinePt: number,
): void {
  const font = doc.font(style.cut)._font;
  doc.page.fonts[font.id] ??= font.ref();
  showText(shownText(font, fonts[style.cut], text, style, xPt, baselinePt));
}

function drawSign({ doc }: Pen, sign: Sign, { text, style }: Piece, xPt: number, baselinePt: number): void {
  const at = ([xEm, yEm]: readonly [number, number]) =>
    `${pt(xPt + xEm * style.sizePt)} ${pt(baselinePt - yEm * style.sizePt)}`;
  const strokes = sign.strokes.map((stroke) =>
    stroke.map((point, first) => `${at(point)} ${first === 0 ? 'm' : 'l'}`).join(' '),
  );
  doc.markContent('Span', { actual: text });
  doc.addContent(`q ${pt(SIGN_STROKE_EM * style.sizePt)} w ${rgb(style.colour)} RG ${strokes.join(' ')} S Q`);
  doc.endMarkedContent();
}

function drawLink(
  pen: Pen,
  tag: Tag,
  group: Group,
  href: string,
  xPt: number,
  baselinePt: number,
  draw: () => void,
): void {
  const [first] = group;
  const last = group.at(-1) ?? first;
  const leftPt = xPt + first.xPt;
  const widthPt = last.xPt + last.widthPt - first.xPt;
  const sizePt = first.style.sizePt;
  const words = wordsOf(group);
  const link = open(tag, 'Link');
  mark(link, draw);
  pen.doc.link(leftPt, baselinePt - sizePt * CAPITAL_EM, widthPt, sizePt, href, {
    structParent: elementOf(link),
    Contents: pdfText(`${words} (${href})`),
  });
  // Closed on its own page: pdfkit notes the page of an annotation only now.
  elementOf(link).end();
  const underPt = baselinePt + 0.15 * sizePt;
  drawRules(pen, [[leftPt, underPt, leftPt + widthPt, underPt]], pen.look.line.hairPt, first.style.colour);
}

function wordsOf(group: Group): string {
  return group
    .map(({ text }) => text)
    .join('')
    .trim();
}

/** pdfkit writes a plain string as a name; only a boxed one becomes a text. */
function pdfText(text: string): string {
  return new String(text) as string;
}

type Group = [Piece, ...Piece[]];

/** Neighbours of one link and one element. */
function groupsOf(pieces: readonly Piece[]): readonly Group[] {
  const groups: Group[] = [];
  for (const piece of pieces) {
    const last = groups.at(-1);
    if (last && last[0].href === piece.href && last[0].tag === piece.tag) last.push(piece);
    else groups.push([piece]);
  }
  return groups;
}
