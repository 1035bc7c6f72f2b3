/** The desk after the consult, in Chromium: the post, the log, the review, the folder; one session for all of it. */
import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import type { Browser, Download, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { secretText } from '../../src/outputs/sealed/secret.ts';
import { launch } from '../outputs/html/browser.ts';
import { alone } from '../shell/reviewBench.ts';
import { builtSite, type Site } from './site.ts';

const SITE = 'https://clinic.example/';
const secret = join(mkdtempSync(join(tmpdir(), 'desk-secret-')), 'secret');
writeFileSync(secret, secretText(new Uint8Array(32).fill(7)), { mode: 0o600 });

let site: Site;
let browser: Browser;
let page: Page;
const said: string[] = [];
const asked: string[] = [];
beforeAll(async () => {
  [site, browser] = await Promise.all([builtSite('--sealed', '--site', SITE, '--secret', secret), launch()]);
  page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  page.setDefaultTimeout(10_000);
  page.on('request', (request) => asked.push(request.url()));
  page.on('console', (message) => said.push(message.text()));
  page.on('pageerror', ({ message }) => said.push(message));
  await page.goto(site.address);
});
afterAll(async () => {
  await browser.close();
  site.server.close();
});

const built = (alias: string, name: string) => readFileSync(join(site.out, 'private', alias, name));

async function laid(alias: string): Promise<void> {
  await page.setInputFiles('[data-open=consult]', `content/consults/${alias}-r1.md`);
  await page.waitForSelector(`.who:has-text("${alias}")`);
  await page.waitForSelector('body[data-state="ready"]');
}

async function downloaded(selector: string): Promise<Download> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.click(selector)]);
  return download;
}

const made = async (name: string) => downloaded(`[data-make="${name}"]`);
const bytesOf = async (download: Download) => readFileSync(await download.path());

describe('the post', () => {
  it('is what build makes, byte for byte, with the secret in memory alone', async () => {
    await laid('otter');
    await page.click('details.sealing > summary');
    await page.click('[data-make=sealed]');
    await page.waitForSelector('.said:has-text("Choose the file of the clinic secret")');
    await page.setInputFiles('[data-open=secret]', 'package.json');
    await page.waitForSelector('.said:has-text("no secret of ours")');
    await page.setInputFiles('[data-open=secret]', secret);
    await page.waitForSelector('.said:has-text("in memory")');
    await page.fill('[data-site]', SITE);
    for (const [name, file] of [
      ['message.eml', 'message-otter-r1.eml'],
      ['message.txt', 'message-otter-r1.txt'],
      ['sessions.ics', 'sessions-otter-r1.ics'],
      ['note.txt', 'note-otter-r1.txt'],
    ] as const) {
      const download = await made(name);
      expect(download.suggestedFilename()).toBe(file);
      expect((await bytesOf(download)).equals(built('otter', name)), name).toBe(true);
    }
    const archive = await made('sealed');
    expect(archive.suggestedFilename()).toBe('sealed-otter-r1.zip');
    for (const [path, bytes] of Object.entries(unzipSync(await bytesOf(archive))))
      expect(readFileSync(join(site.out, 'public', path)).equals(bytes), path).toBe(true);
    const link = built('otter', 'link.txt').toString().trim();
    expect(await page.textContent('.sealedlink .address')).toBe(link);
    const kept = await page.evaluate<string>('JSON.stringify({ ...sessionStorage, ...localStorage })');
    const key = link.slice(link.indexOf('#') + 1);
    const written = readFileSync(secret, 'utf8').split(' ')[1]?.trim() ?? '';
    for (const hidden of [key, written])
      for (const place of [kept, ...asked]) expect(place).not.toContain(hidden);
    expect(readdirSync(join(site.out, 'public', 'for'))).toHaveLength(3);
  });

  it('has the first name in the message, and in no file name', async () => {
    await page.fill('.firstname input[type=text]', 'Anouk');
    const message = await made('message.txt');
    expect((await bytesOf(message)).toString()).toMatch(/^Hello Anouk,/);
    const pdf = await made('leaflet.pdf');
    expect(pdf.suggestedFilename()).toBe('home-exercises-otter-r1.pdf');
    expect((await bytesOf(pdf)).equals(built('otter', 'leaflet.pdf'))).toBe(false);
    expect(await page.evaluate<string>('JSON.stringify({ ...sessionStorage })')).not.toContain('Anouk');
    await page.fill('.firstname input[type=text]', '');
  });
});

