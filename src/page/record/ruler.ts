/** The range ruler: a thin scale of hip flexion, the prescribed part filled, the caps as ticks. */
import type { RangeRuler } from '../../programme/programme.ts';
import { html, type Html } from '../html.ts';

export function rulerHtml(ruler: RangeRuler): Html {
  return html`<p class="chart">${ruler.alt}</p>`;
}
