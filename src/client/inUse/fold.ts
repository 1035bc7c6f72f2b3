/** Folding on the screen: on paper, and without scripts, everything stands open. */
import { IN_USE } from '../../messages/en/patient/inUse.ts';
import { button, element } from './element.ts';

/** Sections that wait behind their headings; what must never be overlooked stays open. */
const FOLDED =
  '#easier,#flare,#missed-days,#week,#running,#sitting,#stretching,#activities,#steps,#also-named,#what-comes-next,#log,.advice';

export function foldSections(): void {
  for (const section of document.querySelectorAll<HTMLElement>(FOLDED)) foldSection(section);
  for (const exercise of document.querySelectorAll<HTMLElement>('[data-exercise]')) foldExercise(exercise);
  addEventListener('hashchange', () => unfoldTo(location.hash));
  document.addEventListener('click', ({ target }) => {
    const link = target instanceof Element ? target.closest('a[href^="#"]') : null;
    if (link !== null) unfoldTo(link.getAttribute('href') ?? '');
  });
  unfoldTo(location.hash);
}

function foldSection(section: HTMLElement): void {
  const heading = section.querySelector('h2');
  const text = section.querySelector<HTMLElement>('.text');
  if (heading === null || text === null) return;
  text.id = `${section.id}-text`;
  const fold = toggle(section, 'folded', text.id);
  fold.append(...heading.childNodes);
  heading.append(fold);
}

/** Who, why and from when: known after the first reading. */
export function foldWhy(): void {
  const why = document.querySelector<HTMLElement>('.why');
  if (why === null) return;
  const words = element('div', { id: 'why-text', class: 'text' });
  const ways = why.querySelector('.ways');
  words.append(...[...why.children].filter((one) => one !== ways));
  const fold = toggle(why, 'folded', 'why-text');
  fold.append(IN_USE.why);
  ways?.append(element('li', { class: 'on-screen' }, fold));
  why.append(words);
}

/** Dose, pictures, how far and weight stay; words and numbers wait below them. */
function foldExercise(exercise: HTMLElement): void {
  const halves = exercise.querySelector<HTMLElement>('.halves');
  if (halves === null) return;
  halves.id = `${exercise.id}-more`;
  const fold = toggle(exercise, 'short', halves.id);
  fold.append(IN_USE.more);
  tellByLast(exercise);
  const load = exercise.querySelector<HTMLElement>('[data-cell="loadKg"]');
  const weight = load?.dataset['value'] === '0' ? '' : (load?.textContent ?? '');
  if (weight !== '') {
    const words = [element('strong', {}, `${IN_USE.weight}: `), weight];
    const beside = exercise.querySelector('.how-far');
    const line = element('p', { class: 'weight on-screen' }, ...words);
    if (beside === null) halves.before(line);
    else beside.append(line);
  }
  halves.before(element('div', { class: 'presses on-screen' }, element('p', {}, fold)));
}

// The first picture speaks for all of them; while it is folded away the last one does.
function tellByLast(exercise: HTMLElement): void {
  const [first, ...others] = exercise.querySelectorAll('.frame svg');
  const last = others[others.length - 1];
  if (first === undefined || last === undefined) return;
  const words = first.getAttribute('aria-label') ?? '';
  const tell = () => {
    const [speaks, silent] = exercise.classList.contains('short') ? [last, first] : [first, last];
    silent.setAttribute('aria-hidden', 'true');
    for (const name of ['role', 'aria-label']) silent.removeAttribute(name);
    speaks.removeAttribute('aria-hidden');
    speaks.setAttribute('role', 'img');
    speaks.setAttribute('aria-label', words);
  };
  new MutationObserver(tell).observe(exercise, { attributeFilter: ['class'] });
  tell();
}

/** A button that takes the class from `holder` and puts it back; it begins with it. */
export function toggle(holder: HTMLElement, folds: string, controls: string): HTMLButtonElement {
  const made = button('', { class: 'fold', 'aria-controls': controls }, () => holder.classList.toggle(folds));
  const tell = () => made.setAttribute('aria-expanded', String(!holder.classList.contains(folds)));
  new MutationObserver(tell).observe(holder, { attributeFilter: ['class'] });
  holder.classList.add(folds);
  tell();
  return made;
}

/** Opens whatever hides the place an address leads to. */
function unfoldTo(hash: string): void {
  const target = hash.length > 1 ? document.getElementById(decodeURIComponent(hash.slice(1))) : null;
  for (let at: HTMLElement | null = target; at !== null; at = at.parentElement) open(at);
}

function open(at: HTMLElement): void {
  at.classList.remove('folded', 'off');
  if (at instanceof HTMLDetailsElement) at.open = true;
}
