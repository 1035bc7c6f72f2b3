/** The clinician's pictures, each with its sentence, and its numbers as a table that unfolds. */
import { dayChart } from '../../../drawing/charts/dayChart.ts';
import type { RecordLabels } from '../../../messages/en/labels.ts';
import type { Picture } from '../../../programme/programme.ts';
import { html, nothing, type Html } from '../html.ts';
import { drawingHtml } from '../parts/drawing.ts';
import { tableHtml } from '../parts/table.ts';

// Three stand side by side on paper, their smallest words 2.5 mm high there; on the screen they are a little larger.
const PICTURE_MM = 60;
const EMS_PER_MM = 0.38;

export function picturesHtml(pictures: readonly Picture[], { pictureNumbers }: RecordLabels): Html {
  if (pictures.length === 0) return nothing;
  return html`${pictures.map(
    ({ heading, sentence, alt, chart, table }) =>
      html`<div class="picture">
        <h3>${heading}</h3>
        <p>${sentence}</p>
        <div class="chart">${drawingHtml(dayChart(chart, PICTURE_MM), alt, PICTURE_MM * EMS_PER_MM)}</div>
        <details>
          <summary>${pictureNumbers}</summary>
          ${tableHtml(table)}
        </details>
      </div> `,
  )}`;
}
