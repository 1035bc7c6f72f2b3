/** What a page shows and how it is marked: operators of its content stream, text by marked content. ISO 32000-1 8, 9, 14.6. */
import {
  dictOf,
  isStream,
  listOf,
  nameOf,
  Reader,
  readValue,
  resolved,
  textOf,
  type Dict,
  type PdfObjects,
  type PdfString,
  type Value,
} from './objects.ts';

/** One thing painted on a page. */
export interface Painted {
  readonly kind: 'text' | 'path' | 'image';
  /** Marked content around it, outermost first. */
  readonly marks: readonly Mark[];
  /** Codes of the glyphs shown, two bytes each, and the font's resource name. */
  readonly codes: readonly number[];
  readonly font: string;
  /** Text rendering mode 3 leaves no trace. */
  readonly invisible: boolean;
  /** Where text begins, points from the upper left corner, and its size; zeros for anything else. */
  readonly at: { readonly xPt: number; readonly yPt: number; readonly sizePt: number };
  /** Resource name of what is placed by `Do`. */
  readonly placed: string;
}

export interface Mark {
  readonly tag: string;
  readonly mcid: number | null;
  readonly actual: string | null;
}

const PAINTING = new Set(['f', 'F', 'f*', 'B', 'B*', 'b', 'b*', 'S', 's', 'sh']);

/** Everything painted by a content stream, in order. Throws where marked content does not pair. */
export function paintedBy(content: string, properties: Dict, file: PdfObjects): readonly Painted[] {
  const out: Painted[] = [];
  const marks: Mark[] = [];
  let font = '';
  let mode = 0;
  let placed = '';
  let at = { xPt: 0, yPt: 0, sizePt: 0 };
  const show = (kind: Painted['kind'], codes: readonly number[]): void => {
    out.push({ kind, marks: [...marks], codes, font, invisible: kind === 'text' && mode === 3, at, placed });
  };
  for (const { operator, operands } of operatorsOf(content)) {
    if (operator === 'BMC') marks.push({ tag: nameOf(operands[0]) ?? '', mcid: null, actual: null });
    else if (operator === 'BDC') marks.push(markOf(operands, properties, file));
    else if (operator === 'EMC') {
      if (!marks.pop()) throw new Error('marked content ends that never began');
    } else if (operator === 'Tf') {
      font = nameOf(operands[0]) ?? '';
      at = { ...at, sizePt: Number(operands[1]) };
    } else if (operator === 'Tm') at = { ...at, xPt: Number(operands[4]), yPt: Number(operands[5]) };
    else if (operator === 'Td') at = movedBy(at, operands);
    else if (operator === 'Tr') mode = Number(operands[0]);
    else if (operator === 'Tj' || operator === 'TJ') show('text', codesOf(operands[0]));
    else if (operator === 'Do') {
      placed = nameOf(operands[0]) ?? '';
      show('image', []);
    } else if (PAINTING.has(operator)) show('path', []);
  }
  if (marks.length > 0) throw new Error('marked content has no end');
  return out;
}

/** Of a line whose letters stand upright on a page that counts down, as all of ours do: the operands count up. */
function movedBy(at: Painted['at'], [xPt, upPt]: readonly Value[]): Painted['at'] {
  return { ...at, xPt: at.xPt + Number(xPt), yPt: at.yPt - Number(upPt) };
}

function markOf([tag, property]: readonly Value[], properties: Dict, file: PdfObjects): Mark {
  const name = nameOf(property);
  const dict = name === null ? dictOf(file, property) : dictOf(file, properties.get(name));
  const mcid = dict.get('MCID');
  return {
    tag: nameOf(tag) ?? '',
    mcid: typeof mcid === 'number' ? mcid : null,
    actual: textOf(dict.get('ActualText')),
  };
}

/** The operators of a content stream with their operands. */
export function* operatorsOf(content: string): Generator<{ operator: string; operands: Value[] }> {
  const reader = new Reader(content, 0);
  let operands: Value[] = [];
  for (;;) {
    reader.skipWhite();
    if (reader.at >= content.length) return;
    const value = readValue(reader);
    const name = nameOf(value);
    if (name?.startsWith('!')) {
      yield { operator: name.slice(1), operands };
      operands = [];
    } else operands.push(value);
  }
}

function codesOf(shown: Value | undefined): readonly number[] {
  const strings = Array.isArray(shown) ? shown : [shown];
  return strings.flatMap((part) => {
    if (typeof part !== 'object' || part === null || !('bytes' in part)) return [];
    const { bytes } = part as PdfString;
    return Array.from(
      { length: bytes.length / 2 },
      (_, at) => bytes.charCodeAt(2 * at) * 256 + bytes.charCodeAt(2 * at + 1),
    );
  });
}

/** Pages in order, each with its dictionary and what it paints. */
export interface PageContent {
  readonly page: Dict;
  readonly ref: number;
  readonly painted: readonly Painted[];
}

export function pagesOf(file: PdfObjects): readonly PageContent[] {
  const root = dictOf(file, file.trailer.get('Root'));
  return listOf(file, dictOf(file, root.get('Pages')).get('Kids')).map((kid) => {
    const page = dictOf(file, kid);
    const content = resolved(file, page.get('Contents'));
    if (!isStream(content)) throw new Error('a page has no content stream');
    const properties = dictOf(file, dictOf(file, page.get('Resources')).get('Properties'));
    return { page, ref: (kid as { ref: number }).ref, painted: paintedBy(content.data, properties, file) };
  });
}

/** Character codes to text, from a ToUnicode map of the form pdfkit writes (`beginbfrange` with arrays). */
export function toUnicodeOf(cmap: string): ReadonlyMap<number, string> {
  const map = new Map<number, string>();
  for (const [, first, , list] of cmap.matchAll(/<([0-9a-f]+)> <([0-9a-f]+)> \[([^\]]*)\]/gi))
    [...(list ?? '').matchAll(/<([0-9a-f ]*)>/gi)].forEach(([, units], at) => {
      const codes = (units ?? '').split(' ').map((unit) => parseInt(unit, 16));
      map.set(parseInt(first ?? '', 16) + at, String.fromCharCode(...codes));
    });
  return map;
}
