/**
 * A sealed page with one byte of it flipped, in the browser: the whole leaflet, or the plain message. Within the sealed text
 * the page's own script is run again and again in one page, each time with another text; a byte of markup, style, policy or
 * script is looked at in a page loaded from it, some at a time.
 */
import type { Page } from 'playwright-core';

export interface SealedSample {
  /** The page as it is served. */
  readonly page: string;
  /** Its script, and the sealed text within it. */
  readonly script: string;
  readonly jwe: string;
  /** The leaflet within, and the fragment that opens it. */
  readonly leaflet: string;
  readonly fragment: string;
}

/** How many bytes came to what; `faults` says of each other byte what was seen. */
export interface Seen {
  readonly open: number;
  readonly message: number;
  readonly faults: readonly string[];
}

/** The least bit of a byte the other way round: what most likely is still text, and so most likely still shown. */
export function flipped(bytes: Buffer, index: number): Buffer {
  const spoilt = Buffer.from(bytes);
  spoilt[index] = (spoilt[index] ?? 0) ^ 1;
  return spoilt;
}

/** The place of the sealed text within the page, in bytes. */
export function placeOf({ page, jwe }: SealedSample): { readonly from: number; readonly to: number } {
  const from = Buffer.byteLength(page.slice(0, page.indexOf(jwe)));
  return { from, to: from + Buffer.byteLength(jwe) };
}

/** Each byte of the sealed text at `indices` of the page, in the page itself, which is at `address` and has not opened. */
export async function textFlipped(
  page: Page,
  address: string,
  sample: SealedSample,
  indices: readonly number[],
): Promise<Seen> {
  await page.goto(`${address}#`);
  // Until its own script has looked for a key that was kept, nothing is said.
  await page.waitForSelector('[data-part="wrong"]');
  const { from } = placeOf(sample);
  await page.evaluate(`(() => {
    const written = [];
    document.open = document.close = () => undefined;
    document.write = (text) => void written.push(text);
    location.hash = ${JSON.stringify(sample.fragment)};
    const root = document.documentElement;
    const place = document.getElementById('sealed-leaflet');
    const sealed = place.textContent;
    const jwe = sealed.trim();
    const start = sealed.indexOf(jwe);
    const run = () => { ${sample.script} };
    const settled = () => new Promise((done) => {
      const look = () => root.dataset.sealed !== 'locked' && (watch.disconnect(), done(root.dataset.sealed));
      const watch = new MutationObserver(look);
      watch.observe(root, { attributes: true });
    });
    const message = document.body.innerText;
    globalThis.openedWith = async (at, leaflet) => {
      written.length = 0;
      root.dataset.sealed = 'locked';
      const changed = String.fromCharCode(jwe.charCodeAt(at) ^ 1);
      place.textContent = at < 0 ? sealed : sealed.slice(0, start + at) + changed + sealed.slice(start + at + 1);
      const state = settled();
      run();
      const came = await state;
      document.querySelectorAll('[data-keep]').forEach((one) => one.remove());
      if (came === 'open') return written.join('') === leaflet ? 'open' : 'part of the leaflet';
      const isMessage = came === 'wrong' && written.length === 0 && document.body.innerText === message;
      return isMessage ? 'message' : came + ': ' + document.body.innerText.slice(0, 200);
    };
    globalThis.openedWithEach = async (all, leaflet) => {
      const seen = [];
      for (const at of all) seen.push(await openedWith(at, leaflet));
      return seen;
    };
  })()`);
  const looked = (all: readonly number[]) =>
    page.evaluate<string[]>(`openedWithEach(${JSON.stringify(all)}, ${JSON.stringify(sample.leaflet)})`);
  // As it was sealed it opens: so what is told of the others is told by a script that can open it.
  const [whole] = await looked([-1]);
  if (whole !== 'open') throw new Error(`as it was sealed it comes to: ${whole}`);
  const seen: string[] = [];
  for (const some of inParts(indices, 1000)) seen.push(...(await looked(some.map((index) => index - from))));
  return counted(indices, seen);
}

/**
 * Each byte at `indices` by a page loaded from it, `atOnce` of them in frames of one page (most of the time is waiting). `address` is of the server that
 * gives the page with the byte flipped that the query tells, as it is for no query.
 */
