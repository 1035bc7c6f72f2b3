/** Dosage cells: the one place where a number of the programme becomes text with its four data attributes. */
import type { Cell, Exercise } from '../../../programme/programme.ts';
import type { SaidPart } from '../../../messages/shapes.ts';
import type { CellName } from '../../../decisions/terms/cell.ts';
import { html, nothing, type Html } from '../html.ts';

/** Column headings by cell. */
export type Columns = Readonly<Record<CellName, string>>;

/** A sentence of which some parts are cells, and the cells it says. */
export interface Said {
  readonly text: Html;
  readonly cells: readonly Cell[];
}

/** The sentence with its parts marked as the cells they say. What it leaves out is left for the table: none is lost, none stands twice. */
export function said(parts: readonly SaidPart[], exercise: Exercise): Said {
  const pieces = parts.map(({ text, cell: name }) => {
    const cell = exercise.cells.find((one) => one.cell === name && one.text === text);
    return {
      cell,
      html: cell === undefined ? html`${text}` : html`<span ${cellAttributes(cell)}>${text}</span>`,
    };
  });
  return {
    text: html`${pieces.map((piece) => piece.html)}`,
    cells: pieces.flatMap(({ cell }) => cell ?? []),
  };
}

/**
 * The cells that are not in `told` already as a table of two columns, the exercise's facts first, in its order.
 * Cells without words for the patient stand after them, out of sight.
 */
export function numbersHtml(
  exercise: Exercise,
  told: readonly Cell[],
  columns: Columns,
  caption: string,
): Html {
  const rest = exercise.cells.filter((cell) => !told.includes(cell));
  const facts = exercise.facts.flatMap(({ label, text, cell: name }) =>
    rest.filter(({ cell }) => cell === name).map((cell) => ({ label, text, cell })),
  );
  const others = rest
    .filter((cell) => !facts.some((fact) => fact.cell === cell))
    .map((cell) => ({ label: columns[cell.cell], text: cell.text, cell }));
  const rows = [...facts, ...others];
  return html`<table class="numbers">
    <caption>
      ${caption}
    </caption>
    <tbody>
      ${rows.filter(({ text }) => text !== '').map(rowHtml)}${wordlessHtml(rows.filter(({ text }) => text === ''))}
    </tbody>
  </table> `;
}

/** Cells of a coming step in one line of names and amounts, those without words after them; nothing where there are none. */
export function amountsHtml(cells: readonly Cell[], columns: Columns): Html {
  if (cells.length === 0) return nothing;
  const [worded, wordless] = [
    cells.filter(({ text }) => text !== ''),
    cells.filter(({ text }) => text === ''),
  ];
  return html`<dl class="amounts">
    ${worded.map(
      (cell) =>
        html`<dt>${columns[cell.cell]}</dt>
          <dd ${cellAttributes(cell)}>${cell.text}</dd> `,
    )}
    ${worded.length === 0 ? html`<dt hidden></dt>` : nothing}
    ${wordless.map((cell) => html`<dd hidden ${cellAttributes(cell)}></dd>`)}
  </dl> `;
}

interface Row {
  readonly label: string;
  readonly text: string;
  readonly cell: Cell;
}

function rowHtml({ label, text, cell }: Row): Html {
  return html`<tr>
    <th scope="row">${label}</th>
    <td ${cellAttributes(cell)}>${text}</td>
  </tr> `;
}

function wordlessHtml(rows: readonly Row[]): Html {
  if (rows.length === 0) return nothing;
  return html`<tr hidden>
    ${rows.map(({ cell }) => html`<td ${cellAttributes(cell)}></td>`)}
  </tr> `;
}

/** `data-step data-card data-cell data-value`: how a reader of the file finds every number again. */
export function cellAttributes({ step, card, cell, value }: Cell): Html {
  return html`data-step="${step}" data-card="${card}" data-cell="${cell}" data-value="${value ?? ''}"`;
}
