/**
 * What is drawn on a page, gathered as text and made bytes once. pdfkit 0.20.2 turns every line into bytes letter by
 * letter and keeps them in a list; a leaflet is some ten thousand lines. It has no setting for that, nor for how hard a
 * page is deflated. Lines of text one after the other share one text object, and colour and font are said when they
 * change (ISO 32000-1 8.4.1 and 9.4.1), where pdfkit says all of it for every line.
 */
import type PDFDocument from 'pdfkit';
import { deflated } from './deflated.ts';

/** A stretch of text from its left end on a baseline, points from the upper left corner of the page. */
export interface ShownText {
  /** Resource name and size, as operands of Tf. */
  readonly font: string;
  /** Operands of rg. */
  readonly colour: string;
  readonly xPt: number;
  readonly baselinePt: number;
  /** Operand of TJ. */
  readonly glyphs: string;
}

/** What a page holds so far. */
interface Drawn {
  operators: string;
  /** As last set; nothing sets them but shown text. */
  colour: string;
  font: string;
  /** Where the last line of the text object in hand began, tenths of a point; null outside of one. */
  line: readonly [x: number, y: number] | null;
}

/** Draws text on the page in hand. */
export type ShowText = (shown: ShownText) => void;

export function gatherContent(doc: PDFDocument): ShowText {
  const pages = new Map<PDFDocument['page'], Drawn>();
  const inHand = (): Drawn => {
    const drawn = pages.get(doc.page) ?? { operators: '', colour: '', font: '', line: null };
    pages.set(doc.page, drawn);
    return drawn;
  };
  doc.addContent = (operators) => {
    add(inHand(), operators);
    return doc;
  };
  const flushPages = doc.flushPages.bind(doc);
  doc.flushPages = () => {
    for (const [{ content }, { operators }] of pages) {
      content.buffer = [deflated(operators)];
      content.data.Filter = 'FlateDecode';
      content.compress = false;
    }
    flushPages();
  };
  return (shown) => show(inHand(), shown);
}

/** Whatever is no text ends the text object: marked content may not begin in one and end outside (14.6.1). */
function add(drawn: Drawn, operators: string): void {
  drawn.operators += drawn.line === null ? `${operators}\n` : `ET\n${operators}\n`;
  drawn.line = null;
}

function show(drawn: Drawn, { colour, font, xPt, baselinePt, glyphs }: ShownText): void {
  const [x, y] = [tenths(xPt), tenths(baselinePt)];
  // The page counts down, letters are drawn upwards.
  const place = drawn.line
    ? `${(x - drawn.line[0]) / 10} ${(drawn.line[1] - y) / 10} Td`
    : `BT 1 0 0 -1 ${x / 10} ${y / 10} Tm`;
  const paint = colour === drawn.colour ? '' : ` ${colour} rg`;
  const face = font === drawn.font ? '' : ` ${font} Tf`;
  drawn.operators += `${place}${paint}${face} ${glyphs} TJ\n`;
  Object.assign(drawn, { colour, font, line: [x, y] });
}

/** A place of text: a tenth of a point is a thirtieth of a millimetre. */
function tenths(pt: number): number {
  return Math.round(pt * 10);
}
