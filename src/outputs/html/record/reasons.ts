/** Every number of one prescription with rule, inputs, source, mark and what decided it. */
import type { RecordLabels } from '../../../messages/en/labels.ts';
import type { Cell } from '../../../programme/programme.ts';
import type { CellName } from '../../../decisions/terms/cell.ts';
import { html, type Html } from '../html.ts';
import { cellAttributes } from '../parts/cells.ts';
import { keyWords } from './keyWords.ts';
import { wideTableHtml } from '../parts/table.ts';

export function reasonsHtml(
  cells: readonly Cell[],
  columns: Readonly<Record<CellName, string>>,
  title: string,
  labels: RecordLabels,
): Html {
  const heads = [labels.cell, labels.value, labels.rule, labels.inputs, labels.decidedBy, labels.source];
  return wideTableHtml(
    html`<table class="reasons">
      <caption>
        <bdi>${title}</bdi>
      </caption>
      <thead>
        <tr>
          ${heads.map((head) => html`<th scope="col">${head}</th>`)}
        </tr>
      </thead>
      <tbody>
        ${cells.map((cell) => rowHtml(cell, columns[cell.cell], labels))}
      </tbody>
    </table> `,
    title,
  );
}

/** A cell that does not apply keeps its place in the file, out of sight. */
function rowHtml(cell: Cell, label: string, labels: RecordLabels): Html {
  const cells = html`<th scope="row">${label}</th>
    <td ${cellAttributes(cell)}>${cell.text}</td>
    <td>${cell.rule}</td>
    <td>${inputsText(cell)}</td>
    <td>${labels.decided[cell.decidedBy]}</td>
    <td>${cell.source.cite} <span class="mark">${cell.source.mark}</span></td>`;
  return cell.text === ''
    ? html`<tr hidden>
        ${cells}
      </tr> `
    : html`<tr>
        ${cells}
      </tr> `;
}

function inputsText({ inputs }: Cell): string {
  return Object.entries(inputs)
    .map(([name, value]) => `${keyWords(name)}: ${value ?? '-'}`)
    .join('; ');
}
