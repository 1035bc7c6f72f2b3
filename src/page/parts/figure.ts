/** The pictures of an exercise: one drawing a frame, captions under them, one text alternative for all. */
import type { FigureText } from '../../programme/programme.ts';
import { html, type Html } from '../html.ts';

export function figureHtml({ alt, captions }: FigureText): Html {
  return html`<figure>
    <div class="frames" role="img" aria-label="${alt}"></div>
    <figcaption>${captions.map((caption) => html`<span>${caption}</span>`)}</figcaption>
  </figure> `;
}
