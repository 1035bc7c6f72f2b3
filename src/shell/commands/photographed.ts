/** Leaflets whose photos are within the limit of the clinic; of the others the Problem. */
import type { LeafletPhotos } from '../../outputs/html/assets.ts';
import { photoBytes } from '../../outputs/html/parts/photos.ts';
import type { Programme } from '../../programme/programme.ts';
import type { Workspace } from '../io/workspace.ts';
import type { Made } from './make.ts';

const BYTES_PER_KILOBYTE = 1000;

export function photographed(
  { programmes, problems }: Made,
  photos: LeafletPhotos,
  workspace: Workspace,
): Made {
  const most = workspace.library?.clinic.leafletPhotos.atMostKilobytes.value ?? 0;
  const sizes = new Map(programmes.map((one) => [one, kilobytesOf(one, photos)]));
  const tooLarge = programmes.filter((one) => (sizes.get(one) ?? 0) > most);
  return {
    programmes: programmes.filter((one) => !tooLarge.includes(one)),
    problems: [
      ...problems,
      ...tooLarge.map((one) =>
        workspace.asProblem({
          code: 'out-of-range',
          kind: 'clinic',
          id: 'clinic',
          path: ['leafletPhotos', 'atMostKilobytes'],
          found: `${Math.ceil(sizes.get(one) ?? 0)} kB of photos on the leaflet of ${one.alias}`,
          expected: `at most ${most} kB`,
          fix: 'show fewer or shorter loops, take photos out of a card, or raise the limit',
        }),
      ),
    ],
  };
}

/** As they stand in the file. */
function kilobytesOf({ exercises }: Programme, photos: LeafletPhotos): number {
  const all = exercises.flatMap(({ card }) => photos.get(card) ?? []);
  return all.reduce((sum, photo) => sum + photoBytes(photo), 0) / BYTES_PER_KILOBYTE;
}
