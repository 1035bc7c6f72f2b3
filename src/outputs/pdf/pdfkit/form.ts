/**
 * A drawing kept once and placed where it is wanted: a form XObject (ISO 32000-1 8.10), for which pdfkit 0.20.2 has no
 * call. A form holds paths alone: what it means is said where it is placed, inside the marked content of its Figure.
 */
import type PDFDocument from 'pdfkit';
import type { Reference } from 'pdfkit';
import { deflated } from './deflated.ts';

export interface Form {
  /** Resource name on every page that shows it. */
  readonly name: string;
  readonly ref: Reference;
}

/** Left, top, right and bottom in the form's own units. */
export type Bounds = readonly [number, number, number, number];

/** A form of these operators, written into the file at once. */
export function openForm(doc: PDFDocument, name: string, bounds: Bounds, operators: string): Form {
  const ref = doc.ref({
    Type: 'XObject',
    Subtype: 'Form',
    BBox: [...bounds],
    Resources: {},
    Filter: 'FlateDecode',
  });
  ref.end(deflated(operators));
  return { name, ref };
}

/** Shows a form on the page in hand through a matrix. */
export function placeForm(doc: PDFDocument, { name, ref }: Form, matrix: string): void {
  doc.page.xobjects[name] = ref;
  doc.addContent(`q ${matrix} cm /${name} Do Q`);
}
