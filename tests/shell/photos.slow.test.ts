/**
 * Photos and the logo, by pictures made here with sharp 0.35: turned by their orientation (Exif 3.0, tag 0x0112), in
 * three widths, as WebP and JPEG, and nothing left of camera, name, place or profile; what is no picture is refused.
 */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { logoOf } from '../../src/shell/io/logo.ts';
import { photosOf } from '../../src/shell/io/photos.ts';
import { readWorkspace } from '../../src/shell/io/workspace.ts';
import { problemText, lineFinder } from '../../src/content/problemText.ts';
import { runHere, writeStarter } from './workbench.ts';

const CARD = 'exercises/wall-bridge.md';
/** What a telephone writes into a picture; nothing of it may come out. */
const SECRETS = ['Jane Roe', 'Seaview Road', 'Fonecam 9'];

let content: string;
beforeEach(() => {
  content = mkdtempSync(join(tmpdir(), 'loadleaf-photos-'));
  mkdirSync(join(content, 'exercises'));
  writeFileSync(join(content, 'clinic.md'), readFileSync('content/clinic.md'));
  writeStarter(content, 'exercise', CARD);
});
afterEach(() => rmSync(content, { recursive: true }));

/** A red left half and a blue right half, with a person's data in it. */
function telephone(widthPx: number, heightPx: number, orientation: number) {
  const half = { width: widthPx / 2, height: heightPx, channels: 3, background: '#d02020' } as const;
  return sharp({ create: { ...half, width: widthPx, background: '#2020d0' } })
    .composite([{ input: { create: half }, gravity: 'west' }])
    .withExif({
      IFD0: { Artist: 'Jane Roe', Model: 'Fonecam 9', ImageDescription: 'Seaview Road' },
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '51/1 30/1 26/1',
        GPSLongitudeRef: 'W',
        GPSLongitude: '0/1 7/1 39/1',
      },
    })
    .withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"><a>Jane Roe</a></x:xmpmeta>')
    .withMetadata({ orientation, icc: 'p3' });
}

function name(...photos: readonly string[]): void {
  const text = readFileSync(join(content, CARD), 'utf8');
  const entries = photos.map((file) => `  - file: ${file}\n    alt: A bridge from the side\n`);
  writeFileSync(join(content, CARD), text.replace('cautions:', `photos:\n${entries.join('')}cautions:`));
}

const put = (file: string, bytes: Uint8Array) => writeFileSync(join(content, 'exercises', file), bytes);
const workspace = () => readWorkspace({ content, consults: join(content, 'consults') });

async function made() {
  const read = workspace();
  if (read.library === null) throw new Error(JSON.stringify(read.libraryProblems));
  const work = await photosOf(read.library, read);
  const line = lineFinder(read.files);
  const problems = work.refusals.map(read.asProblem);
  return { ...work, said: problems.map((one) => problemText(one, line(one.file, one.line))) };
}

describe('a photo with a person’s data in it', () => {
  it('holds what it should before: the probe is worth something', async () => {
    const bytes = await telephone(1600, 1000, 6).jpeg().toBuffer();
    const { exif, xmp, icc, orientation } = await sharp(bytes).metadata();
    expect([exif, xmp, icc].every((block) => block !== undefined)).toBe(true);
    expect(orientation).toBe(6);
    for (const secret of SECRETS) expect(bytes.toString('latin1')).toContain(secret);
  });

  it.each(['jpeg', 'png', 'webp'] as const)(
    'comes out of a %s bare, in three widths and two kinds',
    async (kind) => {
      put(`side.${kind}`, await telephone(1500, 1000, 1).toFormat(kind).toBuffer());
      name(`side.${kind}`);
      const { files, photos, said } = await made();
      expect(said).toEqual([]);
      expect(photos.get('wall-bridge')).toEqual([
        {
          name: 'wall-bridge-1',
          alt: 'A bridge from the side',
          sizes: [480, 960, 1440].map((widthPx) => ({ widthPx, heightPx: (widthPx * 2) / 3 })),
        },
      ]);
      expect(files.map(({ path }) => path)).toEqual(
        [480, 960, 1440].flatMap((width) =>
          ['webp', 'jpg'].map((ending) => `public/exercises/photos/wall-bridge-1-${width}.${ending}`),
        ),
      );
      for (const { path, bytes } of files) {
        const { format, width, exif, xmp, iptc, icc, tifftagPhotoshop, comments, orientation } =
          await sharp(bytes).metadata();
        expect(format).toBe(path.endsWith('.webp') ? 'webp' : 'jpeg');
        expect(path).toContain(`-${width}.`);
        expect({ exif, xmp, iptc, icc, tifftagPhotoshop, comments, orientation }).toEqual({});
        const text = Buffer.from(bytes).toString('latin1');
        for (const left of [...SECRETS, 'Exif', 'GPS', 'adobe', 'ICC_PROFILE', 'side'])
          expect(text).not.toContain(left);
      }
    },
  );

  // Where the red half, at the left of the stored picture, is seen when it is upright.
  it.each([
    [1, 'left'],
    [2, 'right'],
    [3, 'right'],
    [4, 'left'],
    [5, 'top'],
    [6, 'top'],
    [7, 'bottom'],
    [8, 'bottom'],
  ] as const)('of orientation %i is turned: red at the %s', async (orientation, side) => {
    put('side.jpg', await telephone(800, 600, orientation).jpeg().toBuffer());
    name('side.jpg');
    const [first] = (await made()).files;
    const { data, info } = await sharp(first?.bytes)
      .removeAlpha()
      .raw()
      .toBuffer({ resolveWithObject: true });
    const isUpright = side === 'left' || side === 'right';
    expect([info.width, info.height]).toEqual(isUpright ? [480, 360] : [480, 640]);
    const redAt = (x: number, y: number) => {
      const at = (Math.floor(y * info.height) * info.width + Math.floor(x * info.width)) * info.channels;
      return (data[at] ?? 0) > (data[at + 2] ?? 0);
    };
    const seen = {
      left: redAt(0.1, 0.5),
      right: redAt(0.9, 0.5),
      top: redAt(0.5, 0.1),
      bottom: redAt(0.5, 0.9),
    };
    expect(seen[side]).toBe(true);
    expect(seen[({ left: 'right', right: 'left', top: 'bottom', bottom: 'top' } as const)[side]]).toBe(false);
  });
});