describe('the log and its review', () => {
  const LOG = readFileSync('tests/reviews/moves-on/in/otter-r1.log.csv', 'utf8');
  const command = alone();

  it('typed by keyboard is the file that a hand would have written', async () => {
    await laid('heron');
    await page.click('details.log > summary');
    const { keyboard } = page;
    const tabs = async (times: number) => {
      for (let time = 0; time < times; time += 1) await keyboard.press('Tab');
    };
    await page.focus('[name="log.0.date"]');
    await keyboard.type('2026-12-01');
    await tabs(2);
    await keyboard.type('mo');
    await tabs(10);
    await keyboard.type('2');
    // Down in the same column, then back to the first with the date of the line above.
    await keyboard.press('Enter');
    await keyboard.type('12');
    await page.waitForSelector('[data-problem="log.1.morning"]');
    await keyboard.press('Control+A');
    await keyboard.type('3');
    for (let column = 12; column > 0; column -= 1) await keyboard.press('ArrowLeft');
    await keyboard.type('2026-12-02');
    await tabs(2);
    await keyboard.press('Control+D');
    await expect.poll(() => page.locator('[data-problem^="log."]').count()).toBe(0);
    const file = await downloaded('[data-make="log"]');
    expect(file.suggestedFilename()).toBe('heron-r1.log.csv');
    const rows = ['01', '02'].map((day, at) => `2026-12-${day},1,morning,,,0,,,,,,,${at + 2},,,`);
    expect((await bytesOf(file)).toString()).toBe(`${LOG.split(/\r?\n/)[0]}\r\n${rows.join('\r\n')}\r\n`);
  });

  it('from the leaflet is pasted, reviewed, and writes what the command writes', async () => {
    await laid('otter');
    const shared = `loadleaf-log 1 otter r1\n${LOG}`;
    await page.evaluate(`{
      const clipboardData = new DataTransfer();
      clipboardData.setData('text/plain', ${JSON.stringify(shared)});
      const paste = new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true });
      document.querySelector('[name="log.0.date"]').dispatchEvent(paste);
    }`);
    await page.fill('#review-on', '2026-12-15');
    await page.waitForSelector('#review[data-decision="moveOn"]');
    const given = command.consult('otter-r1.log.csv');
    writeFileSync(given, await bytesOf(await downloaded('[data-make="log"]')));
    const { code } = command.run('review', 'otter', '--write', '--on', '2026-12-15', '--json');
    expect(code).toBe(0);
    await page.click('[data-next-revision]');
    const draft = await downloaded('[data-make="consult"]');
    expect(draft.suggestedFilename()).toBe('otter-r2.md');
    const wanted = readFileSync(command.consult('otter-r2.md'), 'utf8');
    // Of the editor's schema each names the place that it knows of.
    const plain = (text: string) => text.replace(/\$schema=.*/, '');
    expect(plain((await bytesOf(draft)).toString())).toBe(plain(wanted));
    // What the draft leaves open, in the order of the consult; each leads to its field.
    await page.waitForSelector('body[data-state="incomplete"]');
    expect(await page.locator('.refusals button').allTextContents()).toEqual([
      'Screen',
      'Irritability',
      'By the next day',
      'Usual morning pain',
      'Test',
      'Test 1: Pain during it',
    ]);
    await page.click('[data-problem="screen"]');
    expect(await page.evaluate('document.activeElement.name')).toBe('screen.saddleNumbness');
    await page.click('[data-problem="tests.0.pain"]');
    expect(await page.evaluate('document.activeElement.name')).toBe('tests.0.pain');
  });

  it('is not written over by another consult before it is saved', async () => {
    const unsaved = '.said:has-text("otter-r2.md or its log is not saved yet")';
    await page.setInputFiles('[data-open=consult]', 'content/consults/heron-r1.md');
    await page.waitForSelector(unsaved);
    expect(await page.inputValue('[name=alias]')).toBe('otter');
  });
});

