/** The desk to look at and to press: one page through all that it can show, at three widths, light and dark. */
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launch, violations } from '../outputs/html/browser.ts';
import { faultsOf } from '../outputs/html/validate.ts';
import { builtSite, type Site } from './site.ts';

let site: Site;
let browser: Browser;
let page: Page;
beforeAll(async () => {
  [site, browser] = await Promise.all([builtSite(), launch()]);
  page = await browser.newPage({ bypassCSP: true, reducedMotion: 'reduce' });
  await page.goto(site.address);
});
afterAll(async () => {
  await browser.close();
  site.server.close();
});

const OTTER = readFileSync('content/consults/otter-r1.md');

async function laidOut(): Promise<void> {
  if ((await page.getAttribute('body', 'data-state')) === 'ready') return;
  const file = { name: 'otter-r1.md', mimeType: 'text/markdown', buffer: OTTER };
  await page.setInputFiles('[data-open=consult]', file);
  await page.waitForSelector('body[data-state="ready"]');
}

/** What the desk can show; each leaves the page to the next. */
const STATES: Readonly<Record<string, () => Promise<unknown>>> = {
  empty: () => page.waitForSelector('body[data-state="incomplete"]'),
  'log and review': async () => {
    await laidOut();
    await page.setInputFiles('[data-open=log]', 'tests/reviews/moves-on/in/otter-r1.log.csv');
    await page.fill('#review-on', '2026-12-15');
    await page.waitForSelector('#review[data-decision="moveOn"]');
  },
  'reasons open': async () => {
    await laidOut();
    await page.evaluate("document.querySelectorAll('#beside details').forEach((one) => (one.open = true))");
    await page.locator('.slots button').first().click();
    await page.locator('#beside button.number').first().click();
    await page.waitForSelector('.reason');
  },
  refused: async () => {
    await page.locator('[name="screen.footDrop"][value="yes"]').check({ force: true });
    await page.waitForSelector('body[data-state="refused"]');
  },
};

const WIDTHS = [320, 768, 1280];

/** Where each is looked at by all rules of axe, which takes a second or two (EVERY_WIDTH=1: at each); what is ready is part of its reasons open. */
const AXE_AT: Readonly<Record<string, number>> = {
  empty: 1280,
  'log and review': 320,
  'reasons open': 320,
  refused: 768,
};
const isEveryWidth = process.env['EVERY_WIDTH'] === '1';

/** Whole at each width: nothing to be pushed aside, nothing cut off. A line of text that is typed moves in its own field. */
const WIDER = `[
  ...(document.documentElement.scrollWidth > innerWidth ? ['the page'] : []),
  ...[...document.querySelectorAll('#desk button, #desk label, #desk legend, #desk select')]
    .filter((one) => one.scrollWidth > one.clientWidth + 1 && one.clientWidth > 0 && getComputedStyle(one).overflowX !== 'visible')
    .map((one) => one.outerHTML.slice(0, 120)),
]`;

/** Less than 44 px high or wide [what a thumb needs, WCAG 2.2 criterion 2.5.5], but for numbers within a sentence. */
const SMALL = `[...document.querySelectorAll('#desk :is(button:not(.number), select, summary, .press, textarea, input:not([type=radio], [type=checkbox]))')]
  .filter((one) => one.checkVisibility() && !one.closest('.paper, [hidden]'))
  .map((one) => [one, one.getBoundingClientRect()])
  .filter(([, { width, height }]) => width > 0 && (height < 43.9 || width < 43.9))
  .map(([one, { width, height }]) => Math.round(width) + ' by ' + Math.round(height) + ': ' + one.outerHTML.slice(0, 120))`;

// How a browser writes down what it holds is its own. Checkboxes of one name are one list. Nothing is submitted.
const NOT_OURS = /^(void-style|attribute-(boolean|empty)-style|form-dup-name|wcag\/h32|no-inline-style)/;

it('is HTML, as it is laid out and as the script has filled it', async () => {
  const drawn = await page.evaluate<string>("'<!doctype html>' + document.documentElement.outerHTML");
  expect((await faultsOf(drawn)).filter((fault) => !NOT_OURS.test(fault))).toEqual([]);
  expect(await faultsOf(readFileSync(`${site.out}/public/desk/index.html`, 'utf8'))).toEqual([]);
});

describe.each(Object.entries(STATES))('%s', (name, show) => {
  it('breaks no rule of axe, light and dark, and goes on the page at every width, with targets of 44 px', async () => {
    await page.setViewportSize({ width: 1280, height: 900 });
    await show();
    for (const width of WIDTHS) {
      await page.setViewportSize({ width, height: 900 });
      expect(await page.evaluate(WIDER), `${width} px`).toEqual([]);
      expect(await page.evaluate(SMALL), `${width} px`).toEqual([]);
      if (isEveryWidth || width === AXE_AT[name]) {
        expect(await violations(page)).toEqual([]);
        await page.emulateMedia({ colorScheme: 'dark' });
        expect(await violations(page, 'colour')).toEqual([]);
        await page.emulateMedia({ colorScheme: 'light' });
      }
    }
  });

  it('stays whole with letters of twice the size, and moves nothing', async () => {
    await page.setViewportSize({ width: 768, height: 900 });
    await page.evaluate("document.documentElement.style.fontSize = '200%'");
    const wider = await page.evaluate(WIDER);
    await page.evaluate("document.documentElement.style.fontSize = ''");
    expect(wider).toEqual([]);
    expect(await page.evaluate('document.getAnimations().length')).toBe(0);
  });
});

it('opened straight from a disk it says what to do', async () => {
  const own = await browser.newPage();
  await own.goto(`file://${site.out}/public/desk/index.html`);
  await own.waitForSelector('body[data-state="refused"]');
  expect(await own.textContent('#desk')).toMatch(/loadleaf serve.*HTTPS/);
  await own.close();
});
