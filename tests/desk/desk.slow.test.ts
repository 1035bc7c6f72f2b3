/** The built desk in Chromium: what it makes is what `build` makes, and nothing is lost, left or let in. */
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launch } from '../outputs/html/browser.ts';
import { builtSite, type Site } from './site.ts';

let site: Site;
let browser: Browser;
beforeAll(async () => {
  [site, browser] = await Promise.all([builtSite(), launch()]);
});
afterAll(async () => {
  await browser.close();
  site.server.close();
});

const DEMO = ['otter', 'heron', 'marten'] as const;
const textOf = (alias: string) => readFileSync(`content/consults/${alias}-r1.md`, 'utf8');
const state = (page: Page) => page.evaluate<string>('document.body.dataset.state');
const becomes = (page: Page, wanted: string) =>
  page.waitForSelector(`body[data-state="${wanted}"]`, { timeout: 30_000 });

async function opened(options: Parameters<Browser['newPage']>[0] = {}): Promise<Page> {
  const page = await browser.newPage(options);
  await page.goto(site.address);
  await becomes(page, 'incomplete');
  return page;
}

async function laid(page: Page, name: string, text: string | Buffer): Promise<void> {
  await page.setInputFiles('[data-open=consult]', {
    name,
    mimeType: 'text/markdown',
    buffer: Buffer.from(text),
  });
}

/** By hand onto the page, not through its picker. */
async function dropped(page: Page, name: string, text: string | Buffer): Promise<void> {
  const base64 = Buffer.from(text).toString('base64');
  await page.evaluate(
    `(() => {
      const bytes = Uint8Array.from(atob('${base64}'), (one) => one.charCodeAt(0));
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([bytes], ${JSON.stringify(name)}));
      dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    })()`,
  );
}

async function made(page: Page, name: string): Promise<Buffer> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.click(`[data-make="${name}"]`)]);
  return readFileSync(await download.path());
}

/** What these requests or names bring of the desk's own files, gzipped; each once, for its name tells a browser that it has it. */
function gzippedBytes(asked: readonly string[]): number {
  const names = new Set(asked.flatMap((url) => /(?:^|\/desk\/)([^/?]+)$/.exec(url)?.[1] ?? []));
  return [...names].reduce(
    (sum, name) => sum + gzipSync(readFileSync(join(site.out, 'public/desk', name)), { level: 9 }).length,
    0,
  );
}

