/** A clinic's own photos of an exercise inside its leaflet: the still at once, a loop only when it is asked for. */
import type { LeafletLabels } from '../../../messages/en/labels.ts';
import { base64 } from '../../../units/base64.ts';
import type { LeafletPhoto } from '../assets.ts';
import { html, nothing, type Html } from '../html.ts';

export function leafletPhotosHtml(photos: readonly LeafletPhoto[], labels: LeafletLabels): Html {
  if (photos.length === 0) return nothing;
  return html`<div class="photos">${photos.map((photo) => photoHtml(photo, labels))}</div> `;
}

/** What they add to the file. */
export function photoBytes(photos: readonly LeafletPhoto[] = []): number {
  return photos
    .flatMap(({ still, loop }) => [still, loop])
    .reduce((sum, bytes) => sum + (bytes === null ? 0 : base64(bytes).length), 0);
}

// A loop moves for as long as it is open: it is opened and closed by the person, with a script or without.
function photoHtml(
  { alt, takenBy, widthPx, heightPx, still, loop }: LeafletPhoto,
  labels: LeafletLabels,
): Html {
  const moving =
    loop === null
      ? nothing
      : html`<details class="loop">
          <summary>${labels.loop}</summary>
          <img src="${addressOf(loop)}" width="${widthPx}" height="${heightPx}" alt="${alt}" />
        </details> `;
  return html`<figure class="photo">
    <img src="${addressOf(still)}" width="${widthPx}" height="${heightPx}" alt="${alt}" />
    ${moving}
    <figcaption class="caption">${labels.photoBy} <bdi>${takenBy}</bdi></figcaption>
  </figure> `;
}

function addressOf(bytes: Uint8Array): string {
  return `data:image/webp;base64,${base64(bytes)}`;
}
