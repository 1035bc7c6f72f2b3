/** The server of the command line: its addresses, who may read, what it builds again. */
import { spawn, type ChildProcess } from 'node:child_process';
import { request } from 'node:http';
import { connect } from 'node:net';
import { existsSync, mkdirSync, readFileSync, renameSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launch } from '../outputs/html/browser.ts';
import { MAIN, smallClinic, type Clinic } from './workbench.ts';

interface Served {
  readonly ok: boolean;
  readonly out: string;
  readonly pages: readonly { readonly alias: string | null; readonly address: string }[];
}

let own: Clinic;
let child: ChildProcess;
let said = '';
let served: Served;
let port: number;
/** The path of the run, and the address that ends with it. */
let way: string;
let at: string;

beforeAll(async () => {
  own = smallClinic();
  child = spawn(process.execPath, [MAIN, 'serve', '--json', '--content', own.content, '--out', own.site]);
  let out = '';
  child.stdout?.on('data', (bytes: Buffer) => (out += bytes.toString()));
  child.stderr?.on('data', (bytes: Buffer) => (said += bytes.toString()));
  await until(() => out.endsWith('}\n'));
  served = JSON.parse(out) as Served;
  const first = new URL(served.pages[0]!.address);
  port = Number(first.port);
  way = first.pathname.replace(/\/public\/$/, '');
  at = `http://127.0.0.1:${port}${way}`;
  mkdirSync(`${own.site}-leak`);
  writeFileSync(join(`${own.site}-leak`, 'page.html'), 'leaked');
  writeFileSync(join(own.top, 'page.html'), 'leaked');
  writeFileSync(join(own.site, 'public/.hidden.html'), 'leaked');
  symlinkSync(`${own.site}-leak`, join(own.site, 'public/link'));
});
afterAll(() => {
  child.kill('SIGKILL');
  own.remove();
});

describe('what it says', () => {
  it('is the address of every page, on this machine', () => {
    expect(way).toMatch(/^\/[0-9a-f]{32}$/);
    expect(served).toEqual({
      ok: true,
      out: own.site,
      pages: [
        { alias: null, address: `${at}/public/` },
        { alias: 'finch', address: `${at}/private/finch/leaflet.html` },
      ],
    });
    for (const { address } of served.pages) expect(said).toContain(`${address}\n`);
  });

  it('gives the desk the key of its door, and no other page; who has none is not let in', async () => {
    const at = served.pages[0]!.address.replace(/public\/$/, '');
    const keyIn = (page: string) => /name="loadleaf-door" content="([0-9a-f]{32})"/.exec(page)?.[1];
    expect(said).toContain(`The desk: ${at}public/desk/\n`);
    const key = keyIn(await (await fetch(`${at}public/desk/`)).text()) ?? '';
    expect(keyIn(await (await fetch(`${at}public/`)).text())).toBeUndefined();
    const door = `${at}.door/consults`;
    expect((await fetch(door)).status).toBe(403);
    expect(
      (await fetch(door, { headers: { 'x-loadleaf-key': key, origin: 'https://elsewhere.example' } })).status,
    ).toBe(403);
    expect((await fetch(door, { headers: { 'x-loadleaf-key': key } })).status).toBe(200);
  });

  it('leads to pages that are there', async () => {
    for (const { address } of served.pages) {
      const response = await fetch(address);
      expect(response.status).toBe(200);
      expect(response.headers.get('content-type')).toBe('text/html; charset=utf-8');
      expect(response.headers.get('cache-control')).toBe('no-store');
    }
    expect((await fetch(`${at}/`)).url).toBe(served.pages[0]!.address);
    const pdf = await fetch(`${at}/private/finch/leaflet.pdf`);
    expect(Buffer.from(await pdf.arrayBuffer())).toEqual(
      readFileSync(join(own.site, 'private/finch/leaflet.pdf')),
    );
  });

  it('shows pages with a script that no file holds', async () => {
    for (const path of ['public/index.html', 'private/finch/leaflet.html']) {
      const shown = await (await fetch(`${at}/${path}`)).text();
      expect(shown).toContain(`<script src="${way}/.live/page.js"`);
      expect(readFileSync(join(own.site, path), 'utf8')).not.toMatch(/\.live|worker-src|SharedWorker/);
    }
    expect((await asked('GET', `${way}/.live/page.js`, '127.0.0.1')).body).toContain('SharedWorker');
    expect((await asked('GET', `${way}/.live/worker.js`, '127.0.0.1')).body).toContain('EventSource');
  });
});

