/** A clinic's own photos and short loops for its leaflets, small enough to stand inside the one file. */
import type { Library, ExerciseCard } from '../../content/library.ts';
import type { LeafletPhoto, LeafletPhotos } from '../../outputs/html/assets.ts';
import type { Refusal } from '../../units/refusal.ts';
import { pictureOf, refused } from './photos.ts';
import { BROKEN, pictureIn, tooLong, type NoPicture } from './picture.ts';
import type { Workspace } from './workspace.ts';

export interface LeafletPhotoWork {
  readonly photos: LeafletPhotos;
  readonly refusals: readonly Refusal[];
}

// As wide as the column of a phone on a fine screen asks for; a loop has many pictures of it.
const STILL_WIDTH_PX = 480;
const LOOP_WIDTH_PX = 320;
const QUALITY = 70;

/** Nothing is opened for a clinic that does not show them. */
export async function leafletPhotosOf(library: Library, workspace: Workspace): Promise<LeafletPhotoWork> {
  const photos = new Map<string, readonly LeafletPhoto[]>();
  const refusals: Refusal[] = [];
  if (!library.clinic.leafletPhotos.show) return { photos, refusals };
  for (const card of library.exercises.values()) {
    const made = await Promise.all(card.photos.map((_, index) => madeOf(card, index, workspace)));
    refusals.push(...made.flatMap((one) => ('fix' in one ? [one] : [])));
    const shown = made.flatMap((one) => ('fix' in one ? [] : [one]));
    if (shown.length > 0) photos.set(card.id, shown);
  }
  return { photos, refusals };
}

async function madeOf(
  card: ExerciseCard,
  index: number,
  workspace: Workspace,
): Promise<LeafletPhoto | Refusal> {
  const { file, alt, takenBy } = card.photos[index] as ExerciseCard['photos'][number];
  if (takenBy === undefined) return unnamed(card.id, index);
  const { bytes, unreadBytes } = pictureOf(card, file, workspace);
  const made = unreadBytes === undefined ? await sized(bytes) : tooLong(unreadBytes);
  return 'fix' in made ? refused(card.id, index, file, made) : { alt, takenBy, ...made };
}

/** The first picture as the still; all of them as the loop where there are several. */
async function sized(
  bytes: Uint8Array,
): Promise<Pick<LeafletPhoto, 'widthPx' | 'heightPx' | 'still' | 'loop'> | NoPicture> {
  const picture = await pictureIn(bytes, ['jpeg', 'png', 'webp']);
  if ('fix' in picture) return picture;
  try {
    const { data, info } = await picture
      .upright()
      .resize({ width: STILL_WIDTH_PX, withoutEnlargement: true })
      .webp({ quality: QUALITY })
      .toBuffer({ resolveWithObject: true });
    const loop = picture.frames === 1 ? null : await picture.moving(LOOP_WIDTH_PX, QUALITY);
    return { widthPx: info.width, heightPx: info.height, still: data, loop };
  } catch {
    return BROKEN;
  }
}

// Whoever is seen in it, and whoever made it, was asked: a leaflet leaves the house.
function unnamed(id: string, index: number): Refusal {
  return {
    code: 'missing-key',
    kind: 'exercise',
    id,
    path: ['photos', index],
    found: 'a photo without takenBy, and leafletPhotos.show is yes',
    expected: 'who took it',
    fix: 'write takenBy: and the name, or set leafletPhotos.show to no in clinic.md',
  };
}
