/** What pdfkit 0.20.2 leaves short of ISO 14289-1 (PDF/UA-1), put right in one place; each has a test of its own. */
import { zlibSync } from 'fflate';
import type PDFDocument from 'pdfkit';

/** U+FFFD: what stands for a glyph without a character; 7.21.7 forbids 0. */
const REPLACEMENT = 0xfffd;

/** Mends a new document. Call before anything is drawn. */
export function mend(doc: PDFDocument): void {
  // ISO 32000-1 table 37: only leaves of a number tree carry Limits, never its root.
  doc.getStructParentTree().limits = false;
  const endMetadata = doc.endMetadata.bind(doc);
  doc.endMetadata = () => {
    // By now the information dictionary is written; what follows puts the same texts into XML as they stand.
    doc.info = escaped(doc.info);
    endMetadata();
  };
}

/**
 * The file's bytes, once the document is ended. pdfkit is a stream and turns every line into bytes letter by letter;
 * a leaflet is some ten thousand lines, and nobody reads it before it is whole: lines are gathered as text and become
 * bytes together. Call before anything is drawn.
 */
export function collected(doc: PDFDocument): Promise<Uint8Array> {
  gatherPages(doc);
  packStreams(doc);
  const parts: Uint8Array[] = [doc.read()];
  let lines = '';
  const turnToBytes = () => {
    parts.push(bytesOf(lines));
    lines = '';
  };
  doc._write = (written) => {
    doc._offset += written.length;
    if (typeof written === 'string') {
      lines += `${written}\n`;
      doc._offset += 1;
    } else {
      turnToBytes();
      parts.push(written);
    }
  };
  const end = doc.push.bind(doc, null);
  doc.push = (chunk) => chunk !== null || end();
  return new Promise((resolve) => {
    // The stream's own end, not the last write: until it has come round, the stream's queue holds the whole document.
    doc.resume().once('end', () => {
      turnToBytes();
      resolve(joined(parts));
    });
  });
}

/** Half the time of the usual 6 for a file larger by a fiftieth, measured on the demo's fullest leaflet [choice]. */
const LEVEL = 4;

/** In JavaScript, so that a browser packs the very bytes that Node packs. */
function packed(bytes: Uint8Array): Uint8Array {
  return zlibSync(bytes, { level: LEVEL });
}

/** Every letter of the text is one byte (ISO/IEC 8859-1). */
function bytesOf(latin1: string): Uint8Array {
  const bytes = new Uint8Array(latin1.length);
  for (let at = 0; at < latin1.length; at += 1) bytes[at] = latin1.charCodeAt(at);
  return bytes;
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Fonts, bookmarks and what else pdfkit would pack by the machine's own zlib. */
function packStreams(doc: PDFDocument): void {
  const make = doc.ref.bind(doc);
  doc.ref = (data) => {
    const made = make(data);
    const finish = made.finalize.bind(made);
    made.finalize = () => {
      if (made.compress && made.buffer.length > 0) {
        made.buffer = [packed(joined(made.buffer))];
        made.compress = false;
      }
      finish();
    };
    return made;
  };
}

function gatherPages(doc: PDFDocument): void {
  const drawn = new Map<PDFDocument['page'], string>();
  doc.addContent = (operators) => {
    drawn.set(doc.page, `${drawn.get(doc.page) ?? ''}${operators}\n`);
    return doc;
  };
  const flushPages = doc.flushPages.bind(doc);
  doc.flushPages = () => {
    for (const [{ content }, operators] of drawn) {
      content.buffer = [packed(bytesOf(operators))];
      content.data.Filter = 'FlateDecode';
      content.compress = false;
    }
    flushPages();
  };
}

/** Mends the fonts of a document that is drawn. Call just before its end. */
export function mendFonts(doc: PDFDocument): void {
  for (const font of Object.values(doc._fontFamilies)) font.unicode[0] = [REPLACEMENT];
}

function escaped(info: PDFDocument['info']): PDFDocument['info'] {
  return Object.fromEntries(
    Object.entries(info).map(([key, entry]) => [key, typeof entry === 'string' ? xmlText(entry) : entry]),
  );
}

/** A text as it may stand between two XML tags; what XML 1.0 cannot hold at all (most control characters) is left out. */
export function xmlText(text: string): string {
  return text.replace(NOT_XML, '').replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** XML 1.0, production 2 (Char), turned round. */
const NOT_XML = /[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu;
