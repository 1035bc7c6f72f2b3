/** The sealed page in a browser: the whole leaflet or the plain message, nothing to the host, and what stays on the phone. */
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { bundledScript, bundledSheet } from '../../../scripts/bundle.mjs';
import { sealedWords } from '../../../src/messages/en/patient/sealed.ts';
import { hashed } from '../../../src/outputs/html/assets.ts';
import { leafletHtml } from '../../../src/outputs/html/leaflet.ts';
import { policyOf } from '../../../src/outputs/html/sealed/policy.ts';
import { sealedPage, withdrawnPage } from '../../../src/outputs/html/sealed/sealedPage.ts';
import { fragmentOf, sealingKeys } from '../../../src/outputs/sealed/keys.ts';
import { seal } from '../../../src/outputs/sealed/seal.ts';
import { assets } from './assets.ts';
import { launch, violations } from './browser.ts';
import { flipped, pageFlipped, placeOf, textFlipped, type SealedSample, type Seen } from './flippedBytes.ts';
import { programmes } from './programmes.ts';
import { faultsOf } from './validate.ts';

const [, marten] = programmes[1]!;
const html = leafletHtml(marten, assets);
const own = {
  style: hashed(bundledSheet('sealed')),
  script: hashed(bundledScript('sealed')),
  withdrawn: hashed(bundledScript('withdrawn')),
};
const said = sealedWords(marten.clinic);
const keys = await sealingKeys(new Uint8Array(32).fill(7), 'marten');
const KEY = fragmentOf(keys);
const SENTENCE = marten.nextSession.heading;

async function pageWith(withdrawOn: string | null = null, hasWords = false): Promise<string> {
  const jwe = await seal({ loadleaf: 1, revision: 1, withdrawOn, html }, keys, hasWords);
  return sealedPage(jwe, said, policyOf(html), own);
}

const plain = await pageWith();
const SAMPLE: SealedSample = {
  page: plain,
  script: own.script.text,
  jwe: await seal({ loadleaf: 1, revision: 1, withdrawOn: null, html }, keys, false),
  leaflet: html,
  fragment: `#${KEY}`,
};
const withdrawn = withdrawnPage(said, own);

let served: { page: string; worker: string };
let asked: string[] = [];
let server: Server;
let browser: Browser;

async function serve(port = 0): Promise<void> {
  server = createServer(({ url = '', headers }, answer) => {
    asked.push(`${url} ${JSON.stringify(headers)}`);
    const isWorker = url.endsWith('sw.js');
    const { pathname, search } = new URL(url, 'http://127.0.0.1');
    const isPage = pathname === '/for/abc/';
    // The query may tell a byte to flip.
    const page = /^\?\d+$/.test(search)
      ? flipped(Buffer.from(served.page), Number(search.slice(1)))
      : served.page;
    answer.writeHead(isPage || isWorker || pathname.endsWith('/frames') ? 200 : 404, {
      'content-type': isWorker ? 'text/javascript' : 'text/html; charset=utf-8',
    });
    answer.end(isPage ? page : isWorker ? served.worker : '');
  });
  await new Promise<void>((ready) => server.listen(port, '127.0.0.1', ready));
  at = (server.address() as AddressInfo).port;
}

let at = 0;
const address = () => `http://127.0.0.1:${at}/for/abc/`;
const close = () =>
  new Promise((done) => {
    server.closeAllConnections();
    server.close(done);
  });

beforeAll(async () => {
  browser = await launch();
  await serve();
});
afterAll(async () => {
  await browser.close();
  await close();
});
beforeEach(() => {
  served = { page: plain, worker: bundledScript('sealedWorker') };
  asked = [];
});

/** The state the page comes to, and what is read on it. */
async function come(page: Page, hash: string): Promise<{ state: string; text: string }> {
  await page.goto('about:blank');
  await page.goto(`${address()}${hash}`);
  return settled(page);
}

async function settled(page: Page): Promise<{ state: string; text: string }> {
  await page
    .locator('p:visible')
    .first()
    .waitFor({ timeout: 5000 })
    .catch(() => null);
  return page.evaluate(
    "({ state: document.documentElement.dataset.sealed ?? '', text: document.body.innerText })",
  );
}

