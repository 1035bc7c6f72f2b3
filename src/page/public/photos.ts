/** A card's photos: WebP where it is understood, JPEG everywhere, each in the width that is needed. */
import type { PhotoSize, PhotoView } from '../../programme/library/view.ts';
import { html, type Html } from '../html.ts';

// As wide as the text at most.
const SIZES = '(min-width: 56rem) 38rem, 100vw';

/** Where a photo's file lies, from the public folder. @example photoPath('hip-hinge-1', 480, 'webp') // => 'exercises/photos/hip-hinge-1-480.webp' */
export function photoPath(name: string, widthPx: number, kind: 'webp' | 'jpg'): string {
  return `exercises/photos/${name}-${widthPx}.${kind}`;
}

export function photosHtml(photos: readonly PhotoView[]): readonly Html[] {
  return photos.map(({ name, alt, sizes }) => {
    const set = (kind: 'webp' | 'jpg') =>
      sizes.map(({ widthPx }) => `../${photoPath(name, widthPx, kind)} ${widthPx}w`).join(', ');
    const { widthPx, heightPx } = sizes.at(-1) as PhotoSize;
    return html`<picture class="photo">
      <source type="image/webp" srcset="${set('webp')}" sizes="${SIZES}" />
      <img
        src="../${photoPath(name, widthPx, 'jpg')}"
        srcset="${set('jpg')}"
        sizes="${SIZES}"
        width="${widthPx}"
        height="${heightPx}"
        loading="lazy"
        alt="${alt}"
      />
    </picture> `;
  });
}
