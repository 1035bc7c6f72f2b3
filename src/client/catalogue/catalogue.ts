/**
 * Brings the search and the filters of the index to life. Without it the whole list stands there, and nothing else is
 * missing. It stores nothing: what is asked stands in the address.
 */
import { askedIn, queryOf, type Asked } from './address.ts';
import { tellNone } from './emptyAnswer.ts';
import { isAdmitted, type Values } from './match.ts';
import { reasonOf, reasonsIn, type Reason } from './reasons.ts';
import { askedWords, ranked, readIndex, type WordIndex } from './search.ts';

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
  const reasons = [...form.querySelectorAll<HTMLInputElement>('input[data-asked]')].map(reasonIn);
  const list = document.querySelector<HTMLElement>('.entries');
  let index: WordIndex | null = null;
  let isReordered = false;

  const asked = (): Asked => ({
    text: text?.value ?? '',
    chosen: Object.fromEntries(
      [...inputs].map(([key, all]) => [key, all.filter(({ checked }) => checked).map(({ value }) => value)]),
    ),
  });
  const show = (): void => {
    const now = asked();
    const { reasons: against, rest: words } = reasonsIn(askedWords(now.text), reasons);
    index ??= readIndex(typeof libraryWords === 'string' ? libraryWords : '');
    const hits = ranked(index, words);
    const isFor = (at: number) => !against.some(({ value }) => facets[at]?.['cannot']?.includes(value));
    const admitted = entries.map((_, at) => isFor(at) && isAdmitted(rules, now.chosen, facets[at] ?? {}));
    const order = hits === null ? entries.map((_, at) => at) : hits.map(({ card }) => card);
    const shown = order.filter((at) => admitted[at]);
    entries.forEach((entry) => (entry.hidden = true));
    for (const at of shown) (entries[at] as HTMLElement).hidden = false;
    // The order of the page itself, so that it is read aloud and gone through by keys as it is seen.
    if (hits !== null) list?.append(...shown.map((at) => entries[at] as HTMLElement));
    else if (isReordered) list?.append(...entries);
    isReordered = hits !== null;
    tellLeftOut(form, against, entries.filter((_, at) => !isFor(at)).length);
    tell(form, shown.length, entries.length, queryOf(now, keys) !== '', hits !== null);
    if (shown.length === 0)
      tellNone({
        words,
        hasFilters: Object.values(now.chosen).some(({ length }) => length > 0),
        countOf: (asked) =>
          ranked(index as WordIndex, [asked])?.filter(({ card }) => admitted[card]).length ?? 0,
        countWithout: hits?.length ?? entries.length,
      });
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
  // What the empty answer proposes: one of the words alone, or the words without the filters.
  document.querySelector('[data-none]')?.addEventListener('click', ({ target }) => {
    if (!(target instanceof HTMLButtonElement)) return;
    const { word } = target.dataset;
    const next: Asked = word === undefined ? { ...asked(), chosen: {} } : { ...asked(), text: word };
    history.replaceState(null, '', `${location.pathname}?${queryOf(next, keys)}`);
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

function tell(form: HTMLFormElement, count: number, all: number, isAsked: boolean, isRanked: boolean): void {
  const output = form.querySelector<HTMLElement>('[data-count]');
  const words = output?.dataset[isRanked && count > 1 ? 'ranked' : 'count'] ?? '';
  if (output !== null)
    output.textContent = words.replace('{count}', String(count)).replace('{all}', String(all));
  const clear = form.querySelector<HTMLElement>('[data-clear]');
  if (clear !== null) clear.hidden = !isAsked;
  const none = document.querySelector<HTMLElement>('[data-none]');
  if (none !== null) none.hidden = count > 0;
}

function reasonIn({ value, dataset, parentElement }: HTMLInputElement): Reason {
  return reasonOf(value, (parentElement?.textContent ?? '').trim(), dataset['asked'] ?? '');
}

function tellLeftOut(form: HTMLFormElement, against: readonly Reason[], count: number): void {
  const place = form.querySelector<HTMLElement>('[data-left-out]');
  if (place === null) return;
  const words = against.map(({ label }) => label.toLowerCase()).join(', ');
  const sentence = (place.dataset['leftOut'] ?? '')
    .replace('{count}', String(count))
    .replace('{words}', words);
  place.textContent = against.length === 0 ? '' : sentence;
}

function tellChosen(group: HTMLElement, count: number): void {
  const place = group.querySelector<HTMLElement>('[data-chosen]');
  if (place !== null) place.textContent = count === 0 ? '' : String(count);
}
