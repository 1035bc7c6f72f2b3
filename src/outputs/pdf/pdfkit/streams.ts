/**
 * Fonts, bookmarks and what else pdfkit 0.20.2 would pack by the machine's own zlib, of which each machine and each
 * browser may have another: packed by ours.
 */
import type PDFDocument from 'pdfkit';
import { joined } from './bytes.ts';
import { deflated } from './deflated.ts';

export function packStreams(doc: PDFDocument): void {
  const make = doc.ref.bind(doc);
  doc.ref = (data) => {
    const made = make(data);
    const finish = made.finalize.bind(made);
    made.finalize = () => {
      if (made.compress && made.buffer.length > 0) {
        made.buffer = [deflated(joined(made.buffer))];
        made.compress = false;
      }
      finish();
    };
    return made;
  };
}