describe('what the desk makes', () => {
  it('is what build makes, byte for byte, the PDF too, and no other address is asked', async () => {
    const page = await browser.newPage();
    const asked: string[] = [];
    const said: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    page.on('console', (message) => said.push(message.text()));
    page.on('pageerror', ({ message }) => said.push(message));
    await page.goto(site.address);
    await becomes(page, 'incomplete');
    const beforePaperBytes = gzippedBytes(asked);
    expect(beforePaperBytes).toBeGreaterThan(200_000);
    expect(beforePaperBytes).toBeLessThan(450_000);
    const isLater = (url: string) => /\/(later|dress|paper|post|sealing)-/.test(url);
    expect(asked.filter(isLater)).toEqual([]);
    for (const alias of DEMO) {
      await laid(page, `${alias}-r1.md`, textOf(alias));
      await page.waitForSelector(`.who:has-text("${alias}")`);
      await becomes(page, 'ready');
      for (const name of ['leaflet.html', 'record.json', 'record.html', 'leaflet.pdf', 'note.txt']) {
        const built = readFileSync(join(site.out, 'private', alias, name));
        expect(built.equals(await made(page, name)), `${alias} ${name}`).toBe(true);
      }
      expect((await made(page, 'consult')).toString()).toBe(textOf(alias));
    }
    // All there is, the post too.
    expect(gzippedBytes(readdirSync(join(site.out, 'public/desk')))).toBeLessThan(700_000);
    const { origin } = new URL(site.address);
    const sent = asked.filter((url) => !url.startsWith('blob:') && !url.startsWith('data:'));
    expect(sent.filter((url) => !url.startsWith(`${origin}/`) || url.includes('?'))).toEqual([]);
    expect(said).toEqual([]);
    await page.close();
  });

  it('has the first name on the leaflet alone', async () => {
    const page = await opened();
    // A named sign, whose table comes when it is first asked for.
    await laid(page, 'heron-r1.md', `${textOf('heron')}\nRuns to the caf&eacute;.\n`);
    await becomes(page, 'ready');
    await page.fill('.firstname input', 'Anouk');
    expect((await made(page, 'leaflet.html')).toString()).toContain('Home exercises for Anouk');
    for (const name of ['record.json', 'record.html', 'note.txt', 'consult'])
      expect((await made(page, name)).toString()).not.toContain('Anouk');
    expect((await made(page, 'record.html')).toString()).toContain('Runs to the café.');
    expect(
      await page.evaluate<string>('JSON.stringify({ ...sessionStorage, ...localStorage })'),
    ).not.toContain('Anouk');
    await page.close();
  });

  it('shows the cells of the leaflet, each with its reason', async () => {
    const page = await opened();
    await laid(page, 'otter-r1.md', textOf('otter'));
    await becomes(page, 'ready');
    const cells = await page.locator('#beside [data-cell]').count();
    const leaflet = readFileSync(join(site.out, 'private/otter/leaflet.html'), 'utf8');
    expect(cells).toBe(leaflet.replace(/<script[^]*?<\/script>/g, '').match(/data-cell="/g)?.length);
    const number = page.locator('#beside [data-cell="sets"] button.number').first();
    await number.focus();
    await page.keyboard.press('Enter');
    expect(await page.textContent('.reason')).toMatch(/Decided by/);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('.reason').count()).toBe(0);
    await page.close();
  });
});

describe('a consult typed by keyboard alone', () => {
  it('is the text that a hand would have written', async () => {
    const page = await opened();
    const type = async (name: string, words: string) => {
      await page.locator(`[name="${name}"]`).first().focus();
      await page.keyboard.insertText(words);
    };
    const press = async (selector: string) => {
      await page.locator(selector).first().focus();
      await page.keyboard.press('Space');
    };
    const choose = async (name: string, value: string) => {
      // A select is walked by its letters; which option stands where, the browser knows.
      await page.locator(`select[name="${name}"]`).selectOption(value);
    };
    await type('alias', 'plover');
    await type('clinician', 'R. Sample');
    for (const [name, day] of [
      ['seenOn', '2026-11-23'],
      ['startOn', '2026-11-24'],
      ['reviewOn', '2026-12-15'],
    ] as const)
      await page.locator(`[name="${name}"]`).fill(day);
    await choose('country', 'GB');
    await type('ageYears', '38');
    await choose('protocol', 'proximal-hamstring');
    await press('[name="side"][value="right"]');
    for (const group of ['nerves', 'illness', 'injury', 'energy', 'medicines', 'straining'])
      await press(`[data-group-no="${group}"]`);
    await press('[name="cannotDo"][value=""]');
    await press('[name="irritability"][value="moderate"]');
    await press('[name="response24h"][value="settled"]');
    await press('[name="usualMorningPain"][value="2"]');
    await press('[data-add="tests"]');
    await choose('tests.0.test', 'single-leg-bridge-raised');
    await press('[name="tests.0.pain"][value="2"]');
    await press('[data-home="nothing"]');
    for (const day of ['mon', 'wed', 'fri']) await press(`[name="days"][value="${day}"]`);
    await type('minutesPerDay', '30');
    await press('[name="running.runs"][value="no"]');
    await press('[name="running.decision"][value="none"]');
    await type('sitting.toleranceMinutes', '30');
    for (const [key, word] of [
      ['sleep', 'good'],
      ['stress', 'low'],
      ['tired', 'no'],
    ])
      await press(`[name="recovery.${key}"][value="${word}"]`);
    await press('[name="stage"][value="auto"]');
    await becomes(page, 'ready');
    const screen = [...(await page.locator('.screenitem input[value=no]').all())];
    expect(screen).toHaveLength(22);
    expect((await made(page, 'consult')).toString()).toBe(readFileSync('tests/desk/plover-r1.md', 'utf8'));
    // And back, step by step, to the empty sheet.
    while (await page.locator('button:text-is("Undo")').isEnabled())
      await page.click('button:text-is("Undo")');
    await expect.poll(() => page.locator('[name="alias"]').inputValue()).toBe('');
    await page.close();
  });
});

describe('the short ways', () => {
  it('write what was tested with a weight today, and three habits of running in one step', async () => {
    const page = await opened();
    const bare = textOf('otter')
      .replace(/testedSets:\n[^]*?(?=kit:)/, '')
      .replace(/  (hills|speed|hillyRoutes): (yes|no)\n/g, '');
    await laid(page, 'otter-r1.md', bare);
    await page.waitForSelector('[data-tried]');
    const offered = await page
      .locator('[data-tried]')
      .evaluateAll((all) => all.map((one) => one.dataset.tried));
    // Tests of today that are exercises with a weight; bridges are done without.
    expect(offered.sort()).toEqual(['hip-hinge', 'prone-curl-hold']);
    await page.click('[data-tried="hip-hinge"]');
    await page.click('[data-habit=flat]');
    const written = (await made(page, 'consult')).toString();
    expect(written).toContain('testedSets:\n  - card: hip-hinge\n');
    for (const key of ['hills', 'speed', 'hillyRoutes']) expect(written).toContain(`  ${key}: no\n`);
    await page.close();
  });
});

describe('what is dropped on the desk', () => {
  let page: Page;
  const faults: string[] = [];
  beforeAll(async () => {
    page = await opened();
    page.on('pageerror', ({ message }) => faults.push(message));
  });
  afterAll(() => page.close());

  it.each([
    [
      'names with markup',
      textOf('heron')
        .replace('painArea: ', 'painArea: "<img src=x onerror=alert(1)>" # ')
        .replace('irritability: ', 'irritability: "<img src=x onerror=alert(1)>" # '),
    ],
    ['ten megabytes', Buffer.alloc(10_000_000, 97)],
    ['another encoding', Buffer.from(`\uFEFF${textOf('heron')}`, 'utf16le')],
    ['keys every object has', '---\n__proto__: {a: 1}\nconstructor: {prototype: {a: 1}}\n---\n'],
    ['no head', 'Hello'],
    ['broken YAML', '---\na: [1\nb: {\n---\n'],
    ['aliases', '---\na: &a [1]\nb: *a\n---\n'],
    ['a thousand lists in each other', `---\nalias: ${'['.repeat(1000)}${']'.repeat(1000)}\n---\n`],
    ['half letters and bytes of nought', '---\nalias: "\\ud800\\0"\npainArea: \u0000\n---\n'],
  ])('%s: a Problem, no element comes of it, and no fault', async (_, text) => {
    await page.click('text=Clear this desk');
    await page.waitForSelector('.said:text-is("The desk is clear.")');
    await dropped(page, '<img src=x onerror=alert(1)>.md', text);
    await page.waitForSelector('.said:not(:text-is("The desk is clear."))');
    await page.waitForSelector('body:not([data-state="loading"])');
    const wasTaken = / lies on the desk\.$/.test((await page.textContent('.said')) ?? '');
    const problems = await page.locator('[data-problem]').count();
    expect(wasTaken ? problems : 1).toBeGreaterThan(0);
    expect(await page.locator('img[src="x"], [onerror]').count()).toBe(0);
    expect(await page.evaluate('({}).a')).toBeUndefined();
    expect(await page.locator('#beside').count()).toBe(1);
    expect(faults).toEqual([]);
  });

  it('a refusal leads to its field', async () => {
    await laid(page, 'heron-r1.md', textOf('heron').replace('saddleNumbness: no', 'saddleNumbness: yes'));
    await becomes(page, 'refused');
    const refusal = page.locator('[data-problem="screen.saddleNumbness"]').first();
    expect(await refusal.textContent()).toMatch(/emergency assessment now/);
    await refusal.click();
    expect(await page.evaluate('document.activeElement.name')).toBe('screen.saddleNumbness');
  });
});

describe('the draft', () => {
  it('is there again after the page was killed, and gone once the desk is cleared', async () => {
    const page = await opened();
    await page.locator('[name="alias"]').focus();
    await page.keyboard.type('plover');
    // At the last letter, and nothing of the page runs on: no event, no farewell.
    await page.goto('about:blank');
    await page.goBack();
    await page.waitForSelector('[name="alias"]');
    expect(await page.locator('[name="alias"]').inputValue()).toBe('plover');
    await page.click('text=Clear this desk');
    expect(await page.evaluate('sessionStorage.length + localStorage.length')).toBe(0);
    await page.close();
  });
});

describe('files of another folder', () => {
  it('of a second revision are asked for by name, and then it is what build makes', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'desk-'));
    for (const name of ['merlin-r1.md', 'merlin-r2.md'])
      writeFileSync(join(folder, name), readFileSync(`tests/cases/second-visit/in/${name}`));
    const page = await opened();
    await page.setInputFiles('[data-open=consult]', join(folder, 'merlin-r2.md'));
    expect(await page.textContent('.earlier')).toContain('merlin-r1.md');
    writeFileSync(join(folder, 'long-r1.md'), 'a'.repeat(256 * 1024 + 1));
    await page.setInputFiles('[data-open=earlier]', join(folder, 'long-r1.md'));
    await page.waitForSelector('.said:has-text("long-r1.md")');
    expect(await page.textContent('.earlier')).toContain('merlin-r1.md');
    await page.setInputFiles('[data-open=earlier]', join(folder, 'merlin-r1.md'));
    await becomes(page, 'ready');
    const note = readFileSync('tests/cases/second-visit/out/note.txt', 'utf8').trim();
    expect((await made(page, 'note.txt')).toString()).toContain(note.slice(0, note.lastIndexOf('\n')));
    expect(await state(page)).toBe('ready');
    await page.close();
  });
});
