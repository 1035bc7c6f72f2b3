/**
 * The root of the parent tree without limits. ISO 32000-1 table 37: only leaves and inner nodes of a number tree carry
 * Limits, never its root. pdfkit 0.20.2 writes them into the one node it makes unless told not to, which it does itself
 * for embedded files only (its issue 1227, open).
 */
import type PDFDocument from 'pdfkit';

export function unlimitParentTree(doc: PDFDocument): void {
  doc.getStructParentTree().limits = false;
}