describe('the sizes', () => {
  it.each([
    // picture px    widths
    [300, [300]],
    [480, [480]],
    [700, [480, 700]],
    [1440, [480, 960, 1440]],
    [4000, [480, 960, 1440]],
  ])('of a picture %i px wide are %j: none is blown up', async (widthPx, widths) => {
    put(
      'side.png',
      await sharp({ create: { width: widthPx, height: 200, channels: 4, background: '#0000' } })
        .png()
        .toBuffer(),
    );
    name('side.png');
    const { photos, files } = await made();
    expect(photos.get('wall-bridge')?.[0]?.sizes.map((size) => size.widthPx)).toEqual(widths);
    const { data, info } = await sharp(files[0]?.bytes).raw().toBuffer({ resolveWithObject: true });
    // What was clear is white, not black.
    expect([info.channels, ...data.subarray(0, 3)]).toEqual([3, 255, 255, 255]);
  });

  it('are the same bytes again', async () => {
    const bytes = await telephone(1000, 700, 3).jpeg().toBuffer();
    put('one.jpg', bytes);
    // Another hash, so that it is not remembered: the same picture with a byte after its end.
    put('two.jpg', Buffer.concat([bytes, Buffer.from([0])]));
    name('one.jpg', 'two.jpg');
    const { files } = await made();
    const of = (number: number) =>
      files
        .filter(({ path }) => path.includes(`wall-bridge-${number}-`))
        .map((one) => Buffer.from(one.bytes));
    expect(of(1)).toHaveLength(6);
    expect(of(2)).toEqual(of(1));
  });
});

/** A small JPEG whose head says that it is large (frame header SOF0, ITU T.81 B.2.2): a trap for whoever makes room for it. */
function claiming(widthPx: number, heightPx: number, jpeg: Buffer): Buffer {
  const frame = jpeg.indexOf(Buffer.from([0xff, 0xc0]));
  jpeg.writeUInt16BE(heightPx, frame + 5);
  jpeg.writeUInt16BE(widthPx, frame + 7);
  return jpeg;
}

const svg = (attributes = '') =>
  Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"${attributes}/>`);

