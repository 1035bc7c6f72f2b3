/** A card's photos: WebP where it is understood, JPEG everywhere, each in the width that is needed. */
import type { PhotoSize, PhotoView } from '../../../catalogue/view.ts';
import { html, nothing, type Html } from '../html.ts';

// One beside the other where there is room, at half the width of the text; a single one as wide as the text at most.
const SIZES = {
  single: '(min-width: 56rem) 38rem, 100vw',
  several: '(min-width: 40rem) 22rem, 100vw',
} as const;

/** Where a photo's file lies, from the public folder. @example photoPath('hip-hinge-1', 480, 'webp') // => 'exercises/photos/hip-hinge-1-480.webp' */
function photoPath(name: string, widthPx: number, kind: 'webp' | 'jpg'): string {
  return `exercises/photos/${name}-${widthPx}.${kind}`;
}

export function photosHtml(photos: readonly PhotoView[]): Html {
  if (photos.length === 0) return nothing;
  const sizes = photos.length === 1 ? SIZES.single : SIZES.several;
  return html`<div class="photos">${photos.map((photo) => photoHtml(photo, sizes))}</div> `;
}

function photoHtml({ name, alt, sizes }: PhotoView, shown: string): Html {
  const set = (kind: 'webp' | 'jpg') =>
    sizes.map(({ widthPx }) => `../${photoPath(name, widthPx, kind)} ${widthPx}w`).join(', ');
  const { widthPx, heightPx } = sizes.at(-1) as PhotoSize;
  return html`<picture>
    <source type="image/webp" srcset="${set('webp')}" sizes="${shown}" />
    <img
      src="../${photoPath(name, widthPx, 'jpg')}"
      srcset="${set('jpg')}"
      sizes="${shown}"
      width="${widthPx}"
      height="${heightPx}"
      loading="lazy"
      alt="${alt}"
    />
  </picture> `;
}
