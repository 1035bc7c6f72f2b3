/** Plain tables of text. */
import type { Table } from '../../../messages/shapes.ts';
import { html, type Html } from '../html.ts';
import { linked, NO_PLACES, type Places } from './linked.ts';

// More columns than this do not fit a phone; such a table scrolls by itself.
const NARROW_COLUMNS = 2;

/** The table with its caption; the first cell of a row is the row's header. */
export function tableHtml({ caption, columns, rows }: Table, places: Places = NO_PLACES): Html {
  const table = html`<table>
    <caption>
      ${caption}
    </caption>
    <thead>
      <tr>
        ${columns.map((column) => html`<th scope="col">${column}</th>`)}
      </tr>
    </thead>
    <tbody>
      ${rows.map((row) => rowHtml(row, places))}
    </tbody>
  </table> `;
  return columns.length > NARROW_COLUMNS ? wideTableHtml(table, caption) : table;
}

function rowHtml([first = '', ...others]: readonly string[], places: Places): Html {
  return html`<tr>
    <th scope="row">${linked(first, places)}</th>
    ${others.map((text) => html`<td>${linked(text, places)}</td>`)}
  </tr> `;
}

/** The same in a frame that scrolls sideways by itself where a wide table does not fit. */
export function wideTableHtml(table: Html, label: string): Html {
  return html`<div class="wide" role="group" aria-label="${label}" tabindex="0">${table}</div> `;
}
