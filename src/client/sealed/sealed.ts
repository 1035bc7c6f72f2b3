/**
 * The page of a sealed leaflet: opens it with the key in the link, or with one that was kept, and puts it in its own place.
 * What stands in the page without this script is what is shown whenever it does not open.
 */
import { asksWords, fits, keyOfFragment, openSealed, type Opened, type OpeningKeys } from './open.ts';
import { forgetAll, keepKeys, keptKeys } from './kept.ts';

type State = 'locked' | 'open' | 'wrong' | 'withdrawn';

interface Words {
  readonly keep: string;
  readonly yes: string;
  readonly no: string;
  readonly kept: string;
}

const text = (id: string) => document.getElementById(id)?.textContent?.trim() ?? '';
const jwe = text('sealed-leaflet');
const words = JSON.parse(text('sealed-words')) as Words;

function show(state: State, part: 'wrong' | 'asks' | 'withdrawn' | null): void {
  document.documentElement.dataset['sealed'] = state;
  for (const one of document.querySelectorAll<HTMLElement>('[data-part]'))
    one.hidden = one.dataset['part'] !== part;
}

async function begin(): Promise<void> {
  show('locked', null);
  const kept = await keptKeys();
  const given = await keyOfFragment(location.hash);
  const keys: OpeningKeys | null = given === null ? kept : { outer: given, inner: kept?.inner ?? null };
  if (keys === null) return show(location.hash.length > 1 ? 'wrong' : 'locked', 'wrong');
  if (!(await fits(jwe, keys.outer))) return show('wrong', 'wrong');
  const opened = await openSealed(jwe, keys, null);
  if (opened !== null) return reveal(opened, kept !== null);
  return asksWords(jwe) ? ask(keys) : show('wrong', 'wrong');
}

function ask(keys: OpeningKeys): void {
  show('locked', 'asks');
  const form = document.querySelector('form');
  form?.addEventListener('submit', (event) => {
    event.preventDefault();
    const typed = form.querySelector('input')?.value ?? '';
    const button = form.querySelector('button');
    if (button !== null) button.disabled = true;
    void openSealed(jwe, keys, typed).then((opened) => {
      if (button !== null) button.disabled = false;
      if (opened !== null) return reveal(opened, false);
      show('wrong', 'asks');
      const wrong = form.querySelector<HTMLElement>('[data-wrong]');
      if (wrong !== null) wrong.hidden = false;
      return undefined;
    });
  });
}

/** The date of the phone as `YYYY-MM-DD`. */
function today(): string {
  const now = new Date();
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

async function reveal({ payload, keys }: Opened, isKept: boolean): Promise<void> {
  if (payload.withdrawOn !== null && today() >= payload.withdrawOn) {
    await forgetAll();
    return show('withdrawn', 'withdrawn');
  }
  if ('serviceWorker' in navigator && isSecureContext)
    await navigator.serviceWorker
      .register('sw.js', { scope: './', updateViaCache: 'none' })
      .catch(() => null);
  document.open();
  document.write(payload.html);
  document.close();
  document.documentElement.dataset['sealed'] = 'open';
  if (!isKept) offer(keys);
}

/** Asks once, at the end of the page, whether it may be opened here without the link. */
function offer(keys: OpeningKeys): void {
  const box = document.createElement('aside');
  box.dataset['keep'] = 'asked';
  box.setAttribute('aria-label', words.keep);
  const sentence = document.createElement('p');
  sentence.textContent = words.keep;
  const button = (label: string, name: string, work: () => void) => {
    const one = document.createElement('button');
    one.type = 'button';
    one.textContent = label;
    one.dataset['keepAnswer'] = name;
    one.addEventListener('click', work);
    return one;
  };
  box.append(
    sentence,
    button(words.yes, 'yes', () => {
      void keepKeys(keys).then((isKept) => {
        box.dataset['keep'] = isKept ? 'yes' : 'no';
        box.replaceChildren(isKept ? words.kept : '');
      });
    }),
    ' ',
    button(words.no, 'no', () => box.remove()),
  );
  (document.querySelector('main') ?? document.body).append(box);
}

void begin().catch(() => show('wrong', 'wrong'));
