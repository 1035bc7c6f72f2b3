/** How long a file may be, by its name: what is longer need not even be read. */

// What cameras, drawing programs and web pages write; whatever else lies among the cards is a misnamed card.
const PICTURE = /\.(png|jpe?g|webp|gif|svg|avif|heic|heif|tiff?|bmp)$/i;

/** The longest card, protocol or consult that is shipped has 32 kB. */
export const MOST_TEXT_BYTES = 256 * 1024;

/** A camera of 40 megapixels writes 25 MB at most. */
export const MOST_PICTURE_BYTES = 32 * 1024 * 1024;

export function isPicture(file: string): boolean {
  return PICTURE.test(file);
}

/** In bytes. @example mostBytes('exercises/bridge.md') // => 262144 */
export function mostBytes(file: string): number {
  return isPicture(file) ? MOST_PICTURE_BYTES : MOST_TEXT_BYTES;
}
