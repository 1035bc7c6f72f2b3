/** The sheet to fill in with a pen: a row a day, empty fields to write in. */
import type { LogSheet } from '../../../messages/shapes.ts';
import { html, nothing, type Html } from '../html.ts';
import { hangHtml } from './section.ts';
import { wideTableHtml } from './table.ts';

/** The first two columns are printed, the others are left free. */
export function logHtml(log: LogSheet): Html {
  if (log.days.length === 0) return nothing;
  const table = html`<table class="log">
    <thead>
      <tr>
        ${log.columns.map((column) => html`<th scope="col">${column}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${log.days.map((day) => dayHtml(day, log.columns.length - 2))}
    </tbody>
  </table> `;
  const content = html`<p>${log.hint}</p>
    ${wideTableHtml(table, log.heading)}`;
  return hangHtml('log', log.heading, content, 'broad');
}

function dayHtml({ label, planned }: LogSheet['days'][number], free: number): Html {
  const fields = Array.from({ length: free }, () => html`<td></td>`);
  return html`<tr>
    <th scope="row">${label}</th>
    <td>${planned}</td>
    ${fields}
  </tr> `;
}
