/** Dosage cells: the one place where a number of the programme becomes text with its four data attributes. */
import type { Cell, CellName, Exercise, Prescription } from '../../programme/programme.ts';
import { html, type Html } from '../html.ts';

/** A row of an exercise's numbers. */
interface NumberRow {
  readonly label: string;
  readonly text: string;
  readonly cell: Cell;
}

/**
 * All cells of an exercise as a table of two columns, the card's facts first, in its order.
 * A cell without words for the patient keeps its place in the file, out of sight.
 */
export function numbersHtml(
  exercise: Exercise,
  columns: Readonly<Record<CellName, string>>,
  caption: string,
): Html {
  return html`<table class="numbers">
    <caption>
      ${caption}
    </caption>
    <tbody>
      ${numberRows(exercise, columns).map(numberRowHtml)}
    </tbody>
  </table> `;
}

/** The cells of a coming step in one line of pairs, each label before its text. */
export function amountsHtml({ cells }: Prescription, columns: Readonly<Record<CellName, string>>): Html {
  return html`<ul class="amounts">
    ${cells.map((cell) => amountHtml(cell, columns[cell.cell]))}
  </ul> `;
}

function numberRows({ facts, cells }: Exercise, columns: Readonly<Record<CellName, string>>): NumberRow[] {
  const factRows = facts.flatMap(({ label, text, cell: name }) => {
    const cell = cells.find((found) => found.cell === name);
    return cell === undefined ? [] : [{ label, text, cell }];
  });
  const told = new Set(factRows.map(({ cell }) => cell.cell));
  const others = cells.filter(({ cell }) => !told.has(cell));
  return [...factRows, ...others.map((cell) => ({ label: columns[cell.cell], text: cell.text, cell }))];
}

function numberRowHtml({ label, text, cell }: NumberRow): Html {
  if (text === '')
    return html`<tr hidden>
      <th scope="row">${label}</th>
      <td ${cellAttributes(cell)}></td>
    </tr> `;
  return html`<tr>
    <th scope="row">${label}</th>
    <td ${cellAttributes(cell)}>${text}</td>
  </tr> `;
}

function amountHtml(cell: Cell, label: string): Html {
  if (cell.text === '') return html`<li hidden><span ${cellAttributes(cell)}></span></li> `;
  return html`<li>
    <span class="label">${label}</span> <span ${cellAttributes(cell)}>${cell.text}</span>
  </li> `;
}

/** `data-step data-card data-cell data-value`: how a reader of the file finds every number again. */
export function cellAttributes({ step, card, cell, value }: Cell): Html {
  return html`data-step="${step}" data-card="${card}" data-cell="${cell}" data-value="${value ?? ''}"`;
}
