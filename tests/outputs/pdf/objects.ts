/**
 * Reads the objects of a PDF file as ISO 32000-1 section 7 writes them: enough for files of Flate streams, object
 * streams (7.5.7) and one cross-reference stream (7.5.8), which is what our writer makes. It forgives nothing, where
 * viewers look for lost objects themselves. Cross-reference tables and updates are refused, encryption too.
 */
import { inflateSync } from 'node:zlib';

export interface Name {
  readonly name: string;
}
export interface Ref {
  readonly ref: number;
}
/** Bytes of a string as a binary string; `textOf` reads it. */
export interface PdfString {
  readonly bytes: string;
}
export type Dict = Map<string, Value>;
export interface Stream {
  dict: Dict;
  /** Decoded bytes, one character each. */
  data: string;
}
export type Value = number | boolean | null | Name | Ref | PdfString | Value[] | Dict | Stream;

export interface PdfObjects {
  readonly objects: Map<number, Value>;
  readonly trailer: Dict;
  readonly version: string;
}

/** All objects of a file. Throws with the place when the file is not of the expected form. */
export function readObjects(file: Uint8Array): PdfObjects {
  const text = Buffer.from(file).toString('latin1');
  const version = /^%PDF-(\d\.\d)/.exec(text)?.[1];
  if (version === undefined) throw new Error('no PDF header');
  const { entries, trailer } = crossReferences(text);
  const objects = new Map<number, Value>();
  for (const { id, kind, place } of entries) if (kind === 1) objects.set(id, readIndirect(text, place, id));
  for (const [number, stream] of [...objects])
    if (isStream(stream) && nameOf(stream.dict.get('Type')) === 'ObjStm')
      readObjectStream(stream).forEach(([id, value], at) => {
        const entry = entries.find((one) => one.id === id);
        if (entry?.kind !== 2 || entry.place !== number || entry.at !== at)
          throw new Error(
            `object ${id} is ${at} of stream ${number}, and the cross-references say otherwise`,
          );
        objects.set(id, value);
      });
  const lost = entries.find(({ id, kind }) => kind !== 0 && !objects.has(id));
  if (lost) throw new Error(`object ${lost.id} is in no object stream`);
  if (trailer.has('Encrypt')) throw new Error('the file is encrypted');
  return { objects, trailer, version };
}

/** Text of a string: UTF-16BE with its mark, or one byte a letter (7.9.2.2; the upper half of PDFDocEncoding is refused). */
export function textOf(value: Value | undefined): string | null {
  if (typeof value !== 'object' || value === null || !('bytes' in value)) return null;
  const { bytes } = value as PdfString;
  if (bytes.startsWith('\u00fe\u00ff'))
    return Buffer.from(bytes.slice(2), 'latin1').swap16().toString('utf16le');
  if (/[\u0080-\u00ff]/.test(bytes)) throw new Error(`a string in PDFDocEncoding: ${JSON.stringify(bytes)}`);
  return bytes;
}

export function nameOf(value: Value | undefined): string | null {
  return typeof value === 'object' && value !== null && 'name' in value ? (value as Name).name : null;
}

export function isStream(value: Value | undefined): value is Stream {
  return typeof value === 'object' && value !== null && 'data' in value;
}

/** The value itself or the object it refers to. */
export function resolved(
  { objects }: Pick<PdfObjects, 'objects'>,
  value: Value | undefined,
): Value | undefined {
  const seen = new Set<number>();
  let found = value;
  while (typeof found === 'object' && found !== null && 'ref' in found) {
    const { ref } = found as Ref;
    if (seen.has(ref)) throw new Error(`object ${ref} refers to itself`);
    seen.add(ref);
    found = objects.get(ref);
  }
  return found;
}

/** The dictionary a value is, refers to, or carries as a stream; an empty one otherwise. */
export function dictOf(file: Pick<PdfObjects, 'objects'>, value: Value | undefined): Dict {
  const found = resolved(file, value);
  if (found instanceof Map) return found;
  return isStream(found) ? found.dict : new Map();
}

export function listOf(file: Pick<PdfObjects, 'objects'>, value: Value | undefined): Value[] {
  const found = resolved(file, value);
  if (Array.isArray(found)) return found;
  return found === undefined || found === null ? [] : [found];
}

