/** The sheets under the checkers: accessibility in a real browser, markup; and what the checkers see in spoilt ones. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  fileOf,
  inBothSchemes,
  launch,
  NOTHING,
  pagesAt,
  ruled,
  sniffed,
  unfolded,
  violations,
  visit,
} from './browser.ts';
import { printed, seen, smallestLabelPt } from './eye.ts';
import {
  AXE_FAULTS,
  DARK_FAULTS,
  ENGINE_FAULTS,
  EYE_FAULTS,
  SNIFFER_FAULTS,
  VALIDATE_FAULTS,
} from './faults.ts';
import { sheets } from './sheets.ts';
import { faultsOf } from './validate.ts';

const WIDTHS = [320, 1280];

/** Where columns come and go. */
const EYE_WIDTHS = [390, 820, 1280];

/** Pages of a printed record at most. */
const RECORD_PAGES = 7;
/** Of a label on paper, points [choice]. */
const LABEL_PT = 7;
const leaflet = sheets[0]![1];

let browser: Browser;
let pages: ReadonlyMap<number, Page>;
beforeAll(async () => {
  browser = await launch();
  pages = await pagesAt(browser, [...new Set([...WIDTHS, ...EYE_WIDTHS])]);
});
afterAll(() => browser.close());

describe.each(sheets)('%s', (name, markup) => {
  const address = fileOf(markup, 'sheet');

  it.each(WIDTHS)('axe 4.14 finds nothing at %i px, light or dark', async (width) => {
    expect(await inBothSchemes(pages.get(width)!, address)).toEqual(NOTHING);
  });

  it('HTML_CodeSniffer 2.5 and IBM’s engine 4.0 find nothing', async () => {
    const page = pages.get(390)!;
    await unfolded(page, address);
    expect(await sniffed(page)).toEqual([]);
    expect(await ruled(page)).toEqual([]);
  });

  it.each(EYE_WIDTHS)(
    'has whole words, large targets, named groups and no idle stops at %i px',
    async (width) => {
      const page = pages.get(width)!;
      await unfolded(page, address);
      expect(await seen(page)).toEqual([]);
    },
  );

  it('is printed in pages that are full', async () => {
    const page = pages.get(1280)!;
    await visit(page, address);
    const { pages: count, halfEmpty } = await printed(page);
    expect(halfEmpty).toEqual([]);
    if (name.includes('record')) expect(count).toBeLessThanOrEqual(RECORD_PAGES);
  });

  it('is printed with the words of its figures 7 pt at least', async () => {
    const page = pages.get(1280)!;
    await visit(page, address);
    expect(await smallestLabelPt(page)).toBeGreaterThanOrEqual(LABEL_PT);
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
    expect(rulesOf(await violations(page, { rule: seen }))).toContain(seen);
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

  it.each(SNIFFER_FAULTS)('$name, by HTML_CodeSniffer', async ({ seen: code, spoil }) => {
    const page = pages.get(390)!;
    await unfolded(page, fileOf(spoil(leaflet), 'fault'));
    expect((await sniffed(page)).map((line) => line.split(': ')[0])).toContainEqual(
      expect.stringContaining(code),
    );
  });

  it.each(ENGINE_FAULTS)('$name, by IBM’s engine', async ({ seen: rule, spoil }) => {
    const page = pages.get(390)!;
    await unfolded(page, fileOf(spoil(leaflet), 'fault'));
    expect(rulesOf(await ruled(page))).toContain(rule);
  });

  it.each(EYE_FAULTS)('$name, measured', async ({ seen: kind, spoil }) => {
    const page = pages.get(390)!;
    await unfolded(page, fileOf(spoil(leaflet), 'fault'));
    expect((await seen(page)).map((line) => line.split(': ')[0])).toContain(kind);
  });

  it('a page left half-empty by the printer', async () => {
    const page = pages.get(1280)!;
    const torn = leaflet.replace(
      '</main>',
      '<p class="torn">a</p><p class="torn">b</p><style>.torn{break-before:page}</style></main>',
    );
    await visit(page, fileOf(torn, 'fault'));
    expect((await printed(page)).halfEmpty).not.toEqual([]);
  });

  it.each(VALIDATE_FAULTS)('$name', async ({ seen, spoil }) => {
    expect(rulesOf(await faultsOf(spoil(leaflet)))).toContain(seen);
  });
});
