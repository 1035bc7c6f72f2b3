/**
 * The finished file: all that is no stream goes into object streams, the places of all into a cross-reference stream
 * (ISO 32000-1 7.5.7 and 7.5.8, PDF 1.5). pdfkit 0.20.2 writes each object in plain text with a table of 20 bytes an
 * object; a tagged leaflet is a thousand small ones. It is also a stream that turns every line into bytes letter by
 * letter; here lines stay text until the file is whole.
 */
import type PDFDocument from 'pdfkit';
import type { Reference } from 'pdfkit';
import { joined, latin1 } from './bytes.ts';
import { deflated } from './deflated.ts';

/** An object that pdfkit has ended. */
interface Written {
  readonly id: number;
  /** Its value; of a stream its dictionary. */
  readonly value: string;
  readonly stream: Uint8Array | null;
}

/** The file's bytes, once the document is ended. Call before anything is drawn. */
export function filed(doc: PDFDocument): Promise<Uint8Array> {
  const objects: Written[] = [];
  let parts: (string | Uint8Array)[] = [];
  doc._write = (part) => void parts.push(part);
  const refEnd = doc._refEnd.bind(doc);
  doc._refEnd = (ref) => {
    objects.push(writtenOf(ref, parts));
    parts = [];
    refEnd(ref);
  };
  return new Promise((resolve) => {
    doc._finalize = () => {
      const file = fileOf(doc, objects);
      // A document is a stream, and what it told Node to do later holds it until then: told together with its close, one
      // document after the other is let go of, where a build never waits for anything else.
      doc.once('close', () => resolve(file));
      doc.destroy();
    };
  });
}

/** What pdfkit writes of an object: its head, its value, perhaps the word `stream` and bytes, its end. */
function writtenOf({ id }: Reference, [, value, , stream]: readonly (string | Uint8Array)[]): Written {
  return { id, value: String(value), stream: stream instanceof Uint8Array ? stream : null };
}

/** Objects of one object stream at most: a reader that wants one of them reads them all [choice]. */
const OBJECTS_A_STREAM = 2000;

/** Where an object stands: in the file at an offset, or in an object stream at an index. */
type Place =
  readonly [kind: 1, offset: number, generation: 0] | readonly [kind: 2, stream: number, at: number];

/** No object 0: the head of the list of free objects, which is empty. */
const FREE = [0, 0, 0] as const;

function fileOf(doc: PDFDocument, objects: readonly Written[]): Uint8Array {
  const places = new Map<number, Place>();
  // A second line of bytes above 127 tells programs that the file is not text (7.5.2).
  const parts: Uint8Array[] = [latin1(`%PDF-${doc.version}\n%\xff\xff\xff\xff\n`)];
  let offset = parts[0]?.length ?? 0;
  const put = (id: number, head: string, stream: Uint8Array): void => {
    places.set(id, [1, offset, 0]);
    const around = [latin1(`${id} 0 obj\n${head}\nstream\n`), stream, latin1('\nendstream\nendobj\n')];
    for (const part of around) offset += part.length;
    parts.push(...around);
  };
  // In the order of their numbers, which then deflate best, and so do references to neighbours.
  const plain = objects.filter(({ stream }) => stream === null).sort((one, other) => one.id - other.id);
  for (const { id, value, stream } of objects) if (stream) put(id, value, stream);
  let last = Math.max(...objects.map(({ id }) => id));
  for (let from = 0; from < plain.length; from += OBJECTS_A_STREAM) {
    const some = plain.slice(from, from + OBJECTS_A_STREAM);
    last += 1;
    some.forEach(({ id }, at) => places.set(id, [2, last, at]));
    put(last, ...objectStream(some));
  }
  const table = last + 1;
  const start = offset;
  places.set(table, [1, start, 0]);
  put(table, ...crossReferences(doc, places, table + 1));
  parts.push(latin1(`startxref\n${start}\n%%EOF\n`));
  return joined(parts);
}

/** The numbers of the objects with their places, then the objects (7.5.7). */
function objectStream(objects: readonly Written[]): readonly [head: string, stream: Uint8Array] {
  let at = 0;
  const index = objects.map(({ id, value }) => {
    const entry = `${id} ${at}`;
    at += value.length + 1;
    return entry;
  });
  const first = `${index.join(' ')}\n`;
  const stream = deflated(first + objects.map(({ value }) => `${value}\n`).join(''));
  const head = `/Type /ObjStm /N ${objects.length} /First ${first.length} /Filter /FlateDecode /Length ${stream.length}`;
  return [`<< ${head} >>`, stream];
}

/** Bytes of each field of an entry: what kind, where (files up to 4 GB), which of the stream. */
const FIELDS = [1, 4, 2] as const;
const ENTRY = FIELDS[0] + FIELDS[1] + FIELDS[2];

/** Entries are written as the difference to the one above, which deflates to next to nothing: PNG's Up (7.4.4.4). */
const UP = 2;

/** All places from object 0 on, and what else a trailer says (7.5.8). */
function crossReferences(
  { _root, _info, _id }: PDFDocument,
  places: ReadonlyMap<number, Place>,
  size: number,
): readonly [head: string, stream: Uint8Array] {
  let above = new Uint8Array(ENTRY);
  const rows = Array.from({ length: size }, (_, id) => {
    const entry = entryOf(places.get(id) ?? FREE);
    const before = above;
    const row = [UP, ...entry.map((byte, at) => (byte - (before[at] ?? 0)) & 255)];
    above = entry;
    return String.fromCharCode(...row);
  });
  const stream = deflated(rows.join(''));
  const id = `<${hex(_id)}>`;
  const head = [
    `/Type /XRef /Size ${size} /W [${FIELDS.join(' ')}] /Root ${_root} /Info ${_info} /ID [${id} ${id}]`,
    `/Filter /FlateDecode /DecodeParms << /Predictor 12 /Columns ${ENTRY} >> /Length ${stream.length}`,
  ];
  return [`<< ${head.join(' ')} >>`, stream];
}

function entryOf([kind, place, at]: readonly [number, number, number]): Uint8Array<ArrayBuffer> {
  const entry = new Uint8Array(ENTRY);
  const fields = new DataView(entry.buffer);
  fields.setUint8(0, kind);
  fields.setUint32(FIELDS[0], place);
  fields.setUint16(FIELDS[0] + FIELDS[1], at);
  return entry;
}

function hex(bytes: Uint8Array): string {
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