describe('what cannot be shown is refused by its name, at its line', () => {
  it.each([
    ['drawing.jpg', async () => svg(), 'a drawing (SVG)', 'save it as PNG'],
    [
      'drawing.png',
      async () => Buffer.concat([Buffer.from('\ufeff<?xml version="1.0"?>\n'), svg()]),
      'a drawing (SVG)',
      'save it as PNG',
    ],
    [
      'words.jpg',
      async () => Buffer.from('no picture'),
      'a file that is no picture',
      'put the picture itself here',
    ],
    [
      'page.png',
      async () => Buffer.from('%PDF-1.7\n'),
      'a file that is no picture',
      'put the picture itself here',
    ],
    ['film.png', async () => Buffer.from('GIF89a\x01\x00\x01\x00'), 'a GIF', 'save it as PNG'],
    ['phone.jpg', async () => Buffer.from('\0\0\0\x18ftypheic'), 'a HEIC or AVIF picture', 'save it as JPEG'],
    ['empty.jpg', async () => Buffer.alloc(0), 'an empty file', 'copy it here again'],
    [
      'cut.jpg',
      async () => (await telephone(900, 700, 1).jpeg().toBuffer()).subarray(0, 3000),
      'a picture that is cut off or broken',
      'copy it from the camera again',
    ],
    [
      'cut.png',
      async () => (await telephone(900, 700, 1).png().toBuffer()).subarray(0, 1500),
      'a picture that is cut off or broken',
      'copy it from the camera again',
    ],
    [
      'head.webp',
      async () => (await telephone(900, 700, 1).webp().toBuffer()).subarray(0, 40),
      'a picture that is cut off or broken',
      'copy it from the camera again',
    ],
    [
      'wall.jpg',
      async () => claiming(8200, 5000, await telephone(90, 70, 1).jpeg().toBuffer()),
      'a picture of 41 megapixels',
      'save it smaller (1440 pixels of width are all that is shown)',
    ],
  ])('%s', async (file, bytes, found, fix) => {
    put(file, await bytes());
    name(file);
    const lines = readFileSync(join(content, CARD), 'utf8').split('\n');
    const line = lines.findIndex((text) => text.includes(file)) + 1;
    const { said, files, photos } = await made();
    expect(said).toEqual([
      [
        `${CARD}:${line}:11: error image photos[0].file is ${file}, which is ${found}; must be a JPEG, PNG or WebP of at most 40 megapixels.`,
        `      - file: ${file}`,
        '              ^',
        `Fix: ${fix}, or take the photo out.`,
      ].join('\n'),
    ]);
    expect([files.length, photos.size]).toEqual([0, 0]);
  });

  it('and stops check and build before anything is written', async () => {
    put('drawing.jpg', svg());
    name('drawing.jpg');
    const out = join(content, '..', `${content.split('/').at(-1)}-site`);
    for (const command of ['check', 'build']) {
      const run = await runHere([command, '--content', content, '--out', out]);
      expect(run.exit).toBe(65);
      expect(run.err).toContain('drawing.jpg, which is a drawing (SVG)');
    }
    expect(() => readFileSync(out)).toThrow('ENOENT');
  });

  it('a photo without words for those who cannot see it', async () => {
    put('side.jpg', await telephone(300, 200, 1).jpeg().toBuffer());
    name('side.jpg');
    const text = readFileSync(join(content, CARD), 'utf8');
    writeFileSync(join(content, CARD), text.replace('    alt: A bridge from the side\n', ''));
    expect(workspace().libraryProblems).toMatchObject([
      { code: 'missing-key', path: 'photos[0].alt', file: CARD },
    ]);
  });
});

describe('the logo', () => {
  const clinicWith = (logo: string) => {
    const text = readFileSync('content/clinic.md', 'utf8').replace('paper: A4', `paper: A4\nlogo: ${logo}`);
    writeFileSync(join(content, 'clinic.md'), text);
    const { library } = workspace();
    if (library === null) throw new Error('the clinic file must be right');
    return logoOf(library.clinic, content);
  };
  const sign = (file: string, bytes: Uint8Array) => writeFileSync(join(content, file), bytes);

  it('is turned, small, on white and bare', async () => {
    sign('sign.jpg', await telephone(2000, 1000, 6).jpeg().toBuffer());
    const logo = await clinicWith('sign.jpg');
    const png = 'png' in logo ? logo.png : null;
    const { format, width, height, hasAlpha, exif, xmp, icc, orientation } = await sharp(
      png ?? undefined,
    ).metadata();
    expect({ format, width, height, hasAlpha }).toEqual({
      format: 'png',
      width: 120,
      height: 240,
      hasAlpha: false,
    });
    expect({ exif, xmp, icc, orientation }).toEqual({});
    for (const secret of SECRETS) expect(Buffer.from(png ?? []).toString('latin1')).not.toContain(secret);
  });

  it.each([
    ['sign.png', svg(), 'a drawing (SVG)'],
    ['sign.jpg', Buffer.from('words'), 'a file that is no picture'],
  ])('%s is refused: %s', async (file, bytes, found) => {
    sign(file, bytes);
    expect(await clinicWith(file)).toMatchObject({
      refusal: { kind: 'clinic', path: ['logo'], found: `${file}, which is ${found}` },
    });
  });

  it('that is not there is refused', async () => {
    expect(await clinicWith('sign.png')).toMatchObject({
      refusal: { found: 'sign.png, which is not there' },
    });
  });
});
