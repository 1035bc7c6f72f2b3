/** The log as a grid: Tab and arrows, Enter, blocks from a spreadsheet, a few letters for a word. */
import { signal } from '@preact/signals';
import { LOG_COLUMNS, type LogColumn } from '../../content/log/columns.ts';
import {
  cellName,
  EARLIER_LINES,
  LATER_LINES,
  LOG_HEADS,
  linesText,
  PASTED,
} from '../../messages/en/desk/log.ts';
import { lineProblemText } from '../../messages/en/desk/log.ts';
import { completed } from '../log/completed.ts';
import { blockOf, columnAt, isLogText, withBlock, type CellAt } from '../log/lines.ts';
import { changeLines, lines, logProblems, takeLog, undoLines } from './logState.ts';
import { catalogue, lastGood, value } from './state.ts';

/** More lines at once would make typing slow. */
const LINES_SHOWN = 100;
const from = signal(0);

export function Grid() {
  const first = Math.min(from.value, Math.max(0, lines.value.length - 1));
  const shown = lines.value.slice(first, first + LINES_SHOWN);
  return (
    <>
      <div class="gridbox" tabIndex={-1}>
        <table class="grid" onKeyDown={walk} onPaste={paste}>
          <thead>
            <tr>
              {LOG_COLUMNS.map((column) => (
                <th key={column} scope="col" class={`is-${column}`}>
                  {LOG_HEADS[column]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {shown.map((_, index) => (
              <Line key={first + index} at={first + index} />
            ))}
          </tbody>
        </table>
      </div>
      <Whole />
      {lines.value.length <= LINES_SHOWN ? null : <Pages first={first} />}
    </>
  );
}

function Line({ at }: { at: number }) {
  const wrong = logProblems.value.filter(({ line }) => line === at);
  const isWrong = (column: LogColumn) => wrong.some(({ problem }) => problem.path === column);
  const id = `log-${at}-wrong`;
  return (
    <>
      <tr>
        {LOG_COLUMNS.map((column, index) => (
          <td key={column} class={`is-${column}`}>
            <input
              type="text"
              name={`log.${at}.${column}`}
              data-line={at}
              data-column={index}
              aria-label={cellName(column, at)}
              aria-invalid={isWrong(column) ? true : undefined}
              aria-describedby={wrong.length > 0 ? id : undefined}
              autocomplete="off"
              autocapitalize="none"
              spellcheck={false}
              value={lines.value[at]?.cells[index] ?? ''}
              onInput={({ currentTarget }) =>
                put({ line: at, column: index }, currentTarget.value, `${at}.${index}`)
              }
              onMouseDown={({ currentTarget }) => (isInside = document.activeElement === currentTarget)}
              onBlur={({ currentTarget }) => finish({ line: at, column: index }, currentTarget.value)}
            />
          </td>
        ))}
      </tr>
      {wrong.length === 0 ? null : (
        <tr class="wrongline">
          <td colSpan={LOG_COLUMNS.length} id={id}>
            {wrong.map(({ problem: { path, found, expected, fix } }) => (
              <p key={`${path}${found}`} class="wrong" data-problem={`log.${at}.${path}`}>
                {lineProblemText(at, path === '' ? found : `${path} ${found}`, expected, fix)}
              </p>
            ))}
          </td>
        </tr>
      )}
    </>
  );
}

/** What stands against the log as a whole. */
function Whole() {
  return (
    <>
      {logProblems.value
        .filter(({ line }) => line === null)
        .map(({ problem: { found, expected, fix } }) => (
          <p key={found} class="wrong" data-problem="log">
            {lineProblemText(null, found, expected, fix)}
          </p>
        ))}
    </>
  );
}

function Pages({ first }: { first: number }) {
  const all = lines.value.length;
  return (
    <p class="bar">
      <button
        type="button"
        disabled={first === 0}
        onClick={() => (from.value = Math.max(0, first - LINES_SHOWN))}
      >
        {EARLIER_LINES}
      </button>
      <span>{linesText(first, Math.min(all, first + LINES_SHOWN), all)}</span>
      <button
        type="button"
        disabled={first + LINES_SHOWN >= all}
        onClick={() => (from.value = first + LINES_SHOWN)}
      >
        {LATER_LINES}
      </button>
    </p>
  );
}

function put(at: CellAt, text: string, cell = ''): void {
  changeLines(withBlock(lines.value, at, [[text]]), cell);
}

/** On leaving a cell its few letters become the word they stand for. */
function finish(at: CellAt, text: string): void {
  const column = LOG_COLUMNS[at.column];
  isInside = false;
  if (column === undefined) return;
  const meant = completed(column, text, factsOf(at.line));
  if (meant !== text.trim()) put(at, meant);
}

function factsOf(line: number) {
  const day = (key: string) => (typeof value.value[key] === 'string' ? String(value.value[key]) : '');
  return {
    from: day('startOn'),
    to: day('reviewOn'),
    cards: [lastGood.value?.cards ?? [], (catalogue.value?.cards ?? []).map(({ id }) => id)],
    items: Object.keys(catalogue.value?.effects ?? {}),
    kind: lines.value[line]?.cells[columnAt('kind')] ?? '',
  };
}

function cellOf(target: EventTarget | null): (CellAt & { readonly input: HTMLInputElement }) | null {
  if (!(target instanceof HTMLInputElement) || target.dataset['line'] === undefined) return null;
  return { line: Number(target.dataset['line']), column: Number(target.dataset['column']), input: target };
}

function walk(event: KeyboardEvent): void {
  const at = cellOf(event.target);
  if (at === null || event.altKey) return;
  const isControl = event.ctrlKey || event.metaKey;
  const key = event.key.toLowerCase();
  if (isControl && key === 'd') put(at, lines.value[at.line - 1]?.cells[at.column] ?? '');
  else if (isControl && key === 'z') undoLines();
  else if (isControl || !step(event.key, at)) return;
  event.preventDefault();
  // The form's own undo is of the consult.
  event.stopPropagation();
}

/** As in a spreadsheet: arrows leave a cell, unless somebody pressed F2 or clicked a second time to go about in it. */
let isInside = false;

/** Moves on from a cell; false for a key that moves within it. */
function step(key: string, { line, column, input }: CellAt & { readonly input: HTMLInputElement }): boolean {
  const { selectionStart, selectionEnd, value: text } = input;
  const isAtEnd = selectionEnd === text.length && selectionStart === selectionEnd;
  if (key === 'ArrowUp') return go(line - 1, column);
  if (key === 'ArrowDown' || key === 'Enter') return go(line + 1, column);
  if (key === 'ArrowLeft' && (!isInside || selectionEnd === 0)) return go(line, column - 1);
  if (key === 'ArrowRight' && (!isInside || isAtEnd)) return go(line, column + 1);
  if (key === 'F2') isInside = true;
  return false;
}

function go(line: number, column: number): boolean {
  if (line < 0 || line >= lines.value.length || column < 0 || column >= LOG_COLUMNS.length) return true;
  if (line < from.value || line >= from.value + LINES_SHOWN)
    from.value = Math.max(0, line - Math.floor(LINES_SHOWN / 2));
  const focus = () => {
    const input = document.querySelector<HTMLInputElement>(
      `.grid [data-line="${line}"][data-column="${column}"]`,
    );
    input?.focus();
    input?.select();
    return input !== null;
  };
  if (!focus()) requestAnimationFrame(focus);
  return true;
}

function paste(event: ClipboardEvent): void {
  const at = cellOf(event.target);
  const text = event.clipboardData?.getData('text/plain') ?? '';
  if (at === null) return;
  if (isLogText(text)) void takeLog(PASTED, new TextEncoder().encode(text));
  else if (/[\t\n]/.test(text.trimEnd())) changeLines(withBlock(lines.value, at, blockOf(text)));
  else return;
  event.preventDefault();
}
