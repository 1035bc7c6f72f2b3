/**
 * Texts of the metadata as XML. pdfkit 0.20.2 puts title, author and keywords into XMP as they stand: an ampersand in a
 * title makes XML that no reader opens, and the file is then none by ISO 14289-1 clause 5. Not reported upstream, as far
 * as was searched.
 */
import type PDFDocument from 'pdfkit';

export function escapeMetadata(doc: PDFDocument): void {
  const endMetadata = doc.endMetadata.bind(doc);
  doc.endMetadata = () => {
    // By now the information dictionary is written; what follows puts the same texts into XML as they stand.
    doc.info = escaped(doc.info);
    endMetadata();
  };
}

function escaped(info: PDFDocument['info']): PDFDocument['info'] {
  return Object.fromEntries(
    Object.entries(info).map(([key, entry]) => [key, typeof entry === 'string' ? xmlText(entry) : entry]),
  );
}

/** A text as it may stand between two XML tags; what XML 1.0 cannot hold at all (most control characters) is left out. */
function xmlText(text: string): string {
  return text.replace(NOT_XML, '').replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** XML 1.0, production 2 (Char), turned round. */
const NOT_XML = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;
