/** Photos of cards made ready for the web: turned, in three widths, as WebP and JPEG, without any data about camera or place. */
import { createHash } from 'node:crypto';
import { photoFile } from '../../content/pictures.ts';
import type { ExerciseCard, Library } from '../../content/library.ts';
import type { Photos } from '../../catalogue/libraryView.ts';
import type { PhotoSize, PhotoView } from '../../catalogue/view.ts';
import type { SourceFile } from '../../content/source.ts';
import type { Refusal } from '../../units/refusal.ts';
import { BROKEN, MOST_MEGAPIXELS, pictureIn, tooLong, type NoPicture, type Picture } from './picture.ts';
import type { OutFile } from './site.ts';
import type { Workspace } from './workspace.ts';

export interface PhotoWork {
  readonly photos: Photos;
  readonly files: readonly OutFile[];
  readonly refusals: readonly Refusal[];
}

/** Half a phone, a phone or half a screen, a whole column on a fine screen. */
const WIDTHS_PX = [480, 960, 1440] as const;

/** Of all cards; nothing is loaded for a library without photos. */
export async function photosOf(library: Library, workspace: Workspace): Promise<PhotoWork> {
  const photos = new Map<string, readonly PhotoView[]>();
  const files: OutFile[] = [];
  const refusals: Refusal[] = [];
  for (const card of library.exercises.values()) {
    const views: PhotoView[] = [];
    for (const [index, { file, alt }] of card.photos.entries()) {
      const { bytes, unreadBytes } = pictureOf(card, file, workspace);
      const made = unreadBytes === undefined ? await madeOf(bytes) : tooLong(unreadBytes);
      if ('fix' in made) {
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

/** The file of a photo; content has seen to it that it is there. */
export function pictureOf({ id }: ExerciseCard, photo: string, { files, placeOf }: Workspace): SourceFile {
  const card = placeOf('exercise', id, [])?.file ?? '';
  const there = files.find(({ file }) => file === photoFile(card, photo));
  if (there === undefined) throw new Error(`content has seen to it that ${photo} is beside ${card}`);
  return there;
}

interface Sized {
  readonly size: PhotoSize;
  readonly webp: Uint8Array;
  readonly jpeg: Uint8Array;
}

/** Photos made before, by what their files hold: a server builds again and again. */
const known = new Map<string, readonly Sized[]>();

/** The sizes, or in words why there are none. */
async function madeOf(bytes: Uint8Array): Promise<readonly Sized[] | NoPicture> {
  const hash = createHash('sha256').update(bytes).digest('hex');
  const before = known.get(hash);
  if (before !== undefined) return before;
  const picture = await pictureIn(bytes, ['jpeg', 'png', 'webp']);
  if ('fix' in picture) return picture;
  try {
    const made = await Promise.all(widthsFor(picture.widthPx).map((width) => sized(picture, width)));
    known.set(hash, made);
    return made;
  } catch {
    return BROKEN;
  }
}

// What sharp is not told to keep goes: camera, place, names, thumbnails, profiles.
async function sized({ upright }: Picture, width: number): Promise<Sized> {
  const small = upright().resize({ width, withoutEnlargement: true });
  const webp = await small.clone().webp({ quality: 78 }).toBuffer({ resolveWithObject: true });
  const jpeg = await small.clone().jpeg({ quality: 78, progressive: true }).toBuffer();
  return { size: { widthPx: webp.info.width, heightPx: webp.info.height }, webp: webp.data, jpeg };
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

export function refused(id: string, index: number, file: string, { found, fix }: NoPicture): Refusal {
  return {
    code: 'image',
    kind: 'exercise',
    id,
    path: ['photos', index, 'file'],
    found: `${file}, which is ${found}`,
    expected: `a JPEG, PNG or WebP of at most ${MOST_MEGAPIXELS} megapixels`,
    fix: `${fix}, or take the photo out`,
  };
}
