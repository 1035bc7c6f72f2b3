/** Plain tables of text. */
import type { Table } from '../../../messages/shapes.ts';
import { html, type Html } from '../html.ts';
import { withKeyNames } from './keyName.ts';
import { linked, NO_PLACES, type Places } from './linked.ts';

// More columns than this do not fit a phone; such a table scrolls by itself.
const NARROW_COLUMNS = 2;

/** The table with its caption; the first cell of a row is the row's header. One row, which compares nothing, is set upright. */
export function tableHtml(whole: Table, places: Places = NO_PLACES): Html {
  const { caption, columns, rows } = whole;
  const [only] = rows;
  if (rows.length === 1 && only !== undefined) return uprightHtml(whole, only, places);
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

/** A line for each column, headed by its name. */
function uprightHtml({ caption, columns }: Table, row: readonly string[], places: Places): Html {
  return html`<table class="upright">
    <caption>
      ${caption}
    </caption>
    <tbody>
      ${columns.map((column, at) => rowHtml([column, row[at] ?? ''], places))}
    </tbody>
  </table> `;
}

function rowHtml([first = '', ...others]: readonly string[], places: Places): Html {
  return html`<tr>
    <th scope="row">${cellHtml(first, places)}</th>
    ${others.map((text) => html`<td>${cellHtml(text, places)}</td>`)}
  </tr> `;
}

// Names of keys stand on pages that have no places: no leaflet names one.
function cellHtml(text: string, places: Places): Html | string {
  return places.size === 0 ? withKeyNames(text) : linked(text, places);
}

/** The same in a frame that scrolls sideways by itself where a wide table does not fit. */
export function wideTableHtml(table: Html, label: string): Html {
  return html`<div class="wide" role="group" aria-label="${label}" tabindex="0">${table}</div> `;
}
