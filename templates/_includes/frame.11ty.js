/** Public: the frame of every page, round the layout of a clinic's own pages. */
import { ownFrameHtml } from '#dist/outputs/html/public/ownPage.js';

export function render({ ownPage, content, library, assets }) {
  const view = library.get('view');
  return ownFrameHtml(
    view.pages.find(({ id }) => id === ownPage),
    content,
    view,
    assets,
  );
}
