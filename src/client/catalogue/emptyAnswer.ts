/** What the page proposes where nothing was found: each word alone, or the words without the filters. */

export interface Empty {
  readonly words: readonly string[];
  readonly hasFilters: boolean;
  /** Cards that a word alone would find, under the filters that are chosen. */
  readonly countOf: (word: string) => number;
  /** Cards that the words would find without any filter. */
  readonly countWithout: number;
}

export function tellNone({ words, hasFilters, countOf, countWithout }: Empty): void {
  const list = document.querySelector<HTMLElement>('[data-none-words]');
  list?.replaceChildren(...words.map((word) => entryOf(word, countOf(word), words.length > 1, list.dataset)));
  const without = document.querySelector<HTMLElement>('[data-none-filters]');
  if (without === null) return;
  without.hidden = !hasFilters || countWithout === 0;
  const button = without.querySelector('button');
  if (button !== null) button.textContent = said(button.dataset['count'], '', countWithout);
}

function entryOf(word: string, count: number, isOneOfMore: boolean, labels: DOMStringMap): HTMLElement {
  const entry = document.createElement('li');
  if (count === 0) entry.textContent = said(labels['unknown'], word, 0);
  else if (isOneOfMore) entry.append(buttonOf(word, said(labels['count'], word, count)));
  else entry.textContent = said(labels['count'], word, count);
  return entry;
}

function buttonOf(word: string, label: string): HTMLButtonElement {
  const button = document.createElement('button');
  button.type = 'button';
  button.dataset['word'] = word;
  button.textContent = label;
  return button;
}

function said(sentence: string | undefined, word: string, count: number): string {
  return (sentence ?? '').replace('{word}', word).replace('{count}', String(count));
}
