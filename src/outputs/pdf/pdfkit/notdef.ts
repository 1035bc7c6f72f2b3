/**
 * What the glyph without a character stands for. ISO 14289-1 7.21.7 forbids U+0000 in a ToUnicode map; pdfkit 0.20.2
 * writes it for code 0, `.notdef`, which every subset begins with. Not reported upstream, as far as was searched.
 */
import type PDFDocument from 'pdfkit';

/** U+FFFD, the replacement character. */
const REPLACEMENT = 0xfffd;

/** Call when everything is drawn, before the document's end. */
export function nameNotdef(doc: PDFDocument): void {
  for (const font of Object.values(doc._fontFamilies)) font.unicode[0] = [REPLACEMENT];
}
