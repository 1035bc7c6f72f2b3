/** Photos of cards made ready for the web: turned, in three widths, as WebP and JPEG, without any data about camera or place. */
import { createHash } from 'node:crypto';
import { photoFile } from '../content/pictures.ts';
import type { ExerciseCard, Library } from '../content/library.ts';
import type { Photos } from '../programme/library/libraryView.ts';
import type { PhotoSize, PhotoView } from '../programme/library/view.ts';
import type { Refusal } from '../units/refusal.ts';
import type { OutFile } from './site.ts';
import type { Workspace } from './workspace.ts';

export interface PhotoWork {
  readonly photos: Photos;
  readonly files: readonly OutFile[];
  readonly refusals: readonly Refusal[];
}

/** Half a phone, a phone or half a screen, a whole column on a fine screen. */
const WIDTHS_PX = [480, 960, 1440] as const;
// A camera of 40 megapixels is the best there is in a clinic; more is a trap or a slip.
const MOST_PIXELS = 40_000_000;
const KINDS: readonly (string | undefined)[] = ['png', 'jpeg', 'webp'];

/** Of all cards; nothing is loaded for a library without photos. */
export async function photosOf(library: Library, workspace: Workspace): Promise<PhotoWork> {
  const photos = new Map<string, readonly PhotoView[]>();
  const files: OutFile[] = [];
  const refusals: Refusal[] = [];
  for (const card of library.exercises.values()) {
    const views: PhotoView[] = [];
    for (const [index, { file, alt }] of card.photos.entries()) {
      const made = await madeOf(bytesOf(card, file, workspace));
      if (typeof made === 'string') {
        refusals.push(refused(card.id, index, file, made));
        continue;
      }
      const name = `${card.id}-${index + 1}`;
      views.push({ name, alt, sizes: made.map(({ size }) => size) });
      files.push(...made.flatMap((one) => filesOf(name, one)));
    }
    if (views.length > 0) photos.set(card.id, views);
  }
  return { photos, files, refusals };
}

function bytesOf({ id }: ExerciseCard, photo: string, { files, placeOf }: Workspace): Uint8Array {
  const card = placeOf('exercise', id, [])?.file ?? '';
  const there = files.find(({ file }) => file === photoFile(card, photo));
  if (there === undefined) throw new Error(`content has seen to it that ${photo} is beside ${card}`);
  return there.bytes;
}

interface Sized {
  readonly size: PhotoSize;
  readonly webp: Uint8Array;
  readonly jpeg: Uint8Array;
}

/** Photos made before, by what their files hold: a server builds again and again. */
const known = new Map<string, readonly Sized[]>();

/** The sizes, or in words why there are none. */
async function madeOf(bytes: Uint8Array): Promise<readonly Sized[] | string> {
  const hash = createHash('sha256').update(bytes).digest('hex');
  const before = known.get(hash);
  if (before !== undefined) return before;
  const made = await sizesOf(bytes);
  if (typeof made !== 'string') known.set(hash, made);
  return made;
}

async function sizesOf(bytes: Uint8Array): Promise<readonly Sized[] | string> {
  const { default: sharp } = await import('sharp');
  const open = () => sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: 'error' });
  try {
    const { format, autoOrient } = await open().metadata();
    // What a file is called says nothing: a drawing in a renamed file could fetch others.
    if (!KINDS.includes(format)) return `a picture of kind ${format}`;
    return await Promise.all(
      widthsFor(autoOrient.width).map(async (width): Promise<Sized> => {
        const upright = open()
          .autoOrient()
          .resize({ width, withoutEnlargement: true })
          .flatten({ background: '#ffffff' });
        const webp = await upright.clone().webp({ quality: 78 }).toBuffer({ resolveWithObject: true });
        const jpeg = await upright.clone().jpeg({ quality: 78, progressive: true }).toBuffer();
        return { size: { widthPx: webp.info.width, heightPx: webp.info.height }, webp: webp.data, jpeg };
      }),
    );
  } catch (error) {
    return `a file that is no picture (${error instanceof Error ? error.message : String(error)})`;
  }
}

/** None wider than the picture itself. */
function widthsFor(widthPx: number): readonly number[] {
  const [, , widest] = WIDTHS_PX;
  return [...WIDTHS_PX.filter((width) => width < widthPx && width < widest), Math.min(widthPx, widest)];
}

function filesOf(name: string, { size: { widthPx }, webp, jpeg }: Sized): OutFile[] {
  const place = `public/exercises/photos/${name}-${widthPx}`;
  return [
    { path: `${place}.webp`, bytes: webp },
    { path: `${place}.jpg`, bytes: jpeg },
  ];
}

function refused(id: string, index: number, file: string, found: string): Refusal {
  return {
    code: 'image',
    kind: 'exercise',
    id,
    path: ['photos', index, 'file'],
    found: `${file}: ${found}`,
    expected: `a PNG, JPEG or WebP of at most ${MOST_PIXELS / 1e6} megapixels`,
    fix: 'save it again as JPEG, smaller, or take the photo out',
  };
}
