/** Photos that are cut off, spliced and crafted: refused in words, or made bare and whole. */
import sharp from 'sharp';
import { photosOf } from '../src/shell/io/photos.ts';
import { readLibrary } from '../src/content/readLibrary.ts';
import { problemOf } from '../src/content/place.ts';
import type { SourceFile } from '../src/content/source.ts';
import { filesWith, spoilt } from '../tests/content/sample.ts';
import type { Workspace } from '../src/shell/io/workspace.ts';
import type { Chance } from './chance.ts';
import type { Family, Verdict } from './family.ts';
import { problemFaults } from './judge.ts';

const SECRET = 'Seaview Road';
const CARD = 'exercises/bridge.md';

export const photos: Family = {
  name: 'photos',
  what: 'pictures with bytes changed, cut off and put together',
  open: async () => {
    const good = await Promise.all((['jpeg', 'png', 'webp'] as const).map(goodPicture));
    return { attempt: (chance) => judged(spoiltPicture(chance, good)), close: () => undefined };
  },
};

function goodPicture(format: 'jpeg' | 'png' | 'webp'): Promise<Buffer> {
  const half = { width: 150, height: 200, channels: 3, background: '#d02020' } as const;
  return sharp({ create: { ...half, width: 300, background: '#2020d0' } })
    .composite([{ input: { create: half }, gravity: 'west' }])
    .withExif({ IFD0: { ImageDescription: SECRET } })
    .withMetadata({ orientation: 6 })
    .toFormat(format)
    .toBuffer();
}

type Way = (bytes: Buffer, chance: Chance, others: readonly Buffer[]) => Buffer;

const cut: Way = (bytes, chance) => bytes.subarray(0, chance.below(bytes.length + 1));
const flipped: Way = (bytes, chance) => {
  const changed = Buffer.from(bytes);
  if (changed.length > 0)
    for (let count = 1 + chance.below(8); count > 0; count -= 1)
      changed[chance.below(changed.length)] = chance.below(256);
  return changed;
};
/** The head of a file holds sizes, tables and lengths. */
const head: Way = (bytes, chance) => {
  const changed = Buffer.from(bytes);
  const most = Math.min(64, changed.length);
  if (most > 0)
    for (let count = 1 + chance.below(4); count > 0; count -= 1)
      changed[chance.below(most)] = chance.of([0, 1, 0x7f, 0x80, 0xff]);
  return changed;
};
const repeated: Way = (bytes, chance) => {
  const [from, to] = [chance.below(bytes.length + 1), chance.below(bytes.length + 1)];
  return Buffer.concat([bytes.subarray(0, to), bytes.subarray(from)]);
};
const spliced: Way = (bytes, chance, others) => {
  const other = chance.of(others);
  return Buffer.concat([
    bytes.subarray(0, chance.below(bytes.length + 1)),
    other.subarray(chance.below(other.length)),
  ]);
};
const before: Way = (bytes, chance) =>
  Buffer.concat([
    Buffer.from(
      chance.of(['GIF89a', '<svg/>', '%PDF-1.7\n', '\u0000', '\u00ff\u00d8\u00ff', 'II*\0', 'BM']),
      'latin1',
    ),
    bytes,
  ]);
/** A head that claims a size for which nobody has room (ITU T.81 B.2.2; W3C PNG 11.2.2). */
const huge: Way = (bytes, chance) => {
  const changed = Buffer.from(bytes);
  const frame = changed.indexOf(Buffer.from([0xff, 0xc0]));
  const size = chance.of([0, 1, 6000, 40_000, 65_535]);
  if (frame >= 0 && frame + 9 < changed.length) {
    changed.writeUInt16BE(size, frame + 5);
    changed.writeUInt16BE(chance.of([size, 65_535]), frame + 7);
  } else if (changed.length > 24) changed.writeUInt32BE(chance.of([size, 0x7fffffff]), 16);
  return changed;
};

const WAYS = [cut, flipped, flipped, head, repeated, spliced, before, huge];

function spoiltPicture(chance: Chance, good: readonly Buffer[]): Buffer {
  let bytes = chance.of(good);
  for (let count = 1 + chance.below(2); count > 0; count -= 1) bytes = chance.of(WAYS)(bytes, chance, good);
  return bytes;
}

async function judged(bytes: Buffer): Promise<Verdict> {
  const picture: SourceFile = { file: 'exercises/a.jpg', bytes, link: 'no' };
  const card = spoilt(CARD, 'harder:', 'photos: [{ file: a.jpg, alt: A bridge }]\nharder:');
  const files = [...filesWith({ [CARD]: card, 'consults/otter-r1.md': null }), picture];
  const { library, problems, placeOf } = readLibrary(files);
  if (library === null) throw new Error(`the sample must be in order: ${JSON.stringify(problems)}`);
  const tried = `${bytes.length} bytes, base64:\n${bytes.toString('base64')}`;
  const made = await photosOf(library, { files, placeOf } as unknown as Workspace);
  const refusals = made.refusals.map((one) => problemOf(one, placeOf));
  const faults = [...problemFaults(refusals, files), ...(await pictureFaults(made.files))];
  if (made.files.length === 0 && refusals.length === 0) faults.push('neither refused nor made');
  return { end: made.files.length > 0 ? 'built' : 'refused', tried, faults };
}

type Made = Awaited<ReturnType<typeof photosOf>>['files'];

/** Each can be read to its end, is no wider than it may be, and has nothing of camera or place in it. */
async function pictureFaults(files: Made): Promise<string[]> {
  const faults: string[] = [];
  for (const { path, bytes } of files) {
    const picture = Buffer.from(bytes);
    const { width, exif, xmp, icc } = await sharp(picture, { failOn: 'warning' }).metadata();
    await sharp(picture, { failOn: 'warning' }).raw().toBuffer();
    if (!path.includes(`-${width}.`)) faults.push(`${path} is ${width} wide`);
    if (width > 1440) faults.push(`${path} is too wide`);
    if (exif !== undefined || xmp !== undefined || icc !== undefined)
      faults.push(`${path} has more than a picture`);
    if (picture.toString('latin1').includes(SECRET)) faults.push(`${path} tells the place`);
  }
  return faults;
}
