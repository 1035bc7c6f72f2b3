/** The structure tree while it grows: each element is hung into its parent at once, in reading order, and filled later. */
import type PDFDocument from 'pdfkit';
import type { StructElement, StructOptions } from 'pdfkit';

/** Structure types of ISO 32000-1, 14.8.4, as far as a leaflet needs them. */
export type TagName =
  | 'Document'
  | 'Sect'
  | 'Div'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'H4'
  | 'P'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Table'
  | 'Caption'
  | 'THead'
  | 'TBody'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Figure'
  | 'Link'
  | 'Span';

export interface Tag {
  readonly name: TagName;
  /** A new last child. Reading order is the order of these calls, wherever and whenever the child is drawn. */
  open(name: TagName, options?: StructOptions): Tag;
  /** Draws content that belongs to this element, on the page in hand; may be called again on a later page. */
  mark(draw: () => void): void;
  readonly element: StructElement;
}

/** How a list counts: ISO 32000-1 table 347. */
export type ListNumbering = 'Decimal' | 'Disc' | 'None';

/** The root element of a document. */
export function openDocumentTag(doc: PDFDocument): Tag {
  const element = doc.struct('Document');
  doc.addStructure(element);
  return tagOf(doc, 'Document', element);
}

/** A list with its way of counting, which 7.6 asks for where its entries have labels. */
export function openList(parent: Tag, numbering: ListNumbering): Tag {
  const list = parent.open('L');
  list.element.dictionary.data.A = { O: 'List', ListNumbering: numbering };
  return list;
}

function tagOf(doc: PDFDocument, name: TagName, element: StructElement): Tag {
  return {
    name,
    element,
    open: (child, options) => {
      const made = doc.struct(child, options);
      element.add(made);
      return tagOf(doc, child, made);
    },
    mark: (draw) => {
      element.add(draw);
    },
  };
}

/** Stands in for a tag while something is only measured. */
export const MEASURED_ONLY: Tag = {
  name: 'Div',
  open: () => MEASURED_ONLY,
  mark: () => undefined,
  element: { dictionary: { data: {} }, add: () => MEASURED_ONLY.element, end: () => undefined },
};