interface Entry {
  readonly id: number;
  /** 0 free, 1 in the file, 2 in an object stream (table 18). */
  readonly kind: number;
  /** The offset in the file, or the number of the object stream. */
  readonly place: number;
  /** Which object of its stream. */
  readonly at: number;
}

/** The cross-reference stream `startxref` leads to; its dictionary is the trailer. */
function crossReferences(text: string): { entries: readonly Entry[]; trailer: Dict } {
  const start = Number(/startxref\n(\d+)\n%%EOF\s*$/.exec(text)?.[1]);
  const number = Number(/(\d+) 0 obj\s/y.exec(text.slice(start, start + 24))?.[1]);
  const stream = readIndirect(text, start, number);
  if (!isStream(stream) || nameOf(stream.dict.get('Type')) !== 'XRef')
    throw new Error(`no cross-reference stream at ${start}`);
  const { dict, data } = stream;
  const widths = (dict.get('W') as number[]).map(Number);
  const length = widths.reduce((sum, width) => sum + width, 0);
  if (dict.has('Index') || dict.has('Prev'))
    throw new Error('cross-references in sections, or with an update');
  if (data.length !== length * Number(dict.get('Size')))
    throw new Error(`${data.length} bytes of cross-references for ${String(dict.get('Size'))} objects`);
  const entries = Array.from({ length: data.length / length }, (_, id) => {
    let at = id * length;
    const [kind = 1, place = 0, index = 0] = widths.map((width) => {
      const bytes = Buffer.from(data.slice(at, at + width), 'latin1');
      at += width;
      return width === 0 ? undefined : bytes.readUIntBE(0, width);
    });
    return { id, kind, place, at: index };
  });
  return { entries, trailer: dict };
}

/** Numbers and values of the objects in a stream, in their order. */
function readObjectStream({ dict, data }: Stream): readonly (readonly [number, Value])[] {
  const [count, first] = [Number(dict.get('N')), Number(dict.get('First'))];
  const numbers = data.slice(0, first).trim().split(/\s+/).map(Number);
  if (numbers.length !== 2 * count) throw new Error(`${numbers.length} numbers for ${count} objects`);
  return Array.from({ length: count }, (_, at) => {
    const reader = new Reader(data, first + (numbers[2 * at + 1] ?? 0));
    return [numbers[2 * at] ?? 0, readValue(reader)];
  });
}

/** Rows written as the difference to the row above (PNG's Up, 7.4.4.4), put back. */
function withoutPredictor(data: Buffer, columns: number): Buffer {
  const rows = data.length / (columns + 1);
  const out = Buffer.alloc(rows * columns);
  for (let row = 0; row < rows; row++) {
    if (data[row * (columns + 1)] !== 2) throw new Error('a row that is not predicted from the one above');
    for (let at = 0; at < columns; at++) {
      const above = row === 0 ? 0 : (out[(row - 1) * columns + at] ?? 0);
      out[row * columns + at] = (above + (data[row * (columns + 1) + 1 + at] ?? 0)) & 255;
    }
  }
  return out;
}

function readIndirect(text: string, offset: number, number: number): Value {
  const head = /(\d+) (\d+) obj\s/y;
  head.lastIndex = offset;
  const found = head.exec(text);
  if (!found || Number(found[1]) !== number) throw new Error(`object ${number} is not at ${offset}`);
  const reader = new Reader(text, head.lastIndex);
  const value = readValue(reader);
  if (!(value instanceof Map)) return value;
  reader.skipWhite();
  if (!text.startsWith('stream', reader.at)) return value;
  const start = text.indexOf('\n', reader.at) + 1;
  const length = value.get('Length');
  if (typeof length !== 'number') throw new Error(`object ${number}: the stream has no direct Length`);
  const raw = text.slice(start, start + length);
  const filter = nameOf(value.get('Filter'));
  if (filter !== null && filter !== 'FlateDecode') return { dict: value, data: raw };
  if (!text.startsWith('\nendstream', start + length))
    throw new Error(`object ${number}: the stream is not ${length} bytes long`);
  const inflated = filter === null ? Buffer.from(raw, 'latin1') : inflateSync(Buffer.from(raw, 'latin1'));
  const parms = value.get('DecodeParms');
  const columns = parms instanceof Map ? Number(parms.get('Columns')) : 0;
  const bytes = columns === 0 ? inflated : withoutPredictor(inflated, columns);
  return { dict: value, data: bytes.toString('latin1') };
}

