/** The sheet to fill in with a pen: a row a day, empty fields to write in. */
import type { LogSheet } from '../../programme/programme.ts';
import { html, nothing, type Html } from '../html.ts';
import { hangHtml } from './section.ts';
import { wideTableHtml } from './table.ts';

/** The first two columns are printed, the others are left free. */
export function logHtml(log: LogSheet): Html {
  if (log.days.length === 0) return nothing;
  const free = log.columns.slice(2).map(() => html`<td></td>`);
  const table = html`<table class="log">
    <caption>
      ${log.hint}
    </caption>
    <thead>
      <tr>
        ${log.columns.map((column) => html`<th scope="col">${column}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${log.days.map(
        ({ label, planned }) =>
          html`<tr>
            <th scope="row">${label}</th>
            <td>${planned}</td>
            ${free}
          </tr> `,
      )}
    </tbody>
  </table> `;
  return hangHtml('log', log.heading, wideTableHtml(table, log.heading), 'broad');
}