describe("a folder of the person's choice", () => {
  const OTTER = readFileSync('content/consults/otter-r1.md', 'utf8');
  const written = (name: string, text: string) =>
    page.evaluate(`(async () => {
      const place = await navigator.storage.getDirectory();
      const file = await (await place.getFileHandle('${name}', { create: true })).createWritable();
      await file.write(${JSON.stringify(text)});
      await file.close();
    })()`);
  const read = (name: string) =>
    page.evaluate<string>(`(async () => {
      const place = await navigator.storage.getDirectory();
      return (await (await place.getFileHandle('${name}')).getFile()).text();
    })()`);

  it('shows its persons as lines, and is saved to, never over what another hand wrote', async () => {
    await written('otter-r1.md', OTTER);
    await written('otter-r1.log.csv', readFileSync('tests/reviews/moves-on/in/otter-r1.log.csv', 'utf8'));
    await written('heron-r1.md', readFileSync('content/consults/heron-r1.md', 'utf8'));
    // A folder of the browser's own stands for one of the disk, which only a hand can choose.
    await page.evaluate('showDirectoryPicker = () => navigator.storage.getDirectory()');
    await page.click('[data-open-folder]');
    await page.waitForSelector('[data-person=otter]:has-text("stage 2, step 1, review 2026-12-15")');
    expect(await page.textContent('[data-person=otter]')).toMatch(/, last log 2026-12-14$/);
    await page.waitForSelector('[data-person=heron]:has-text("no log")');
    // The draft of the next revision lies there still.
    await page.click('[data-person=otter]');
    await page.waitForSelector('.said:has-text("otter-r2.md or its log is not saved yet")');
    await page.click('text=Clear this desk');
    await page.click('[data-person=otter]');
    await page.waitForSelector('.who:has-text("otter")');
    await page.fill('[name=minutesPerDay]', '30');
    await page.click('[data-save]');
    await page.waitForSelector('.said:has-text("otter-r1.md is saved")');
    expect(await read('otter-r1.md')).toBe(OTTER.replace(/minutesPerDay: .*/, 'minutesPerDay: 30'));
    await written('otter-r1.md', OTTER);
    await page.fill('[name=minutesPerDay]', '35');
    await page.click('[data-save]');
    await page.waitForSelector('.clash:has-text("minutesPerDay: 35")');
    expect(await read('otter-r1.md')).toBe(OTTER);
    await page.click('.clash button:last-child');
    await page.click('text=Clear this desk');
  });

  const disk = mkdtempSync(join(tmpdir(), 'desk-folder-'));
  mkdirSync(join(disk, 'consults'));
  for (const name of ['heron-r1.md', 'marten-r1.md'])
    copyFileSync(`content/consults/${name}`, join(disk, 'consults', name));

  it('is read where the browser gives its files alone', async () => {
    await page.evaluate('showDirectoryPicker = undefined');
    await page.fill('[name=alias]', 'otter');
    await page.click('text=Clear this desk');
    await page.setInputFiles('[data-open=folder]', disk);
    await page.waitForSelector('[data-person=marten]:has-text("stage 3, step 1")');
    expect(await page.locator('[data-person=otter]').count()).toBe(0);
    await page.click('[data-person=heron]');
    await page.waitForSelector('.who:has-text("heron")');
  });

  it.each([
    ['to be written to', ''],
    ['as its files alone', 'delete DataTransferItem.prototype.getAsFileSystemHandle'],
  ])('is read when it is dropped, %s', async (_, before) => {
    await page.evaluate(before);
    writeFileSync(join(disk, 'consults', 'otter-r1.md'), OTTER);
    if (before !== '') rmSync(join(disk, 'consults', 'marten-r1.md'));
    const session = await page.context().newCDPSession(page);
    const data = { items: [], files: [disk], dragOperationsMask: 1 };
    for (const type of ['dragEnter', 'dragOver', 'drop'] as const)
      await session.send('Input.dispatchDragEvent', { type, x: 200, y: 200, data });
    await session.detach();
    await page.waitForSelector('[data-person=otter]:has-text("stage 2, step 1")');
    await expect.poll(() => page.locator('[data-person=marten]').count()).toBe(before === '' ? 1 : 0);
  });
});

it('nothing was said on the console, and nothing asked of anybody else', () => {
  const { origin } = new URL(site.address);
  const sent = asked.filter((url) => !url.startsWith('blob:') && !url.startsWith('data:'));
  expect(sent.filter((url) => !url.startsWith(`${origin}/`) || url.includes('?'))).toEqual([]);
  expect(said).toEqual([]);
});
