// Gives the printed face a plain zero: the two counters that a slash parts become one. The slashed zero of Atkinson
// Hyperlegible Next has no other form in the face, and a dose is no code. The Open Font License lets a glyph be changed
// where no name is reserved, as here; the changed face bears a name of its own.
//
//   npm install --no-save wawoff2
//   node scripts/plainZero.mjs FOLDER OUT    every .ttf and .woff2 of a folder of unchanged files, changed, into another
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { create } from 'fontkit';

const OLD_NAME = 'Atkinson Hyperlegible Next';
const NEW_NAME = 'Loadleaf Hyperlegible';
const ON_CURVE = 1;

const [from, to] = process.argv.slice(2);
const { compress, decompress } = await import('wawoff2');
mkdirSync(to, { recursive: true });
for (const file of readdirSync(from).filter((name) => /\.(ttf|woff2)$/.test(name))) {
  const bytes = readFileSync(join(from, file));
  const packed = file.endsWith('.woff2');
  const face = changed(packed ? Buffer.from(await decompress(bytes)) : bytes);
  writeFileSync(join(to, file), packed ? await compress(face) : face);
}

function changed(bytes) {
  const face = create(bytes);
  const zeros = new Set(
    ['tnum', 'pnum'].flatMap((way) => face.layout('0', [way]).glyphs.map(({ id }) => id)),
  );
  const tables = tablesOf(bytes);
  const glyphs = glyphsOf(tables);
  for (const id of zeros) glyphs[id] = simpleGlyph(plain(contoursOf(face.getGlyph(id).path.commands)));
  const offsets = [0];
  for (const glyph of glyphs) offsets.push(offsets.at(-1) + glyph.length);
  const loca = Buffer.alloc(offsets.length * 4);
  offsets.forEach((offset, at) => loca.writeUInt32BE(offset, at * 4));
  const head = Buffer.from(tables.get('head'));
  head.writeInt16BE(1, 50); // long offsets
  tables.set('glyf', Buffer.concat(glyphs)).set('loca', loca).set('head', head);
  tables.set('name', renamed(tables.get('name')));
  return written(tables, bytes.readUInt32BE(0));
}

/** Outline and one counter, made of the sides of the two; the ends of the slash are bridged by a curve each. */
function plain([outline, lower, upper]) {
  // The lower counter goes from its foot to the right, along the slash, and back down the left; the upper one from the
  // slash's upper end along it to the right, up and over.
  const alongLower = longestLine(lower);
  const alongUpper = longestLine(upper);
  const foot = lower.slice(0, alongLower + 1);
  const left = lower.slice(alongLower + 1);
  const right = [...upper.slice(alongUpper + 1), upper[0]];
  return [
    outline,
    [...foot, bridge(foot.at(-1), right[0]), ...right, bridge(right.at(-1), left[0]), ...left],
  ];
}

/** Off the curve: further along than up or down, as an upright oval bends near its foot and its top. */
function bridge(a, b) {
  return { x: Math.round(a.x + (b.x - a.x) * 0.62), y: Math.round(a.y + (b.y - a.y) * 0.45), on: false };
}

function longestLine(points) {
  const lengths = points.map((point, at) => {
    const next = points[at + 1];
    return next !== undefined && point.on && next.on ? Math.hypot(next.x - point.x, next.y - point.y) : 0;
  });
  return lengths.indexOf(Math.max(...lengths));
}

function contoursOf(commands) {
  const contours = [];
  for (const { command, args } of commands) {
    const [x, y, endX, endY] = args.map(Math.round);
    if (command === 'moveTo') contours.push([{ x, y, on: true }]);
    if (command === 'lineTo') contours.at(-1).push({ x, y, on: true });
    if (command === 'quadraticCurveTo')
      contours.at(-1).push({ x, y, on: false }, { x: endX, y: endY, on: true });
  }
  // A path that ends where it began says that point twice.
  return contours.map((points) => {
    const [first, last] = [points[0], points.at(-1)];
    return last.on && first.x === last.x && first.y === last.y ? points.slice(0, -1) : points;
  });
}

/** OpenType 1.9, `glyf`: a simple glyph with all its coordinates in two bytes. */
function simpleGlyph(contours) {
  const points = contours.flat();
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const size = 10 + contours.length * 2 + 2 + points.length * 5;
  const glyph = Buffer.alloc(size + (-size & 3));
  let at = 0;
  const int16 = (value) => (at = glyph.writeInt16BE(value, at));
  [contours.length, Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)].forEach(int16);
  let end = -1;
  for (const contour of contours) int16((end += contour.length));
  int16(0);
  for (const { on } of points) at = glyph.writeUInt8(on ? ON_CURVE : 0, at);
  for (const numbers of [xs, ys]) numbers.forEach((value, index) => int16(value - (numbers[index - 1] ?? 0)));
  return glyph;
}

