/** Whether the photos of a leaflet are within the limit that the clinic sets for them. */
import type { Clinic } from '../../content/library.ts';
import type { LeafletPhotos } from '../../outputs/html/assets.ts';
import { photoBytes } from '../../outputs/html/parts/photos.ts';
import type { Programme } from '../../programme/programme.ts';
import type { Refusal } from '../../units/refusal.ts';

const BYTES_PER_KILOBYTE = 1000;

/** The refusal `out-of-range`; null where they are within it. */
export function photosTooLarge(programme: Programme, photos: LeafletPhotos, clinic: Clinic): Refusal | null {
  const most = clinic.leafletPhotos.atMostKilobytes.value;
  const size = kilobytesOf(programme, photos);
  if (size <= most) return null;
  return {
    code: 'out-of-range',
    kind: 'clinic',
    id: 'clinic',
    path: ['leafletPhotos', 'atMostKilobytes'],
    found: `${Math.ceil(size)} kB of photos on the leaflet of ${programme.alias}`,
    expected: `at most ${most} kB`,
    fix: 'show fewer or shorter loops, take photos out of a card, or raise the limit',
  };
}

/** As they stand in the file. */
function kilobytesOf({ exercises }: Programme, photos: LeafletPhotos): number {
  const all = exercises.flatMap(({ card }) => photos.get(card) ?? []);
  return all.reduce((sum, photo) => sum + photoBytes(photo), 0) / BYTES_PER_KILOBYTE;
}