describe('what it refuses', () => {
  it.each([
    // method  path                                    host              status
    ['GET', '/public/', 'example.org', 403],
    ['GET', '/public/', '127.0.0.1.example.org', 403],
    ['GET', '/public/', '', 403],
    ['GET', '/public/', 'localhost', 200],
    ['HEAD', '/public/', '127.0.0.1', 200],
    ['POST', '/public/', '127.0.0.1', 405],
    ['DELETE', '/private/finch/leaflet.html', '127.0.0.1', 405],
    ['GET', '/../page.html', '127.0.0.1', 404],
    ['GET', '/..%2fpage.html', '127.0.0.1', 404],
    ['GET', '/%2e%2e/page.html', '127.0.0.1', 404],
    ['GET', '/%2e%2e%2fsite-leak/page.html', '127.0.0.1', 404],
    ['GET', '/../site-leak/page.html', '127.0.0.1', 404],
    ['GET', '/public/link/page.html', '127.0.0.1', 404],
    ['GET', '/public/.hidden.html', '127.0.0.1', 404],
    ['GET', '/.loadleaf-lock', '127.0.0.1', 404],
    ['GET', '/.live/changes', 'example.org', 403],
    ['HEAD', '/.live/changes', '127.0.0.1', 200],
    ['POST', '/.live/changes', '127.0.0.1', 405],
    ['GET', '/.live/other', '127.0.0.1', 404],
    ['GET', '/private/nobody/leaflet.html', '127.0.0.1', 404],
    ['GET', '/private/', '127.0.0.1', 404],
    ['GET', '/public', '127.0.0.1', 302],
    ['GET', '//example.org/', '127.0.0.1', 302],
    ['GET', '/%', '127.0.0.1', 400],
    ['GET', '/%ff', '127.0.0.1', 400],
    ['GET', '/a%00b', '127.0.0.1', 400],
    ['GET', `/${'a'.repeat(5000)}`, '127.0.0.1', 404],
  ])('%s %s for %j is answered with %d', async (method, path, host, status) => {
    const answer = await asked(method, way + path, host);
    expect(answer.status).toBe(status);
    expect(answer.body).not.toContain('leaked');
    if (method === 'HEAD') expect(answer.body).toBe('');
    // Wherever it sends a reader, that is here.
    if (status === 302) expect(answer.location).toBe(`${way}/public/`);
  });

  it.each([
    ['/'],
    ['/public/'],
    ['/private/finch/leaflet.html'],
    ['/.live/changes'],
    [`/${'0'.repeat(32)}/public/`],
    ['http://['],
    [''],
  ])('%s, whoever does not know the path of this run', async (path) => {
    const answer = await asked('GET', path, '127.0.0.1');
    expect(answer).toEqual({ status: 404, body: 'not there\n', location: undefined });
    expect((await asked('GET', way, '127.0.0.1')).status).toBe(404);
    expect((await asked('GET', way.slice(0, -1) + path, '127.0.0.1')).status).toBe(404);
  });

  it('leaves it standing, even what is no request', async () => {
    const socket = connect(port, '127.0.0.1');
    socket.on('error', () => undefined);
    socket.resume();
    socket.write('\0\0\0 not http\r\n\r\n');
    await new Promise((resolve) => socket.once('close', resolve));
    expect((await asked('GET', `${way}/public/`, '127.0.0.1')).status).toBe(200);
    expect(child.exitCode).toBeNull();
  });
});

