/** The clinic's own photos between the build, which makes them small, and the desk, which only puts them into a leaflet. */
import type { LeafletPhoto, LeafletPhotos } from '../outputs/html/assets.ts';
import { base64, fromBase64 } from '../units/base64.ts';

/** WebP, base64. */
export type PackedPhoto = Omit<LeafletPhoto, 'still' | 'loop'> & {
  readonly still: string;
  readonly loop: string | null;
};

/** By card. */
export type PackedPhotos = Readonly<Record<string, readonly PackedPhoto[]>>;

export function packedPhotos(photos: LeafletPhotos): PackedPhotos {
  return Object.fromEntries([...photos].map(([card, all]) => [card, all.map(packed)]));
}

export function openedPhotos(photos: PackedPhotos): LeafletPhotos {
  return new Map(Object.entries(photos).map(([card, all]) => [card, all.map(opened)]));
}

function packed(photo: LeafletPhoto): PackedPhoto {
  const { still, loop } = photo;
  return { ...photo, still: base64(still), loop: loop === null ? null : base64(loop) };
}

function opened(photo: PackedPhoto): LeafletPhoto {
  const { still, loop } = photo;
  return { ...photo, still: fromBase64(still), loop: loop === null ? null : fromBase64(loop) };
}