async function within<T>(
  work: (page: Page, context: BrowserContext) => Promise<T>,
  options = {},
): Promise<T> {
  const context = await browser.newContext({ viewport: { width: 390, height: 800 }, ...options });
  try {
    return await work(await context.newPage(), context);
  } finally {
    await context.close();
  }
}

describe('with the key in the link', () => {
  it('the whole leaflet is there, with its scripts, and no host is told the key', () =>
    within(async (page) => {
      const faults: string[] = [];
      page.on('pageerror', ({ message }) => faults.push(message));
      page.on('console', (message) => faults.push(message.text()));
      const { state, text } = await come(page, `#${KEY}`);
      expect(state).toBe('open');
      expect(text).toContain(SENTENCE);
      expect(text).toContain(marten.getHelp.heading);
      expect(await page.evaluate("document.querySelector('[data-tools]').hidden")).toBe(false);
      await expect.poll(() => asked.filter((one) => one.startsWith('/for/abc/sw.js')).length).toBe(1);
      expect(asked.join()).not.toContain(KEY);
      expect(asked.every((one) => one.startsWith('/for/abc/'))).toBe(true);
      expect(faults).toEqual([]);
    }));

  it('is small, and the plain message is there without a script', () =>
    within(
      async (page) => {
        expect(Buffer.byteLength(plain)).toBeLessThan(140_000);
        await page.goto(`${address()}#${KEY}`);
        expect(await page.locator('[data-part="wrong"]').innerText()).toContain(said.wrong[0]);
      },
      { javaScriptEnabled: false },
    ));
});

/** `npm run every-byte`: one byte of so many; null for the sample of every day. */
const EVERY = process.env['EVERY_BYTE'] === undefined ? null : Number(process.env['EVERY_BYTE']);

const stepped = (from: number, to: number, step: number) =>
  Array.from({ length: Math.ceil((to - from) / step) }, (_, at) => Math.floor(from + at * step));

/** Bytes of the page by how they are looked at: in the sealed text each is like the next, around it none is. */
function looked() {
  const length = Buffer.byteLength(plain);
  const { from, to } = placeOf(SAMPLE);
  const script = length - Buffer.byteLength(own.script.text);
  return EVERY === null
    ? {
        text: stepped(from, to, (to - from) / 200),
        page: [
          ...stepped(0, from, from / 24),
          // Where an end that is spoilt would swallow the message.
          ...stepped(plain.indexOf('</style>', plain.indexOf('<style>')), plain.indexOf('<main>'), 5),
          ...stepped(plain.indexOf('</title>'), plain.indexOf('<style>'), 5),
          ...stepped(to, script, (script - to) / 4),
          ...stepped(script, length, (length - script) / 8),
        ],
      }
    : {
        text: stepped(from, to, EVERY),
        page: [...stepped(0, from, EVERY), ...stepped(to, length, EVERY)],
      };
}

describe('otherwise the plain message, and nothing of the leaflet', () => {
  it.each([
    ['no key', '', 'locked'],
    ['a wrong key', `#${'A'.repeat(43)}`, 'wrong'],
    ['a cut key', `#${KEY.slice(0, 40)}`, 'wrong'],
  ])('%s', (_, hash, wanted) =>
    within(async (page) => {
      const { state, text } = await come(page, hash);
      expect(state).toBe(wanted);
      expect(text).toContain(said.wrong[0]);
      expect(text).not.toContain(SENTENCE);
    }),
  );

  it('a byte of the sealed text flipped: the whole text or the message', () =>
    within(
      async (page) => {
        const { text } = looked();
        const seen = await textFlipped(page, address(), SAMPLE, text);
        tell('in the sealed text', text, seen);
        expect(seen.faults).toEqual([]);
        expect(seen.open + seen.message).toBe(text.length);
      },
      { serviceWorkers: 'block' },
    ));

  it('a byte of the page around it flipped: the whole text or the message', () =>
    within(
      async (page) => {
        const { page: around } = looked();
        const seen = await pageFlipped(page, address(), SAMPLE, around);
        tell('around it', around, seen);
        expect(seen.faults).toEqual([]);
        expect(Math.min(seen.open, seen.message)).toBeGreaterThan(0);
      },
      { serviceWorkers: 'block' },
    ));
});

