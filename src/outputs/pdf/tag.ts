/**
 * The structure tree as plain data until it is planted: a page may be composed in several ways and all but one thrown
 * away. Reading order is the order in which tags are opened, wherever and whenever their content is drawn.
 */
import type PDFDocument from 'pdfkit';
import type { StructElement, StructOptions } from 'pdfkit';

/** Structure types of ISO 32000-1, 14.8.4, as far as a leaflet needs them. */
export type TagName =
  | 'Document'
  | 'Sect'
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
  readonly options: StructOptions;
  readonly kids: Tag[];
  /** Attributes of one owner, ISO 32000-1 14.7.5. */
  attributes: Readonly<Record<string, unknown>> | null;
  /** For a heading: what a bookmark needs. */
  bookmark: Bookmark | null;
  /** Where it stands in the file; null until the tree is planted. */
  planted: { readonly doc: PDFDocument; readonly element: StructElement } | null;
}

export interface Bookmark {
  readonly title: string;
  readonly level: number;
  /** Where it was drawn: page counted from 0, top in points. */
  at: { readonly page: number; readonly yPt: number } | null;
}

/** How a list counts: ISO 32000-1 table 347. */
export type ListNumbering = 'Decimal' | 'Disc' | 'None';

/** A tag that hangs nowhere yet. */
export function looseTag(name: TagName, options: StructOptions = {}): Tag {
  return { name, options, kids: [], attributes: null, bookmark: null, planted: null };
}

/** A new last child. In a planted tree it is planted at once. */
export function open(parent: Tag, name: TagName, options: StructOptions = {}): Tag {
  const kid = looseTag(name, options);
  parent.kids.push(kid);
  if (parent.planted) plantUnder(parent.planted.doc, parent.planted.element, kid);
  return kid;
}

/** A list with its way of counting, which 7.6 asks for where its entries have labels. */
export function openList(parent: Tag, numbering: ListNumbering): Tag {
  const list = open(parent, 'L');
  describe(list, { O: 'List', ListNumbering: numbering });
  return list;
}

/** Hangs the children of a loose tag to the end of another's, in their order. */
export function adopt(parent: Tag, loose: Tag): void {
  parent.kids.push(...loose.kids);
  if (parent.planted) plant(parent.planted.doc, parent);
}

export function describe(tag: Tag, attributes: Readonly<Record<string, unknown>>): void {
  tag.attributes = attributes;
  if (tag.planted) tag.planted.element.dictionary.data.A = attributes;
}

/** Gives every tag of a tree its element in the file; those that have one keep it. */
export function plant(doc: PDFDocument, root: Tag): void {
  if (!root.planted) {
    const element = elementFor(doc, root);
    doc.addStructure(element);
  }
  for (const kid of root.kids) if (root.planted && !kid.planted) plantUnder(doc, root.planted.element, kid);
}

/** Draws content that belongs to a planted tag, on the page in hand; may be called again on a later page. */
export function mark(tag: Tag, draw: () => void): void {
  elementOf(tag).add(draw);
}

/** The element of a planted tag. Drawing into a tag that was never planted is our fault and throws. */
export function elementOf({ name, planted }: Tag): StructElement {
  if (!planted) throw new Error(`a ${name} is drawn that hangs in no tree`);
  return planted.element;
}

/** A tag and all under it, in reading order. */
export function* walkTags(tag: Tag): Generator<Tag> {
  yield tag;
  for (const kid of tag.kids) yield* walkTags(kid);
}

function plantUnder(doc: PDFDocument, parent: StructElement, tag: Tag): void {
  const element = elementFor(doc, tag);
  parent.add(element);
  for (const kid of tag.kids) plantUnder(doc, element, kid);
}

function elementFor(doc: PDFDocument, tag: Tag): StructElement {
  const element = doc.struct(tag.name, tag.options);
  if (tag.attributes) element.dictionary.data.A = tag.attributes;
  tag.planted = { doc, element };
  return element;
}
