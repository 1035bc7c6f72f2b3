/** What is being written, kept for this tab alone until it is saved: a crash or a closed page loses nothing. */
import { effect } from '@preact/signals';
import { isLogChanged, takeLogDraft } from './logState.ts';
import { isChanged, lay, origin, others, text } from './state.ts';

const KEY = 'loadleaf-desk';

export function clearDraft(): void {
  sessionStorage.removeItem(KEY);
}

/** Lays the draft of this tab on the desk again; false where there is none. */
export function takeDraft(): boolean {
  const kept = sessionStorage.getItem(KEY);
  if (kept === null) return false;
  try {
    const draft = JSON.parse(kept) as {
      readonly text: string;
      readonly name: string;
      readonly from: string | null;
      readonly isInFolder: boolean;
      readonly others: typeof others.value;
    };
    lay(
      draft.text,
      { name: draft.name, text: draft.from, handle: null, isInFolder: draft.isInFolder },
      draft.others,
    );
    takeLogDraft();
    return true;
  } catch {
    clearDraft();
    return false;
  }
}

export function keepDraft(): void {
  effect(() => {
    const { name, text: from, isInFolder } = origin.value;
    const draft = JSON.stringify({ text: text.value, name, from, isInFolder, others: others.value });
    if (isChanged.value || isLogChanged.value) sessionStorage.setItem(KEY, draft);
    else clearDraft();
  });
}