/** The whole search says what it saw. */
function tell(where: string, { length }: readonly number[], { open, message, faults }: Seen): void {
  const told = `${length} bytes ${where}: ${open} the whole leaflet, ${message} the message, ${faults.length} else`;
  if (EVERY !== null) process.stdout.write(`${[told, ...faults].join('\n')}\n`);
}

describe('with words', () => {
  it('asks for them, and opens with the right ones alone', () =>
    within(async (page) => {
      served = { ...served, page: await pageWith(null, true) };
      expect((await come(page, `#${KEY}`)).text).toContain(said.asks.label);
      await page.fill('input', 'abacus abdomen abide ability ablaze');
      await page.click('button');
      await page.waitForSelector('html[data-sealed="wrong"]');
      expect(await page.innerText('body')).toContain(said.asks.wrong);
      await page.fill('input', keys.words.toUpperCase());
      await page.click('button');
      await page.waitForSelector('html[data-sealed="open"]');
      expect(await page.innerText('body')).toContain(SENTENCE);
    }));
});

describe('what stays on the phone', () => {
  it('if the person agrees: opened a second time without link and network, by a key nobody can read out; gone when withdrawn', () =>
    within(async (page) => {
      await come(page, `#${KEY}`);
      await page.click('[data-keep-answer="yes"]');
      await page.waitForSelector('[data-keep="yes"]');
      expect(await page.evaluate(READ_KEPT)).toEqual({ outer: false, type: 'secret' });
      await page.evaluate('navigator.serviceWorker.ready.then(() => true)');
      await close();
      const offline = await come(page, '');
      expect(offline.state).toBe('open');
      expect(offline.text).toContain(SENTENCE);
      // It is not asked again.
      expect(await page.locator('[data-keep]').count()).toBe(0);
      await serve(at);
      served = { page: withdrawn, worker: bundledScript('withdrawnWorker') };
      const gone = await come(page, '');
      expect(gone.state).toBe('withdrawn');
      expect(gone.text).toContain(said.withdrawn[0]);
      await expect
        .poll(() =>
          page.evaluate(
            '(async () => [(await caches.keys()).length, (await indexedDB.databases()).length, (await navigator.serviceWorker.getRegistrations()).length])()',
          ),
        )
        .toEqual([0, 0, 0]);
    }));

  it('nothing that opens it, if the person says nothing', () =>
    within(async (page) => {
      await come(page, `#${KEY}`);
      expect((await come(page, '')).state).toBe('locked');
    }));

  it('the day of the phone counts too', () =>
    within(async (page) => {
      served = { ...served, page: await pageWith('2020-01-01') };
      const { state, text } = await come(page, `#${KEY}`);
      expect(state).toBe('withdrawn');
      expect(text).toContain(said.withdrawn[0]);
      expect(text).not.toContain(SENTENCE);
      served = { ...served, page: await pageWith('2199-01-01') };
      expect((await come(page, `#${KEY}`)).state).toBe('open');
    }));
});

/** Of the kept key: whether it may be read out. */
const READ_KEPT = `new Promise((done, failed) => {
  const asked = indexedDB.open('loadleaf /for/abc/');
  asked.onerror = failed;
  asked.onsuccess = () => {
    const got = asked.result.transaction('keys').objectStore('keys').get('opening');
    got.onsuccess = () => {
      asked.result.close();
      done({ outer: got.result.outer.extractable, type: got.result.outer.type });
    };
  };
})`;

describe('for everybody', () => {
  it.each([
    ['locked', () => plain],
    ['withdrawn', () => withdrawn],
  ])('axe and html-validate find nothing in the page that is %s', async (_, markup) => {
    served = { ...served, page: markup() };
    const found = await within(
      async (page) => {
        await come(page, '');
        return [...(await violations(page)), ...(await violations(page, 'colour'))];
      },
      { bypassCSP: true },
    );
    expect(found).toEqual([]);
    expect(await faultsOf(markup())).toEqual([]);
  });
});
