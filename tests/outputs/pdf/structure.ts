/** The structure tree of a PDF: elements, attributes and the text each holds. ISO 32000-1 14.7, 14.8. */
import { pagesOf, toUnicodeOf, type PageContent } from './content.ts';
import {
  dictOf,
  isStream,
  listOf,
  nameOf,
  resolved,
  type Dict,
  type PdfObjects,
  type Value,
} from './objects.ts';

export interface Element {
  readonly role: string;
  readonly dict: Dict;
  readonly parent: Element | null;
  readonly kids: readonly Kid[];
}

export type Kid =
  | { readonly kind: 'element'; readonly element: Element }
  | { readonly kind: 'content'; readonly page: number; readonly mcid: number }
  | { readonly kind: 'annotation'; readonly ref: number };

export interface Structure {
  readonly file: PdfObjects;
  readonly catalog: Dict;
  readonly root: Dict;
  readonly top: readonly Element[];
  readonly pages: readonly PageContent[];
}

/** The tree of a file; no elements when there is none. */
export function structureOf(file: PdfObjects): Structure {
  const catalog = dictOf(file, file.trailer.get('Root'));
  const root = dictOf(file, catalog.get('StructTreeRoot'));
  const pages = pagesOf(file);
  const top = listOf(file, root.get('K')).map((kid) => elementOf(file, kid, null, pages));
  return { file, catalog, root, top, pages };
}

function elementOf(
  file: PdfObjects,
  value: Value,
  parent: Element | null,
  pages: readonly PageContent[],
): Element {
  const dict = dictOf(file, value);
  const kids: Kid[] = [];
  const element: Element = { role: nameOf(dict.get('S')) ?? '', dict, parent, kids };
  const pageOf = (ref: Value | undefined) =>
    pages.findIndex((page) => page.ref === (ref as { ref: number } | undefined)?.ref);
  for (const kid of listOf(file, dict.get('K'))) {
    if (typeof kid === 'number') {
      kids.push({ kind: 'content', page: pageOf(dict.get('Pg')), mcid: kid });
      continue;
    }
    const kidDict = dictOf(file, kid);
    const type = nameOf(kidDict.get('Type'));
    if (type === 'MCR')
      kids.push({ kind: 'content', page: pageOf(kidDict.get('Pg')), mcid: Number(kidDict.get('MCID')) });
    else if (type === 'OBJR')
      kids.push({ kind: 'annotation', ref: (kidDict.get('Obj') as { ref: number }).ref });
    else kids.push({ kind: 'element', element: elementOf(file, kid, element, pages) });
  }
  return element;
}

/** Child elements. */
export function elementsIn({ kids }: Pick<Element, 'kids'>): readonly Element[] {
  return kids.flatMap((kid) => (kid.kind === 'element' ? [kid.element] : []));
}

/** The element and everything under it, in reading order. */
export function* walk(elements: readonly Element[]): Generator<Element> {
  for (const element of elements) {
    yield element;
    yield* walk(elementsIn(element));
  }
}

/** Attributes of an element under one owner. */
export function attributesOf({ file }: Structure, { dict }: Element, owner: string): Dict {
  return (
    listOf(file, dict.get('A'))
      .map((one) => dictOf(file, one))
      .find((one) => nameOf(one.get('O')) === owner) ?? new Map()
  );
}

/** Texts of all marked content by page and number, as `page/mcid`. */
export function textsByMark(structure: Structure): ReadonlyMap<string, string> {
  const texts = new Map<string, string>();
  structure.pages.forEach(({ page, painted }, at) => {
    const fonts = fontMaps(structure, page);
    for (const { marks, codes, font } of painted) {
      const mark = marks.findLast(({ mcid }) => mcid !== null);
      if (!mark) continue;
      const actual = marks.at(-1)?.actual ?? null;
      const shown = codes.map((code) => fonts.get(font)?.get(code) ?? '\ufffd').join('');
      const key = `${at}/${mark.mcid}`;
      texts.set(key, (texts.get(key) ?? '') + (actual ?? shown));
    }
  });
  return texts;
}

/** All text of an element in reading order, white space as it stands. */
export function textIn(element: Element, texts: ReadonlyMap<string, string>): string {
  return element.kids
    .map((kid) => {
      if (kid.kind === 'element') return textIn(kid.element, texts);
      return kid.kind === 'content' ? (texts.get(`${kid.page}/${kid.mcid}`) ?? '') : '';
    })
    .join('');
}

/** The tree of roles alone, for comparing two files. */
export function shapeOf(elements: readonly Element[]): string {
  return elements.map((element) => `${element.role}(${shapeOf(elementsIn(element))})`).join(' ');
}

/** ToUnicode maps of a page's fonts by resource name. */
export function fontMaps({ file }: Structure, page: Dict): ReadonlyMap<string, ReadonlyMap<number, string>> {
  const fonts = dictOf(file, dictOf(file, page.get('Resources')).get('Font'));
  return new Map(
    [...fonts].map(([name, font]) => {
      const cmap = resolved(file, dictOf(file, font).get('ToUnicode'));
      return [name, isStream(cmap) ? toUnicodeOf(cmap.data) : new Map<number, string>()];
    }),
  );
}
