/** The log as text that a person and the review can read: by the phone's own sheet, else copied, else as a file. */
import { sharedLog } from '../../content/log/format.ts';
import { IN_USE } from '../../messages/en/patient/inUse.ts';
import type { SheetInUse } from '../../programme/sheetInUse.ts';
import { button, element, spoken } from './element.ts';
import type { LogStore } from './store.ts';

/** The buttons that share and delete, the text itself, and what came of it. */
export function shareBar(store: LogStore, sheet: SheetInUse): HTMLElement {
  const said = spoken({ class: 'answer' });
  const text = element('textarea', {
    readonly: true,
    rows: '6',
    'aria-label': IN_USE.sharedText,
    'data-shared': '',
    hidden: true,
  });
  const share = button(IN_USE.share, { class: 'press', 'data-share': 'log' }, () => {
    text.value = sharedText(store, sheet);
    text.hidden = false;
    void sent(text.value, `${sheet.alias}-r${sheet.revision}.log.txt`).then(
      (words) => (said.textContent = words),
    );
  });
  const clear = button(IN_USE.clear, { class: 'press quiet', 'data-clear': 'log' }, () => {
    const rows = store.clear();
    text.hidden = true;
    said.textContent = rows.length === 0 ? IN_USE.nothingYet : `${IN_USE.cleared} `;
    if (rows.length > 0) said.append(undo(() => store.restore(rows), said));
  });
  return element(
    'div',
    { class: 'share on-screen' },
    element('p', { class: 'buttons' }, share, clear),
    said,
    text,
  );
}

/** What is shared: the entries from the first day of this sheet on, and what was ticked since the person was seen. */
export function sharedText(store: LogStore, { alias, revision, seenOn, startOn }: SheetInUse): string {
  return sharedLog(
    { alias, revision },
    store.rows().filter(({ date, kind }) => date >= (kind === 'alarm' ? seenOn : startOn)),
  );
}

function undo(restore: () => void, said: HTMLElement): HTMLElement {
  return button(IN_USE.undo, { class: 'press quiet', 'data-undo': 'log' }, () => {
    restore();
    said.textContent = '';
  });
}

async function sent(text: string, name: string): Promise<string> {
  if (typeof navigator.share === 'function') {
    try {
      await navigator.share({ text });
      return IN_USE.shared;
    } catch {
      // Refused or given up by the person: the other ways stay open.
    }
  }
  try {
    await navigator.clipboard.writeText(text);
    return IN_USE.copied;
  } catch {
    return saved(text, name) ? IN_USE.filed : IN_USE.selectIt;
  }
}

function saved(text: string, name: string): boolean {
  if (!('download' in HTMLAnchorElement.prototype)) return false;
  const address = URL.createObjectURL(new Blob([text], { type: 'text/plain' }));
  element('a', { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
  return true;
}
