/**
 * A picture of an author, opened with care: what it is shows in its bytes, never in its name, and no reader of any other
 * kind of file is ever reached. A drawing could fetch others; a picture of ten thousand by ten thousand could stop the machine.
 */
import type { Sharp } from 'sharp';
import { MOST_PICTURE_BYTES } from '../../content/fileSize.ts';

/** Why a picture cannot be taken, in words, with what helps. */
export interface NoPicture {
  readonly found: string;
  readonly fix: string;
}

export interface Picture {
  /** As it is seen, turned upright. */
  readonly widthPx: number;
  /** Upright, on white, for the pipeline of the one who asks; of several pictures the first. */
  readonly upright: () => Sharp;
  /** Pictures of a loop; 1 for one that stands still. */
  readonly frames: number;
  /** All of them as a WebP of this width at most. */
  readonly moving: (widthPx: number, quality: number) => Promise<Uint8Array>;
}

export type PictureKind = 'jpeg' | 'png' | 'webp';

/** A camera of 40 megapixels is the best there is in a clinic; more is a trap or a slip. */
export const MOST_MEGAPIXELS = 40;
const MOST_PIXELS = MOST_MEGAPIXELS * 1e6;

/** `kinds`: those that are taken. Whether it can be read to its end shows only when it is. */
export async function pictureIn(
  bytes: Uint8Array,
  kinds: readonly PictureKind[],
): Promise<Picture | NoPicture> {
  const kind = kindOf(bytes);
  if (!(kinds as readonly string[]).includes(kind.name)) return kind;
  const { default: sharp } = await import('sharp');
  try {
    // The limit is ours to tell: the size stands in the head of the file.
    const {
      width,
      height,
      autoOrient,
      pages: frames = 1,
    } = await sharp(bytes, { limitInputPixels: false }).metadata();
    if (width * height > MOST_PIXELS) return tooLarge(width * height);
    const upright = () =>
      sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: 'error' })
        .autoOrient()
        .flatten({ background: '#ffffff' });
    if (width * height * frames > MOST_PIXELS) return tooLarge(width * height * frames);
    const moving = (widthPx: number, quality: number) =>
      sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: 'error', animated: true })
        .resize({ width: widthPx, withoutEnlargement: true })
        .webp({ quality, loop: 0 })
        .toBuffer();
    return { widthPx: autoOrient.width, upright, frames, moving };
  } catch {
    return BROKEN;
  }
}

export const BROKEN: NoPicture = {
  found: 'a picture that is cut off or broken',
  fix: 'copy it from the camera again',
};

/** Of a file that is too long to be read. */
export function tooLong(lengthBytes: number): NoPicture {
  return {
    found: `a file of ${Math.ceil(lengthBytes / 2 ** 20)} MB, where ${MOST_PICTURE_BYTES / 2 ** 20} are taken`,
    fix: 'save it smaller (1440 pixels of width are all that is shown)',
  };
}

interface Kind extends NoPicture {
  readonly name: PictureKind | 'other';
}

/** The first bytes of each kind: ITU T.81, W3C PNG, RFC 9649, and of those that are met instead of them. */
const KINDS: readonly (readonly [start: RegExp, name: Kind['name'], found: string, fix: string])[] = [
  [/^\xff\xd8\xff/, 'jpeg', 'a JPEG', 'save it as PNG'],
  [/^\x89PNG\r\n\x1a\n/, 'png', 'a PNG', 'save it as JPEG'],
  [/^RIFF[^]{4}WEBP/, 'webp', 'a WebP', 'save it as PNG or JPEG'],
  [/^(?:\xef\xbb\xbf)?\s*<(?:\?xml|!--|!DOCTYPE|svg)/i, 'other', 'a drawing (SVG)', 'save it as PNG'],
  [/^GIF8/, 'other', 'a GIF', 'save it as PNG'],
  [/^[^]{4}ftyp/, 'other', 'a HEIC or AVIF picture', 'save it as JPEG'],
  [/^(?:II\*\0|MM\0\*)/, 'other', 'a TIFF', 'save it as JPEG'],
  [/^$/, 'other', 'an empty file', 'copy it here again'],
];

function kindOf(bytes: Uint8Array): Kind {
  const start = Buffer.from(bytes.subarray(0, 256)).toString('latin1');
  const [, name = 'other', found = 'a file that is no picture', fix = 'put the picture itself here'] =
    KINDS.find(([pattern]) => pattern.test(start)) ?? [];
  return { name, found, fix };
}

function tooLarge(pixels: number): NoPicture {
  return {
    found: `a picture of ${Math.ceil(pixels / 1e6)} megapixels`,
    fix: 'save it smaller (1440 pixels of width are all that is shown)',
  };
}
