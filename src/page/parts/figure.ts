/** The pictures of an exercise: one drawing a frame, all on the sheet at one scale, with one text alternative. */
import type { Drawing } from '../../figure/drawing.ts';
import { drawScene } from '../../figure/scene.ts';
import { svgOf } from '../../figure/svg.ts';
import type { FigureText } from '../../programme/programme.ts';
import { html, trusted, type Html } from '../html.ts';

// A metre of the pictured world in ems of the page: two lying figures fill the text column, a standing one is a hand high.
const EMS_PER_METRE = 9.4;

/** The first picture speaks for all; the others and their captions stand beside it. */
export function figureHtml({ scene, captions, alt }: FigureText): Html {
  const drawings = drawScene(scene);
  return html`<figure class="frames">
    ${drawings.map(
      (drawing, at) =>
        html`<div class="frame">
          ${pictureHtml(drawing, at === 0 ? alt : null)}
          <p class="caption">${captions[at] ?? ''}</p>
        </div> `,
    )}
  </figure> `;
}

/** A drawing as wide as its world is, unless the column is narrower. */
function pictureHtml(drawing: Drawing, alt: string | null): Html {
  const wide = ((drawing.viewBox.width / 1000) * EMS_PER_METRE).toFixed(2);
  return trusted(svgOf(drawing, alt).replace('<svg ', `<svg width="${wide}em" `));
}
