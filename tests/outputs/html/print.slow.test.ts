/** Printed from the browser: no heading, and nothing that stands over a picture, is left alone at the foot of a page. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { leafletHtml } from '../../../src/outputs/html/leaflet.ts';
import { openPdf } from '../pdf/viewer.ts';
import { assets } from './assets.ts';
import { fileOf, launch, pagesAt, visit } from './browser.ts';
import { programmes } from './programmes.ts';

const [, marten] = programmes[1]!;
const address = fileOf(leafletHtml(marten, assets), 'sheet');
/** The foot of a page of A4 between its margins, CSS pixels. */
const FOOT_PX = 1020;
const STEP_PX = 18;

let browser: Browser;
let page: Page;
beforeAll(async () => {
  browser = await launch();
  page = (await pagesAt(browser, [1280])).get(1280)!;
});
afterAll(() => browser.close());

/** What must never be the last on its page, and the part of the sheet that is printed to see it. */
const TOGETHER = [
  { what: 'the heading of the log', part: '#log', words: '#log > h2', fromPx: 840 },
  {
    what: 'title and words over the picture of a named exercise',
    part: '.named',
    words: '.named .one > :is(h3, p)',
    fromPx: 660,
  },
];

it.each(TOGETHER)('$what', async ({ part, words, fromPx }) => {
  await visit(page, address);
  const ends = await page.evaluate<string[]>(`(() => {
    const part = document.querySelector('${part}');
    const spacer = document.createElement('div');
    spacer.id = 'spacer';
    document.querySelector('main').replaceChildren(spacer, part);
    document.querySelectorAll('header, footer').forEach((one) => one.remove());
    return [...document.querySelectorAll('${words}')].map((one) => one.textContent);
  })()`);
  const lastOfPages = new Set<string>();
  for (let heightPx = fromPx; heightPx <= FOOT_PX; heightPx += STEP_PX) {
    await page.evaluate(`document.getElementById('spacer').style.height = '${heightPx}px'`);
    for (const last of await lastLines(page)) lastOfPages.add(last);
  }
  expect(ends.length).toBeGreaterThan(0);
  const left = ends
    .map(bare)
    .filter((one) => [...lastOfPages].some((last) => last !== '' && one.endsWith(last)));
  expect(left).toEqual([]);
  // The part has been on both sides of the foot.
  expect(lastOfPages).toContain('');
  expect(lastOfPages.size).toBeGreaterThan(1);
});

/** The last line of each page but the last of all, without its spaces; of a page with nothing on it the empty one. */
async function lastLines(of: Page): Promise<string[]> {
  const pdf = await openPdf(new Uint8Array(await of.pdf({ format: 'A4' })));
  const lines: string[] = [];
  for (let at = 1; at < pdf.numPages; at++) {
    const { items } = await (await pdf.getPage(at)).getTextContent({ disableNormalization: true });
    const texts = items.flatMap((item) =>
      'str' in item && item.str.trim() !== '' ? [{ text: item.str, y: item.transform[5] as number }] : [],
    );
    const lowest = Math.min(...texts.map(({ y }) => y));
    lines.push(
      bare(
        texts
          .filter(({ y }) => y < lowest + 1)
          .map(({ text }) => text)
          .join(''),
      ),
    );
  }
  await pdf.destroy();
  return lines;
}

/** Without spaces, and without the sign of a fold, which is for the screen. */
function bare(text: string): string {
  return text.replaceAll(/[\s–+]/g, '');
}
