/** The table of the leaflet filled from the log, and a small picture of the weeks. */
import { IN_USE, soFarText } from '../../messages/en/patient/inUse.ts';
import type { SheetInUse } from '../../programme/sheetInUse.ts';
import { daysBetween, type IsoDate } from '../../units/date.ts';
import { runsOfDays } from './runsOfDays.ts';
import { element, svgElement } from './element.ts';
import type { LogRow } from '../../content/log/columns.ts';

// Columns of the printed table: day, planned, morning, done, pain during.
const MORNING = 1;
const DONE = 2;
const PAIN = 3;

/** Puts the entries into the rows of their days. */
export function fillTable(sheet: SheetInUse, rows: readonly LogRow[]): void {
  const lines = document.querySelectorAll<HTMLTableRowElement>('#log .log tbody tr');
  sheet.days.forEach(({ on }, at) => {
    const cells = lines[at]?.querySelectorAll('td');
    if (cells === undefined) return;
    const ofDay = rows.filter(({ date }) => date === on);
    const put = (cell: number, text: string) => {
      const place = cells[cell];
      if (place !== undefined && place.textContent !== text) place.textContent = text;
    };
    put(MORNING, mostOf(ofDay.map(({ morning }) => morning)));
    put(DONE, doneText(ofDay));
    put(PAIN, mostOf(ofDay.map(({ painDuring }) => painDuring)));
  });
}

// Of several the highest, for it is the one the rules look at.
function mostOf(values: readonly (number | null)[]): string {
  const known = values.filter((value): value is number => value !== null);
  return known.length === 0 ? '' : String(Math.max(...known));
}

function doneText(rows: readonly LogRow[]): string {
  const all = rows.flatMap(({ done }) => (done === null ? [] : [done]));
  if (all.length === 0) return '';
  return IN_USE.doneWords[all.every((done) => done === all[0]) ? (all[0] ?? 'part') : 'part'];
}

/** Dates of sessions that were done, whole or in part. */
export function sessionsDone(rows: readonly LogRow[]): IsoDate[] {
  const done = rows.filter((row) => row.kind === 'session' && (row.done === 'yes' || row.done === 'part'));
  return [...new Set(done.map(({ date }) => date as IsoDate))];
}

const STEP = 10;
const HIGH = 62;

/** Morning scores as a line against the usual one, sessions as marks below: filled when done. Null before the first day. */
export function weeksPicture(sheet: SheetInUse, rows: readonly LogRow[], today: IsoDate): HTMLElement | null {
  const past = sheet.days.filter(({ on }) => on <= today);
  const first = past[0];
  if (first === undefined) return null;
  const usual = sheet.rules.person.usualPain;
  const done = new Set<string>(sessionsDone(rows));
  const planned = past.filter(({ session }) => session).length;
  const x = (on: string) => STEP / 2 + STEP * daysBetween(first.on, on as IsoDate);
  const y = (score: number) => HIGH - 12 - score * 5;
  const width = STEP * sheet.days.length;
  const scores = rows.filter(
    ({ kind, morning, date }) => kind === 'morning' && morning !== null && date >= first.on,
  );
  const words = soFarText([...done].filter((on) => on >= first.on).length, planned, usual);
  const picture = svgElement(
    'svg',
    {
      viewBox: `0 0 ${width} ${HIGH}`,
      width: '100%',
      role: 'img',
      'aria-label': `${IN_USE.morningsPicture}. ${words}`,
    },
    svgElement('line', { class: 'usual', x1: 0, x2: width, y1: y(usual), y2: y(usual) }),
    ...runsOfDays(scores).map((run) =>
      svgElement('polyline', {
        class: 'mornings',
        points: run.map(({ date, morning }) => `${x(date)},${y(morning ?? 0)}`).join(' '),
      }),
    ),
    ...scores.map(({ date, morning }) =>
      svgElement('circle', { class: 'morning', cx: x(date), cy: y(morning ?? 0), r: 2 }),
    ),
    ...sheet.days
      .filter(({ session, on }) => session || done.has(on))
      .map(({ on }) =>
        svgElement('rect', {
          class: done.has(on) ? 'done' : 'planned',
          x: x(on) - 3,
          y: HIGH - 8,
          width: 6,
          height: 6,
        }),
      ),
  );
  return element(
    'figure',
    { class: 'weeks on-screen' },
    picture,
    element('figcaption', { class: 'caption' }, words),
  );
}
