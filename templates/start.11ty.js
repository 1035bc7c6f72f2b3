/** Public: the first page. */
import { startPageHtml } from '#dist/page/public/startPage.js';

export const data = { permalink: 'public/index.html' };

export function render({ front, assets }) {
  return startPageHtml(front, assets);
}
