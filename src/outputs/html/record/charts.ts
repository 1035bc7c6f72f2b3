/** The clinician's two signs: the range ruler and the ladder of cards by squeeze. */
import { compressionLadder } from '../../../drawing/charts/compressionLadder.ts';
import { rangeRuler } from '../../../drawing/charts/rangeRuler.ts';
import type { CompressionLadder, RangeRuler } from '../../../programme/programme.ts';
import { html, type Html } from '../html.ts';
import { drawingHtml } from '../parts/drawing.ts';

// A chart's smallest words are 2.5 mm high: at this scale they are read on a screen as on paper.
const EMS_PER_MM = 0.3;
const RULER_MM = 90;
const LADDER_MM = 110;

export function rulerHtml(ruler: RangeRuler): Html {
  return html`<div class="chart">
    ${drawingHtml(rangeRuler(ruler, RULER_MM), ruler.alt, RULER_MM * EMS_PER_MM)}
  </div> `;
}

export function ladderHtml(ladder: CompressionLadder): Html {
  return html`<div class="chart">
    ${drawingHtml(compressionLadder(ladder, LADDER_MM), ladder.alt, LADDER_MM * EMS_PER_MM)}
  </div> `;
}