describe('an open page', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launch();
    page = await browser.newPage();
  });
  afterAll(() => browser.close());
  const alert = () => page.locator('[role=alert]');
  const angles = () => page.locator('figure.frames').first().textContent();

  it('shows the figure of a pose that was edited, and asks nobody else', async () => {
    const elsewhere: string[] = [];
    const wrong: string[] = [];
    page.on('request', (request) => elsewhere.push(request.url()));
    page.on('pageerror', ({ message }) => wrong.push(message));
    page.on('console', (message) => wrong.push(message.text()));
    await page.goto(`${at}/public/exercises/wall-bridge.html`);
    expect(await angles()).not.toContain('25°');
    const restore = own.edit('exercises/wall-bridge.md', 'hip: 0', 'hip: 25');
    await page.locator('figure.frames', { hasText: '25°' }).waitFor();
    restore();
    await page.locator('figure.frames', { hasText: '25°' }).waitFor({ state: 'detached' });
    expect(elsewhere.filter((url) => !url.startsWith(`${at}/`) && !url.startsWith('data:'))).toEqual([]);
    expect(wrong).toEqual([]);
  });

  it('shows the Problem of a card that was broken, in the words of the terminal, until the next good save', async () => {
    const restore = own.edit('exercises/wall-bridge.md', 'kind: isometric', 'kind: isometrc');
    await alert().waitFor();
    const words =
      /exercises\/wall-bridge\.md:\d+:\d+: error wrong-word kind is isometrc[^]*Fix: write kind: isometric\./;
    expect(await alert().textContent()).toMatch(words);
    await until(() => words.test(said));
    expect(await page.locator('h1').isVisible()).toBe(true);
    restore();
    await alert().waitFor({ state: 'detached' });
  });

  it('of a leaflet that is taken away says so, and comes back with it', async () => {
    await page.goto(`${at}/private/finch/leaflet.html`);
    const restore = own.edit('consults/finch-r1.md', /ageYears: .*/, 'ageYears: 380');
    await alert().waitFor();
    await page.getByText('There is no such page now').waitFor();
    expect(await alert().textContent()).toContain('ageYears is 380');
    restore();
    await page.locator('h1').waitFor();
  });
});

describe('what it builds again', () => {
  const leaflet = () => readFileSync(join(own.site, 'private/finch/leaflet.html'), 'utf8');

  it('is a leaflet whose consult was saved, or a library that was', async () => {
    const before = leaflet();
    own.edit('consults/finch-r1.md', 'usualMorningPain: 2', 'usualMorningPain: 3');
    await until(() => leaflet() !== before);
    const page = leaflet();
    own.edit('exercises/wall-bridge.md', /title: .*/, 'title: Renamed bridge');
    await until(() => leaflet() !== page && leaflet().includes('Renamed bridge'));
  });

  it('is what an editor saves by renaming, every time, and what stands in a new folder', async () => {
    const place = join(own.content, 'exercises/wall-bridge.md');
    for (const title of ['First saved bridge', 'Second saved bridge']) {
      const text = readFileSync(place, 'utf8').replace(/title: .*/, `title: ${title}`);
      writeFileSync(`${place}~`, text);
      renameSync(`${place}~`, place);
      await until(() => leaflet().includes(title));
    }
    mkdirSync(join(own.content, 'advice/more'));
    await setTimeout(300);
    const advice = readFileSync(join(own.content, 'advice/one-thing.md'));
    writeFileSync(join(own.content, 'advice/more/other-thing.md'), advice);
    await until(() => existsSync(join(own.site, 'public/advice/other-thing.html')));
    await until(() => leaflet().includes('advice-other-thing'));
  });

  it('is nothing where the library has an error: that is printed, and the last good site stays', async () => {
    const page = leaflet();
    const restore = own.edit('exercises/wall-bridge.md', 'kind: isometric', 'kind: isometrc');
    await until(() => said.includes('nothing was built'));
    expect(leaflet()).toBe(page);
    expect((await asked('GET', `${way}/private/finch/leaflet.html`, '127.0.0.1')).status).toBe(200);
    restore();
  });

  it('ends with a good exit when it is stopped', async () => {
    const ended = new Promise((resolve) => child.once('exit', resolve));
    child.kill('SIGINT');
    expect(await ended).toBe(0);
  });
});

function asked(
  method: string,
  path: string,
  host: string,
): Promise<{ readonly status: number; readonly body: string; readonly location: string | undefined }> {
  return new Promise((resolve, reject) => {
    const options = { port, host: '127.0.0.1', method, path, headers: { host }, setHost: false };
    request(options, (response) => {
      let body = '';
      response.on('data', (bytes: Buffer) => (body += bytes.toString()));
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, body, location: response.headers.location }),
      );
    })
      .on('error', reject)
      .end();
  });
}

async function until(holds: () => boolean): Promise<void> {
  for (const end = Date.now() + 60_000; !holds(); await setTimeout(50))
    if (Date.now() > end) throw new Error(`waited too long; it said: ${said}`);
}
