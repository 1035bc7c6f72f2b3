/**
 * Every page of the public folder, served below a path of a site: markup, and of every sixth, accessibility on a telephone
 * and nothing missed; of every one with EVERY_PAGE set. One of each kind is looked at in public.slow.test.ts.
 */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { libraryPages } from '../../../../src/outputs/html/site.ts';
import { assets } from '../assets.ts';
import { launch, pagesAt, unfolded, violations } from '../browser.ts';
import { shipped } from '../libraries.ts';
import { faultsOf } from '../validate.ts';
import { served } from './publicServer.ts';

const files = libraryPages(shipped, assets);
const pages = files
  .filter(({ path }) => path.endsWith('.html'))
  .map((page) => ({ ...page, path: page.path.replace('public/', '') }));

let browser: Browser;
let site: Awaited<ReturnType<typeof served>>;
let narrow: Page;
beforeAll(async () => {
  [browser, site] = await Promise.all([launch(), served(files)]);
  narrow = (await pagesAt(browser, [390])).get(390)!;
});
afterAll(async () => {
  site.server.close();
  await browser.close();
});

const looked = pages.filter((_, at) => process.env['EVERY_PAGE'] !== undefined || at % 6 === 0);

describe.each(pages)('$path', ({ content }) => {
  it('html-validate 10.17 finds nothing', async () => {
    expect(await faultsOf(content)).toEqual([]);
  });
});

describe.each(looked)('$path', ({ path }) => {
  it('axe 4.14 finds nothing at 390 px, and nothing is missed', async () => {
    await unfolded(narrow, site.address + path);
    expect(await violations(narrow)).toEqual([]);
    expect(await narrow.evaluate<number>('document.documentElement.scrollWidth')).toBe(390);
    expect(site.missed).toEqual([]);
  });
});
