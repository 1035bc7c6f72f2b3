/** The ladder: all cards by squeeze, the stages' caps as lines. */
import type { CompressionLadder } from '../../programme/programme.ts';
import { html, type Html } from '../html.ts';

export function ladderHtml(ladder: CompressionLadder): Html {
  return html`<p class="chart">${ladder.alt}</p>`;
}
