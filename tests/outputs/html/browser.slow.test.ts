/** The sheets in a real browser: width, requests, policy, scripts off, print. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { leafletHtml } from '../../../src/outputs/html/leaflet.ts';
import { recordHtml } from '../../../src/outputs/html/record.ts';
import { assets } from './assets.ts';
import { fileOf, heard, launch, opened, pagesAt, visit } from './browser.ts';
import { programmes, reworded } from './programmes.ts';
import { sheets } from './sheets.ts';

const [, first] = programmes[0]!;
const leaflet = sheets[0]![1];

let browser: Browser;
let narrow: Page;
let guarded: Page;
beforeAll(async () => {
  browser = await launch();
  narrow = (await pagesAt(browser, [320])).get(320)!;
  guarded = await browser.newPage();
});
afterAll(() => browser.close());

describe.each(sheets)('%s', (_, markup) => {
  const address = fileOf(markup, 'sheet');

  it('fits 320 px without sideways scrolling, also with text spaced out (WCAG 2.2, 1.4.10 and 1.4.12)', async () => {
    const spaced =
      '*{line-height:1.5!important;letter-spacing:.12em!important;word-spacing:.16em!important}p{margin-bottom:2em!important}';
    await visit(narrow, address);
    const width = () => narrow.evaluate<number>('document.documentElement.scrollWidth');
    const plain = await width();
    await narrow.addStyleTag({ content: spaced });
    expect([plain, await width()]).toEqual([320, 320]);
  });

  it('asks for no file but itself and breaks no policy', async () => {
    const { asked, said } = await heard(guarded, address);
    const faces = await guarded.evaluate<number>(
      '[...document.fonts].filter((face) => face.status === "loaded").length',
    );
    expect(asked.filter((url) => !url.startsWith('data:'))).toEqual([address]);
    expect(said).toEqual([]);
    expect(faces).toBe(2);
  });
});

describe.each(programmes)('without scripts, the leaflet of %s', (_, programme) => {
  const address = fileOf(leafletHtml(programme, assets), 'leaflet');

  it('shows every cell that has words, those of coming steps that stay as they are when unfolded', async () => {
    const seen = await opened(browser, address, { javaScriptEnabled: false }, async (page) => {
      for (const fold of await page.locator('summary').all()) await fold.click();
      return Promise.all(
        (await page.locator('[data-cell]').all()).map(
          async (cell) => [await cell.textContent(), await cell.isVisible()] as const,
        ),
      );
    });
    const worded = programme.steps
      .flatMap(({ prescriptions }) => prescriptions.flatMap(({ cells }) => cells))
      .filter(({ text }) => text !== '');
    expect(seen.filter(([text]) => text !== '').length).toBe(worded.length);
    expect(seen.filter(([text, visible]) => (text !== '') !== visible)).toEqual([]);
  });

  it('shows no button that could not work', async () => {
    const buttons = await opened(browser, address, { javaScriptEnabled: false }, (page) =>
      page.locator('button:visible').count(),
    );
    expect(buttons).toBe(0);
  });
});

describe('with its script', () => {
  const address = fileOf(leaflet, 'leaflet');
  const paper = (page: Parameters<Parameters<typeof opened>[3]>[0]) =>
    page.evaluate<string>('getComputedStyle(document.body).backgroundColor');

  it('turns dark and light again by its button, and stores the choice alone', async () => {
    const [before, dark, after, stored] = await opened(
      browser,
      address,
      { colorScheme: 'light' },
      async (page) => {
        const theme = page.locator('[data-tool="theme"]');
        const colours = [await paper(page)];
        for (let press = 0; press < 2; press += 1) {
          await theme.click();
          colours.push(await paper(page));
        }
        return [
          ...colours,
          await page.evaluate<string>('JSON.stringify({ ...localStorage, ...sessionStorage })'),
        ];
      },
    );
    expect(dark).not.toBe(before);
    expect(after).toBe(before);
    expect(stored).toBe('{"loadleaf:theme":"light"}');
  });

  it('prints light from a dark page, without its buttons', async () => {
    const [colour, buttons] = await opened(browser, address, { colorScheme: 'dark' }, async (page) => {
      await page.emulateMedia({ media: 'print' });
      // A heading that folds its section on the screen is printed as a heading.
      return [await paper(page), await page.locator('button:visible:not(.fold)').count()] as const;
    });
    expect(colour).toBe('rgb(255, 255, 255)');
    expect(buttons).toBe(0);
  });

  it('leaves out on paper what is folded in the record, and prints what is unfolded', async () => {
    const record = fileOf(recordHtml(first, assets), 'record');
    const [folded, open] = await opened(browser, record, {}, async (page) => {
      await page.emulateMedia({ media: 'print' });
      const shown = () => page.locator('details table:visible').count();
      const before = await shown();
      await page.evaluate("document.querySelector('details:has(table)').open = true");
      return [before, await shown()];
    });
    expect(folded).toBe(0);
    expect(open).toBeGreaterThan(0);
  });
});

describe('what lies below the first screen of a leaflet', () => {
  const shown = (of: string) =>
    `[...new Set([...document.querySelectorAll('${of}')].map((one) => getComputedStyle(one).contentVisibility))].join()`;
  const marked = (state: string, of: string) =>
    `document.documentElement.dataset.arriving = '${state}'; ${shown(of)}`;
  const mark = 'document.documentElement.dataset.arriving ?? null';

  it('is held back while the file is read, but not on paper and not for long', async () => {
    await opened(browser, fileOf(leaflet, 'leaflet'), {}, async (page) => {
      expect(await page.evaluate(marked('reading', '.later'))).toBe('hidden');
      await page.emulateMedia({ media: 'print' });
      expect(await page.evaluate(shown('.later'))).toBe('visible');
      await page.emulateMedia({ media: 'screen' });
      await page.evaluate('Promise.all(document.getAnimations().map((held) => held.finished))');
      expect(await page.evaluate(shown('.later'))).toBe('visible');
    });
  });

  it('is there once the file is read, and laid out for good after the first frame', async () => {
    const page = await browser.newPage();
    await page.goto(fileOf(leaflet, 'leaflet'), { waitUntil: 'domcontentloaded' });
    expect(await page.evaluate(shown('.later'))).toBe('visible');
    await expect.poll(() => page.evaluate(mark)).toBe(null);
    expect(await page.evaluate(shown('.later, .later *'))).toBe('visible');
    await page.close();
  });

  it('may be left out of the first frame alone by a browser that is far from it', async () => {
    await opened(browser, fileOf(leaflet, 'leaflet'), {}, async (page) => {
      expect(await page.evaluate(marked('drawing', '.later > *'))).toBe('auto');
      await page.emulateMedia({ media: 'print' });
      expect(await page.evaluate(shown('.later, .later *'))).toBe('visible');
    });
  });

  // Without the last script the mark of the first one stays.
  const unended = fileOf(leaflet.replace(assets.script.text, ''), 'unended');

  it('is held back for who opens the leaflet at its top alone', async () => {
    const page = await browser.newPage();
    await page.goto(unended);
    expect(await page.evaluate(mark)).toBe('reading');
    await page.evaluate('scrollTo(0, 1500)');
    await page.reload();
    expect(await page.evaluate(mark)).toBe(null);
    await expect.poll(() => page.evaluate('scrollY')).toBe(1500);
    await page.close();
  });

  it.each(['exercise-3', 'pain-rule'])('is there at once for an address that leads to %s', async (id) => {
    const page = await browser.newPage();
    await page.goto(`${unended}#${id}`);
    expect(await page.evaluate(mark)).toBe(null);
    const top = () =>
      page.evaluate<number>(`Math.round(document.getElementById('${id}').getBoundingClientRect().top)`);
    await expect.poll(top).toBeLessThan(10);
    expect(await top()).toBeGreaterThanOrEqual(0);
    await page.close();
  });
});

describe('large type', () => {
  it('fits 390 px at twice the size (WCAG 2.2, 1.4.4)', async () => {
    const width = await opened(
      browser,
      fileOf(leaflet, 'leaflet'),
      { viewport: { width: 390, height: 800 }, bypassCSP: true },
      async (page) => {
        await page.addStyleTag({ content: 'html{font-size:34px!important}' });
        return page.evaluate<number>('document.documentElement.scrollWidth');
      },
    );
    expect(width).toBe(390);
  });
});

describe('hostile words', () => {
  const long = 'w'.repeat(200);
  const words = [
    `<script>globalThis.caught=1</script>`,
    `"><img src=x onerror="globalThis.caught=1">`,
    'مرحبا بالعالم',
    '\u202egnp.exe',
    long,
  ];

  it.each(words)('%j run nothing, ask for nothing and fit 320 px', async (word) => {
    const address = fileOf(
      leafletHtml(
        reworded(first, (text) => `${text} ${word}`),
        assets,
      ),
      'hostile',
    );
    const result = await opened(browser, address, { viewport: { width: 320, height: 700 } }, async (page) => [
      await page.evaluate<unknown>('globalThis.caught ?? null'),
      // But for what the leaflet itself has there: its data, and what puts today onto the first screen.
      await page.locator('main img, main script:not(#sheet-in-use, #sheet-in-use + script)').count(),
      await page.evaluate<number>('document.documentElement.scrollWidth'),
    ]);
    expect(result).toEqual([null, 0, 320]);
  });
});

describe('the checkers still see', () => {
  it('a script the policy does not know', async () => {
    const spoilt = leaflet.replace('</body>', '<script>globalThis.caught=1</script></body>');
    const { said } = await heard(guarded, fileOf(spoilt, 'fault'));
    const caught = await guarded.evaluate<unknown>('globalThis.caught ?? null');
    expect(caught).toBeNull();
    expect(said.join()).toMatch(/Content Security Policy/);
  });

  it.each([
    ['on the first screen', /<main>/],
    ['at the end', /(?=<\/div>\s*<\/main>)/],
  ])('a line too long for the sheet, %s', async (_, place) => {
    const spoilt = leaflet.replace(place, `$&<pre>${'w'.repeat(99)}</pre>`);
    await visit(narrow, fileOf(spoilt, 'fault'));
    const width = await narrow.evaluate<number>('document.documentElement.scrollWidth');
    expect(width).toBeGreaterThan(320);
  });
});
