/** Public: every element of the sheets. */
import { stylePageHtml } from '#dist/page/public/stylePage.js';

export const data = { permalink: 'public/style/index.html' };

export function render({ front, assets }) {
  return stylePageHtml(front, assets);
}
