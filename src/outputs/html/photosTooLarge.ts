/** Whether the photos of a leaflet are within the limit that the clinic sets for them. */
import type { Clinic } from '../../content/library.ts';
import type { Programme } from '../../programme/programme.ts';
import type { Refusal } from '../../units/refusal.ts';

const BYTES_PER_KILOBYTE = 1000;

/** The refusal `out-of-range`; null where they are within it. `bytesOf`: what those of a card add to the file. */
export function photosTooLarge(
  { alias, exercises }: Pick<Programme, 'alias' | 'exercises'>,
  bytesOf: (card: string) => number,
  { leafletPhotos }: Pick<Clinic, 'leafletPhotos'>,
): Refusal | null {
  const most = leafletPhotos.atMostKilobytes.value;
  const size = exercises.reduce((sum, { card }) => sum + bytesOf(card), 0) / BYTES_PER_KILOBYTE;
  if (size <= most) return null;
  return {
    code: 'out-of-range',
    kind: 'clinic',
    id: 'clinic',
    path: ['leafletPhotos', 'atMostKilobytes'],
    found: `${Math.ceil(size)} kB of photos on the leaflet of ${alias}`,
    expected: `at most ${most} kB`,
    fix: 'show fewer or shorter loops, take photos out of a card, or raise the limit',
  };
}