/** Where a scan stands. */
export class Reader {
  readonly text: string;
  at: number;
  constructor(text: string, at: number) {
    this.text = text;
    this.at = at;
  }
  skipWhite(): void {
    const white = /(?:[\0\t\n\f\r ]|%[^\n\r]*)*/y;
    white.lastIndex = this.at;
    white.exec(this.text);
    this.at = white.lastIndex;
  }
  /** What the sticky pattern finds here, and past it; null, and not a step, where it finds nothing. */
  take(pattern: RegExp): RegExpExecArray | null {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text);
    if (found) this.at = pattern.lastIndex;
    return found;
  }
}

/** One value, or a bare word as a name with a leading exclamation mark: an operator of a content stream. */
export function readValue(reader: Reader): Value {
  reader.skipWhite();
  const ref = reader.take(/(\d+) (\d+) R(?![A-Za-z])/y);
  if (ref) return { ref: Number(ref[1]) };
  const number = reader.take(/[+-]?(?:\d+\.?\d*|\.\d+)/y);
  if (number) return Number(number[0]);
  if (reader.take(/<</y)) return readDict(reader);
  if (reader.take(/\[/y)) return readArray(reader);
  const hex = reader.take(/<([0-9A-Fa-f\s]*)>/y);
  if (hex) return { bytes: hexBytes((hex[1] ?? '').replace(/\s/g, '')) };
  if (reader.take(/\(/y)) return { bytes: readLiteral(reader) };
  const name = reader.take(/\/([^\0\t\n\f\r ()<>[\]{}/%]*)/y);
  if (name)
    return {
      name: (name[1] ?? '').replace(/#(..)/g, (_, code: string) => String.fromCharCode(parseInt(code, 16))),
    };
  const word = reader.take(/[A-Za-z'"*][A-Za-z0-9'"*]*/y);
  if (!word)
    throw new Error(
      `nothing to read at ${reader.at}: ${JSON.stringify(reader.text.slice(reader.at, reader.at + 20))}`,
    );
  if (word[0] === 'true' || word[0] === 'false') return word[0] === 'true';
  return word[0] === 'null' ? null : { name: `!${word[0]}` };
}

function readDict(reader: Reader): Dict {
  const dict: Dict = new Map();
  for (;;) {
    reader.skipWhite();
    if (reader.take(/>>/y)) return dict;
    const key = nameOf(readValue(reader));
    if (key === null || key.startsWith('!')) throw new Error(`a dictionary key is no name at ${reader.at}`);
    dict.set(key, readValue(reader));
  }
}

function readArray(reader: Reader): Value[] {
  const values: Value[] = [];
  for (;;) {
    reader.skipWhite();
    if (reader.take(/\]/y)) return values;
    values.push(readValue(reader));
  }
}

const ESCAPES: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' };

function readLiteral(reader: Reader): string {
  let out = '';
  for (let depth = 1; ; reader.at++) {
    const letter = reader.text[reader.at];
    if (letter === undefined) throw new Error('a string has no end');
    if (letter === '\\') {
      const octal = /[0-7]{1,3}/y;
      octal.lastIndex = reader.at + 1;
      const code = octal.exec(reader.text)?.[0];
      const escaped = reader.text[reader.at + 1] ?? '';
      if (code !== undefined) out += String.fromCharCode(parseInt(code, 8) & 255);
      else if (escaped !== '\n') out += ESCAPES[escaped] ?? escaped;
      reader.at += code?.length ?? 1;
      continue;
    }
    if (letter === '(') depth++;
    if (letter === ')' && --depth === 0) {
      reader.at++;
      return out;
    }
    out += letter;
  }
}

function hexBytes(digits: string): string {
  return Buffer.from(digits.length % 2 === 0 ? digits : `${digits}0`, 'hex').toString('latin1');
}
