/** What a page must be for eye and hand, measured in the browser: words whole, targets large, groups named, no idle stops. */
import type { Page } from 'playwright-core';
import { openPdf, textBoxes } from '../pdf/viewer.ts';

/** The least side of what is pressed, CSS pixels: WCAG 2.2, 2.5.5 (level AAA); read there. */
const TARGET_PX = 44;

/** All that is not as it must be, a line each, the kind first. */
export async function seen(page: Page): Promise<string[]> {
  // The script takes idle stops away when a frame has been laid out.
  await page.evaluate(
    'new Promise((laid) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(laid))))',
  );
  return page.evaluate<string[]>(`(() => {
    const shown = [...document.querySelectorAll('body *')].filter((one) => one.checkVisibility({ visibilityProperty: true }));
    const named = (one) => one.hasAttribute('aria-label') || one.hasAttribute('aria-labelledby') || one.querySelector(':scope > figcaption');
    const found = (kind, some) => some.map((one) => kind + ': ' + one.outerHTML.slice(0, 90));
    const range = document.createRange();
    // Kept for those who hear the page, or off its edge until it has the focus.
    const heardOnly = (one) => one.closest('.unseen') !== null || one.getBoundingClientRect().right <= 0;
    const linesOf = (node, from, to) => {
      range.setStart(node, from);
      range.setEnd(node, to);
      return new Set([...range.getClientRects()].filter(({ width }) => width > 0).map(({ top }) => Math.round(top))).size;
    };
    const broken = shown.filter((one) => !heardOnly(one)).flatMap((one) => [...one.childNodes].filter(({ nodeType }) => nodeType === Node.TEXT_NODE))
      .flatMap((node) => [...node.data.matchAll(/[\\p{L}\\p{N}]{2,}/gu)]
        .filter((word) => linesOf(node, word.index, word.index + word[0].length) > 1)
        .map((word) => 'broken word: ' + word[0]));
    const pressed = shown.filter((one) => one.matches('a[href], button, summary, input, select, textarea'))
      // A link in running text is as high as its line (2.5.5, inline).
      .filter((one) => !(one.matches('a') && getComputedStyle(one).display === 'inline') && !heardOnly(one))
      // A box is pressed by its label too.
      .filter((one) => { const { width, height } = (one.closest('label') ?? one).getBoundingClientRect(); return width < ${TARGET_PX} || height < ${TARGET_PX}; });
    return [
      ...broken,
      ...found('small target', pressed),
      ...found('unnamed figure', shown.filter((one) => one.matches('figure') && !named(one))),
      ...found('idle tab stop', shown.filter((one) => one.matches('[tabindex="0"]') && one.scrollWidth <= one.clientWidth)),
      ...found('table of one row', shown.filter((one) => one.matches('table') && one.querySelectorAll('tbody > tr').length < 2)),
      ...found('slashed zero', shown.filter((one) => getComputedStyle(one).fontVariantNumeric.includes('slashed-zero') && !one.matches('code'))),
    ];
  })()`);
}

/** A page of paper that is not the last is filled at least to here, share of its height [choice]. */
const FILLED = 0.6;

/** The smallest words of figures and charts on A4, points; Infinity where there are none. */
export async function smallestLabelPt(page: Page): Promise<number> {
  const before = page.viewportSize();
  // As wide as the paper between the narrowest margins of a sheet, 10 mm.
  await page.setViewportSize({ width: 718, height: 1000 });
  await page.emulateMedia({ media: 'print' });
  const sizes = await page.evaluate<number[]>(`[...document.querySelectorAll('svg text')]
    .filter((one) => one.getBoundingClientRect().width > 0)
    .map((one) => Number(one.getAttribute('font-size')) * one.getScreenCTM().a * 0.75)`);
  await page.emulateMedia({ media: null });
  if (before !== null) await page.setViewportSize(before);
  return Math.min(Infinity, ...sizes);
}

/** The page as the browser prints it: how many pages, and which of them are left half-empty. */
export async function printed(page: Page): Promise<{ pages: number; halfEmpty: readonly number[] }> {
  await page.emulateMedia({ colorScheme: 'light' });
  const pdf = await openPdf(new Uint8Array(await page.pdf({ format: 'A4', printBackground: true })));
  const halfEmpty: number[] = [];
  for (let at = 1; at < pdf.numPages; at++) {
    const sheet = await pdf.getPage(at);
    const lowest = Math.max(0, ...(await textBoxes(sheet)).map(({ bottom }) => bottom));
    if (lowest < FILLED * sheet.getViewport({ scale: 1 }).height) halfEmpty.push(at);
  }
  const pages = pdf.numPages;
  await pdf.destroy();
  return { pages, halfEmpty };
}
