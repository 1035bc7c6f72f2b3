/** The pictures of an exercise: one drawing a frame, all on the sheet at one scale, with one text alternative. */
import { drawScene } from '../../../drawing/scene.ts';
import type { FigureText } from '../../../programme/programme.ts';
import { html, nothing, type Html } from '../html.ts';
import { drawingHtml } from './drawing.ts';

// A metre of the pictured world in ems of the page: two lying figures fill the text column, a standing one is a hand high.
const EMS_PER_METRE = 9.4;

/** The first picture speaks for all; the others and their captions stand beside it. The group is named by its exercise. */
export function figureHtml({ scene, captions, legend, alt }: FigureText, title: string): Html {
  return html`<figure class="frames" aria-label="${title}">
    ${drawScene(scene).map((drawing, at) => {
      const wideEm = (drawing.viewBox.width / 1000) * EMS_PER_METRE;
      return html`<div class="frame">
        ${drawingHtml(drawing, at === 0 ? alt : null, wideEm)}
        <p class="caption">${captions[at] ?? ''}</p>
      </div> `;
    })}
    ${legend === null ? nothing : html`<p class="caption legend">${legend}</p>`}
  </figure> `;
}

/** The last picture alone with its caption; it shows the first as a shadow. */
export function lastFigureHtml({ scene, captions, alt }: FigureText, title: string): Html {
  const last = drawScene(scene).at(-1);
  if (last === undefined) return nothing;
  return html`<figure class="frames" aria-label="${title}">
    <div class="frame">
      ${drawingHtml(last, alt, (last.viewBox.width / 1000) * EMS_PER_METRE)}
      <p class="caption">${captions.at(-1) ?? ''}</p>
    </div>
  </figure> `;
}
