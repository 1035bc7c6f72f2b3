/** The sheets under the checkers: accessibility in a real browser, markup; and what the checkers see in spoilt ones. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fileOf, inBothSchemes, launch, NOTHING, pagesAt, unfolded, violations } from './browser.ts';
import { AXE_FAULTS, DARK_FAULTS, VALIDATE_FAULTS } from './faults.ts';
import { sheets } from './sheets.ts';
import { faultsOf } from './validate.ts';

const WIDTHS = [320, 390, 1280];
const leaflet = sheets[0]![1];

let browser: Browser;
let pages: ReadonlyMap<number, Page>;
beforeAll(async () => {
  browser = await launch();
  pages = await pagesAt(browser, WIDTHS);
});
afterAll(() => browser.close());

describe.each(sheets)('%s', (_, markup) => {
  const address = fileOf(markup, 'sheet');

  it.each(WIDTHS)('axe 4.14 finds nothing at %i px, light or dark', async (width) => {
    expect(await inBothSchemes(pages.get(width)!, address)).toEqual(NOTHING);
  });

  it('html-validate 10.17 finds nothing', async () => {
    expect(await faultsOf(markup)).toEqual([]);
  });
});

describe('the checkers still see', () => {
  const rulesOf = (lines: readonly string[]) => lines.map((line) => line.split(/[ :]/)[0]);

  it.each(AXE_FAULTS)('$name', async ({ seen, spoil }) => {
    const spoilt = spoil(leaflet);
    expect(spoilt).not.toBe(leaflet);
    const page = pages.get(390)!;
    await unfolded(page, fileOf(spoilt, 'fault'));
    expect(rulesOf(await violations(page))).toContain(seen);
  });

  it('content that is held back, and do not pass over it', async () => {
    const page = pages.get(390)!;
    await unfolded(page, fileOf(leaflet, 'held-back'));
    await page.addStyleTag({ content: '.later{content-visibility:hidden}' });
    await expect(violations(page)).rejects.toThrow('2 elements are held back');
  });

  it.each(DARK_FAULTS)('$name, in the dark alone', async ({ seen, spoil }) => {
    const { light, dark } = await inBothSchemes(pages.get(390)!, fileOf(spoil(leaflet), 'fault'));
    expect(light).toEqual([]);
    expect(rulesOf(dark)).toEqual([seen]);
  });

  it.each(VALIDATE_FAULTS)('$name', async ({ seen, spoil }) => {
    expect(rulesOf(await faultsOf(spoil(leaflet)))).toContain(seen);
  });
});