export async function pageFlipped(
  page: Page,
  address: string,
  sample: SealedSample,
  indices: readonly number[],
  atOnce = 12,
): Promise<Seen> {
  await page.goto(`${address}frames`);
  await page.evaluate(`(() => {
    const calm = (text) => text.replace(/\\s+/g, ' ').trim();
    const here = (frame) => frame.contentDocument;
    const shown = (frame) => [...(here(frame)?.querySelectorAll('p') ?? [])].some((one) => one.getClientRects().length > 0);
    const pause = (ms) => new Promise((done) => setTimeout(done, ms));
    const loaded = async (query, fragment = ${JSON.stringify(sample.fragment)}) => {
      const frame = document.createElement('iframe');
      frame.width = 390;
      frame.height = 800;
      const done = new Promise((loaded) => frame.addEventListener('load', loaded, { once: true }));
      frame.src = ${JSON.stringify(address)} + query + fragment;
      document.body.append(frame);
      await done;
      for (let waited = 0; waited < 5000 && !settled(frame, waited); waited += 5) await pause(5);
      return frame;
    };
    // A page whose script does not run stays as it was written, which it says by no event.
    const settled = (frame, waited) =>
      here(frame) === null || (shown(frame) && (here(frame).documentElement.dataset.sealed !== 'locked' || waited >= 500));
    const textOf = (frame) => {
      const copy = here(frame).documentElement.cloneNode(true);
      copy.querySelectorAll('script, style, [data-keep]').forEach((one) => one.remove());
      return calm(copy.textContent);
    };
    const sentencesOf = (markup) => {
      const page = new DOMParser().parseFromString(markup, 'text/html');
      const all = [...page.querySelectorAll('h1, h2, h3, h4, p, li, td, th, dt, dd, figcaption')];
      return [...new Set(all.filter((one) => one.querySelector('p, li, td, th') === null).map((one) => calm(one.textContent)))];
    };
    let leaflet = [];
    let message = '';
    globalThis.prepared = async (markup) => {
      const whole = await loaded('');
      const opened = textOf(whole);
      const all = sentencesOf(markup).filter((one) => one.length > 0);
      leaflet = all.filter((one) => opened.includes(one));
      whole.remove();
      const plain = await loaded('?locked', '');
      message = calm(here(plain).body.innerText);
      plain.remove();
      return [leaflet.length / all.length, message];
    };
    const partsOf = (text) => leaflet.filter((one) => one.length > 24 && text.includes(one) && !message.includes(one));
    const judged = (frame) => {
      if (here(frame) === null) return 'no page';
      const text = textOf(frame);
      if (leaflet.every((one) => text.includes(one))) return shown(frame) ? 'open' : 'open, and not shown';
      const parts = partsOf(text);
      if (parts.length > 0) return 'part of the leaflet: ' + parts[0];
      const read = calm(here(frame).body?.innerText ?? '');
      return told(read) ? 'message' : 'neither: ' + read.slice(0, 300);
    };
    // A letter of the message itself may be the one that was spoilt: each other word stands.
    const told = (read) => {
      const missing = message.split(' ').filter((word) => !read.includes(word));
      return missing.length <= 2;
    };
    globalThis.loadedWithEach = async (indices, atOnce) => {
      const seen = new Array(indices.length);
      let next = 0;
      const look = async () => {
        for (let mine = next++; mine < indices.length; mine = next++) {
          // What the browser could not load is no page that was seen.
          for (let tried = 0; tried < 5 && (seen[mine] ?? 'no page') === 'no page'; tried += 1) {
            const frame = await loaded('?' + indices[mine]);
            seen[mine] = judged(frame);
            frame.remove();
          }
        }
      };
      await Promise.all(Array.from({ length: atOnce }, look));
      return seen;
    };
  })()`);
  const [share, message] = await page.evaluate<[number, string]>(
    `prepared(${JSON.stringify(sample.leaflet)})`,
  );
  if (share < 0.9 || message === '') throw new Error(`looked for ${share} of the leaflet, and "${message}"`);
  const seen: string[] = [];
  for (const some of inParts(indices, 200))
    seen.push(...(await page.evaluate<string[]>(`loadedWithEach(${JSON.stringify(some)}, ${atOnce})`)));
  return counted(indices, seen);
}

function inParts<T>(all: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(all.length / size) }, (_, at) =>
    all.slice(at * size, (at + 1) * size),
  );
}

function counted(indices: readonly number[], seen: readonly string[]): Seen {
  const of = (state: string) => seen.filter((one) => one === state).length;
  const faults = indices.flatMap((index, at) => {
    const state = seen[at] ?? 'not looked at';
    return state === 'open' || state === 'message' ? [] : [`byte ${index}: ${state}`];
  });
  return { open: of('open'), message: of('message'), faults };
}