function tablesOf(bytes) {
  const tables = new Map();
  for (let index = 0; index < bytes.readUInt16BE(4); index += 1) {
    const at = 12 + index * 16;
    const offset = bytes.readUInt32BE(at + 8);
    tables.set(
      bytes.toString('latin1', at, at + 4),
      bytes.subarray(offset, offset + bytes.readUInt32BE(at + 12)),
    );
  }
  return tables;
}

function glyphsOf(tables) {
  const [head, loca, glyf] = ['head', 'loca', 'glyf'].map((tag) => tables.get(tag));
  const isLong = head.readInt16BE(50) === 1;
  const count = tables.get('maxp').readUInt16BE(4);
  const offset = (id) => (isLong ? loca.readUInt32BE(id * 4) : loca.readUInt16BE(id * 2) * 2);
  return Array.from({ length: count }, (_, id) => {
    const glyph = glyf.subarray(offset(id), offset(id + 1));
    return Buffer.concat([glyph, Buffer.alloc(-glyph.length & 3)]);
  });
}

/** Every name that has the old one in it, in UTF-16 or in Latin letters; as PostScript names have it, without blanks. */
function renamed(table) {
  const [count, storage] = [table.readUInt16BE(2), table.readUInt16BE(4)];
  const records = Array.from({ length: count }, (_, index) => {
    const at = 6 + index * 12;
    const [platform, encoding, language, id, length, offset] = [0, 2, 4, 6, 8, 10].map((step) =>
      table.readUInt16BE(at + step),
    );
    const text = table.subarray(storage + offset, storage + offset + length);
    return { platform, encoding, language, id, text: platform === 1 ? text : Buffer.from(text).swap16() };
  });
  const stored = [];
  const head = Buffer.alloc(6 + count * 12);
  head.writeUInt16BE(count, 2);
  head.writeUInt16BE(head.length, 4);
  let offset = 0;
  records.forEach(({ platform, encoding, language, id, text }, index) => {
    const coding = platform === 1 ? 'latin1' : 'utf16le';
    const keepsOld = id === 0; // the copyright names the face it was made from
    const words = text.toString(coding);
    const now = keepsOld
      ? words
      : words
          .replaceAll(OLD_NAME, NEW_NAME)
          .replaceAll(OLD_NAME.replaceAll(' ', ''), NEW_NAME.replaceAll(' ', ''));
    const bytes = Buffer.from(now, coding);
    if (coding === 'utf16le') bytes.swap16();
    [platform, encoding, language, id, bytes.length, offset].forEach((value, step) =>
      head.writeUInt16BE(value, 6 + index * 12 + step * 2),
    );
    stored.push(bytes);
    offset += bytes.length;
  });
  return Buffer.concat([head, ...stored]);
}

/** OpenType 1.9, table directory and check sums. */
function written(tables, version) {
  const tags = [...tables.keys()].sort();
  const head = Buffer.alloc(12 + tags.length * 16);
  const power = 2 ** Math.floor(Math.log2(tags.length));
  head.writeUInt32BE(version, 0);
  [tags.length, power * 16, Math.log2(power), tags.length * 16 - power * 16].forEach((value, at) =>
    head.writeUInt16BE(value, 4 + at * 2),
  );
  const bodies = [];
  let offset = head.length;
  const zeroed = Buffer.from(tables.get('head'));
  zeroed.writeUInt32BE(0, 8);
  tables.set('head', zeroed);
  tags.forEach((tag, index) => {
    const body = tables.get(tag);
    const padded = Buffer.concat([body, Buffer.alloc(-body.length & 3)]);
    const at = 12 + index * 16;
    head.write(tag, at, 'latin1');
    [sumOf(padded), offset, body.length].forEach((value, step) =>
      head.writeUInt32BE(value, at + 4 + step * 4),
    );
    bodies.push(padded);
    offset += padded.length;
  });
  const whole = Buffer.concat([head, ...bodies]);
  const headAt = whole.readUInt32BE(12 + tags.indexOf('head') * 16 + 8);
  whole.writeUInt32BE((0xb1b0afba - sumOf(whole)) >>> 0, headAt + 8);
  return whole;
}

function sumOf(bytes) {
  let sum = 0;
  for (let at = 0; at < bytes.length; at += 4) sum = (sum + bytes.readUInt32BE(at)) >>> 0;
  return sum;
}
