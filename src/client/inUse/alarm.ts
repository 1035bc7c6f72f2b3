/** What stops the programme, told on the page: a row of the log that the review reads, and what to do at once. */
import type { LogRow } from '../../content/log/columns.ts';
import { ALARM, alarmLabel, alarmLines } from '../../messages/en/patient/alarm.ts';
import type { SheetInUse } from '../../programme/sheetInUse.ts';
import { element, spoken } from './element.ts';
import type { Book } from './entry.ts';
import { deviceDay } from './sheet.ts';

type Alarms = SheetInUse['alarms'];

/** What was ticked since the person was seen for this sheet and not taken back: whoever was seen was asked anew. */
export function alarmsIn(rows: readonly LogRow[], { alarms, seenOn }: SheetInUse): Alarms {
  const ticked = rows.filter((row) => row.kind === 'alarm' && row.done !== 'no' && row.date >= seenOn);
  return alarms.filter(({ item }) => ticked.some(({ card }) => card === item));
}

/** A box for each item, folded; it opens by itself once one is ticked. */
export function alarmForm(book: Book): HTMLElement {
  const { store, sheet } = book;
  const answer = spoken({ class: 'answer' });
  const lines = sheet.alarms.map(({ item }) => ({ item, box: boxOf(book, item) }));
  const list = lines.map(({ item, box }) =>
    element('li', {}, element('label', { class: 'switch' }, box, ` ${alarmLabel(item)}`)),
  );
  const form = element(
    'details',
    { class: 'alarm', id: 'alarm' },
    element('summary', {}, ALARM.question),
    element('p', { class: 'quiet' }, ALARM.hint),
    element('ul', {}, ...list),
    answer,
  );
  const show = () => {
    const found = alarmsIn(store.rows(), sheet);
    for (const { item, box } of lines) box.checked = found.some((one) => one.item === item);
    if (found.length > 0) form.open = true;
    const [todo = ''] = alarmLines(found, sheet.emergencyNumber);
    const said = todo === '' ? '' : `${todo} ${ALARM.share}`;
    if (answer.textContent !== said) answer.textContent = said;
  };
  store.onChange(show);
  show();
  return form;
}

/** What to do now stands at the top of the page, which is shorter since. */
function toStop(): void {
  const heading = document.getElementById('today-heading');
  heading?.setAttribute('tabindex', '-1');
  heading?.focus();
  heading?.scrollIntoView();
}

function boxOf({ store, sheet }: Book, item: string): HTMLInputElement {
  const box = element('input', { type: 'checkbox', 'data-alarm': item });
  const key = (date: string) => ({ date, occasion: 1, kind: 'alarm', card: item, side: null }) as const;
  box.addEventListener('change', () => {
    if (box.checked) {
      store.write(key(deviceDay()), 'done', 'yes');
      return toStop();
    }
    const open = store.rows().filter((row) => row.kind === 'alarm' && row.card === item && row.done !== 'no');
    open
      .filter(({ date }) => date >= sheet.seenOn)
      .forEach(({ date }) => store.write(key(date), 'done', 'no'));
  });
  return box;
}
