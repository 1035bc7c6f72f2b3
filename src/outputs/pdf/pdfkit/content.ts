/**
 * What is drawn on a page, gathered as text and made bytes once. pdfkit 0.20.2 turns every line into bytes letter by
 * letter and keeps them in a list; a leaflet is some ten thousand lines. It has no setting for that, nor for how hard a
 * page is deflated.
 */
import type PDFDocument from 'pdfkit';
import { deflated } from './deflated.ts';

export function gatherContent(doc: PDFDocument): void {
  const drawn = new Map<PDFDocument['page'], string>();
  doc.addContent = (operators) => {
    drawn.set(doc.page, `${drawn.get(doc.page) ?? ''}${operators}\n`);
    return doc;
  };
  const flushPages = doc.flushPages.bind(doc);
  doc.flushPages = () => {
    for (const [{ content }, operators] of drawn) {
      content.buffer = [deflated(operators)];
      content.data.Filter = 'FlateDecode';
      content.compress = false;
    }
    flushPages();
  };
}
