/** Public: what the body model is and is not. */
import { numbersPageHtml } from '#dist/page/public/numbersPage.js';

export const data = { permalink: 'public/numbers/index.html' };

export function render({ front, assets }) {
  return numbersPageHtml(front, assets);
}
