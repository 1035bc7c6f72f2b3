/**
 * Brings the search and the filters of the index to life. Without it the whole list stands there, and nothing else is
 * missing. It stores nothing: what is asked stands in the address.
 */
import { askedIn, queryOf, type Asked } from './address.ts';
import { found, isAdmitted, readIndex, type Values, type WordIndex } from './match.ts';
import { wordsOf } from '../../units/words.ts';

declare const libraryWords: string | undefined;

const form = document.querySelector<HTMLFormElement>('[data-catalogue]');
if (form !== null) start(form);

function start(form: HTMLFormElement): void {
  const text = form.querySelector<HTMLInputElement>('input[name="q"]');
  const groups = [...form.querySelectorAll<HTMLElement>('[data-filter]')];
  const entries = [...document.querySelectorAll<HTMLElement>('[data-entry]')];
  const keys = groups.map((group) => group.dataset['filter'] ?? '');
  const rules = Object.fromEntries(
    groups.map(({ dataset }) => [dataset['filter'] ?? '', dataset['rule'] ?? '']),
  );
  const inputs = new Map(groups.map((group, at) => [keys[at] ?? '', inputsOf(group)]));
  const facets = entries.map((entry) => facetsOf(entry, keys));
  const known = Object.fromEntries([...inputs].map(([key, all]) => [key, all.map(({ value }) => value)]));
  let index: WordIndex | null = null;

  const asked = (): Asked => ({
    text: text?.value ?? '',
    chosen: Object.fromEntries(
      [...inputs].map(([key, all]) => [key, all.filter(({ checked }) => checked).map(({ value }) => value)]),
    ),
  });
  const show = (): void => {
    const now = asked();
    const words = wordsOf(now.text);
    index ??= readIndex(typeof libraryWords === 'string' ? libraryWords : '');
    const hits = found(index, words);
    let count = 0;
    entries.forEach((entry, at) => {
      const isIn = (hits === null || hits.has(at)) && isAdmitted(rules, now.chosen, facets[at] ?? {});
      entry.hidden = !isIn;
      if (isIn) count += 1;
    });
    tell(form, count, entries.length, queryOf(now, keys) !== '');
    for (const group of groups) tellChosen(group, (now.chosen[group.dataset['filter'] ?? ''] ?? []).length);
  };
  const take = (): void => {
    const { text: wanted, chosen } = askedIn(location.search, known);
    if (text !== null) text.value = wanted;
    for (const [key, all] of inputs)
      for (const input of all) input.checked = (chosen[key] ?? []).includes(input.value);
    // The choice of no limit is a radio button of its own.
    for (const none of form.querySelectorAll<HTMLInputElement>('input[type="radio"][value=""]'))
      none.checked = (chosen[none.name] ?? []).length === 0;
    for (const group of groups)
      if ((chosen[group.dataset['filter'] ?? ''] ?? []).length > 0) group.setAttribute('open', '');
    show();
  };
  const changed = (): void => {
    const query = queryOf(asked(), keys);
    history.replaceState(null, '', `${location.pathname}${query === '' ? '' : `?${query}`}${location.hash}`);
    show();
  };

  form.hidden = false;
  form.addEventListener('input', changed);
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const results = document.getElementById('results-heading');
    results?.focus();
    results?.scrollIntoView();
  });
  form.querySelector('[data-clear]')?.addEventListener('click', () => {
    history.replaceState(null, '', location.pathname);
    take();
    text?.focus();
  });
  addEventListener('popstate', take);
  // On a wide screen there is room for the filters that are asked most.
  if (matchMedia('(min-width: 56rem)').matches)
    for (const group of groups.slice(0, 3)) group.setAttribute('open', '');
  take();
}

function inputsOf(group: HTMLElement): HTMLInputElement[] {
  return [...group.querySelectorAll<HTMLInputElement>('input')].filter(({ value }) => value !== '');
}

function facetsOf({ dataset }: HTMLElement, keys: readonly string[]): Values {
  return Object.fromEntries(
    keys.map((key) => [key, (dataset[key] ?? '').split(' ').filter((word) => word !== '')]),
  );
}

function tell(form: HTMLFormElement, count: number, all: number, isAsked: boolean): void {
  const output = form.querySelector<HTMLElement>('[data-count]');
  const words = output?.dataset['count'] ?? '';
  if (output !== null)
    output.textContent = words.replace('{count}', String(count)).replace('{all}', String(all));
  const clear = form.querySelector<HTMLElement>('[data-clear]');
  if (clear !== null) clear.hidden = !isAsked;
  const none = document.querySelector<HTMLElement>('[data-none]');
  if (none !== null) none.hidden = count > 0;
}

function tellChosen(group: HTMLElement, count: number): void {
  const place = group.querySelector<HTMLElement>('[data-chosen]');
  if (place !== null) place.textContent = count === 0 ? '' : String(count);
}
