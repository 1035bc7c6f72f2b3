/**
 * pdfkit 0.20.2 as this room uses it. It leaves some things short of ISO 14289-1 (PDF/UA-1) and does without others of
 * ISO 32000-1: each is put right in a file of this folder, with the reason and what pdfkit does; nothing else of this
 * room reaches into it. Each has a test of its own, and a new release of pdfkit is held against the same tests.
 */
import PDFDocument, { type DocumentOptions } from 'pdfkit';
import { gatherContent, type ShowText } from './content.ts';
import { filed } from './file.ts';
import { escapeMetadata } from './metadata.ts';
import { nameNotdef } from './notdef.ts';
import { packStreams } from './streams.ts';
import { unlimitParentTree } from './parentTree.ts';

/** A document with everything put right, and its bytes once `ended`. */
export interface OpenDocument {
  readonly doc: PDFDocument;
  readonly showText: ShowText;
  readonly bytes: Promise<Uint8Array>;
}

export function openDocument(options: DocumentOptions): OpenDocument {
  const doc = new PDFDocument(options);
  unlimitParentTree(doc);
  escapeMetadata(doc);
  packStreams(doc);
  return { doc, showText: gatherContent(doc), bytes: filed(doc) };
}

/** Ends a document that is drawn. */
export function ended({ doc, bytes }: Pick<OpenDocument, 'doc' | 'bytes'>): Promise<Uint8Array> {
  nameNotdef(doc);
  doc.end();
  return bytes;
}
