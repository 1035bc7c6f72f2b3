/** The sheets in a real browser: accessibility, width, requests, policy, scripts off, print. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { leafletHtml } from '../../src/page/leaflet.ts';
import { recordHtml } from '../../src/page/record.ts';
import { assets } from './assets.ts';
import { fileOf, launch, opened, violations } from './browser.ts';
import { AXE_FAULTS, VALIDATE_FAULTS } from './faults.ts';
import { programmes, reworded } from './programmes.ts';
import { faultsOf } from './validate.ts';

const WIDTHS = [320, 390, 1280];
const SCHEMES = ['light', 'dark'] as const;

const [, first] = programmes[0]!;
const sheets: [name: string, markup: string][] = [
  ...programmes.flatMap(([name, programme]): [string, string][] => [
    [`the leaflet of ${name}`, leafletHtml(programme, assets)],
    [`the record of ${name}`, recordHtml(programme, assets)],
  ]),
];
const leaflet = sheets[0]![1];

let browser: Browser;
beforeAll(async () => {
  browser = await launch();
});
afterAll(async () => {
  await browser.close();
});

describe.each(sheets)('%s', (_, markup) => {
  const address = fileOf(markup, 'sheet');

  it.each(WIDTHS.flatMap((width) => SCHEMES.map((scheme) => [width, scheme] as const)))(
    'axe 4.14 finds nothing at %i px, %s',
    async (width, colorScheme) => {
      const found = await opened(
        browser,
        address,
        { viewport: { width, height: 900 }, colorScheme, bypassCSP: true },
        async (page) => {
          await page.evaluate("document.querySelectorAll('details').forEach((one) => (one.open = true))");
          return violations(page);
        },
      );
      expect(found).toEqual([]);
    },
  );

  it('html-validate 10.17 finds nothing', async () => {
    expect(await faultsOf(markup)).toEqual([]);
  });

  it('fits 320 px without sideways scrolling, also with text spaced out (WCAG 2.2, 1.4.10 and 1.4.12)', async () => {
    const spaced =
      '*{line-height:1.5!important;letter-spacing:.12em!important;word-spacing:.16em!important}p{margin-bottom:2em!important}';
    const widths = await opened(
      browser,
      address,
      { viewport: { width: 320, height: 700 }, bypassCSP: true },
      async (page) => {
        const width = () => page.evaluate<number>('document.documentElement.scrollWidth');
        const plain = await width();
        await page.addStyleTag({ content: spaced });
        return [plain, await width()];
      },
    );
    expect(widths).toEqual([320, 320]);
  });

  it('asks for no file but itself and breaks no policy', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    const asked: string[] = [];
    const said: string[] = [];
    page.on('request', (request) => asked.push(request.url().slice(0, 200)));
    page.on('console', (message) => said.push(message.text()));
    page.on('pageerror', (error) => said.push(error.message));
    await page.goto(address);
    await page.evaluate('document.fonts.ready');
    const faces = await page.evaluate<number>(
      '[...document.fonts].filter((face) => face.status === "loaded").length',
    );
    await context.close();
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

  it('turns dark and light again by its button, and stores nothing', async () => {
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
        return [...colours, await page.evaluate<number>('localStorage.length + sessionStorage.length')];
      },
    );
    expect(dark).not.toBe(before);
    expect(after).toBe(before);
    expect(stored).toBe(0);
  });

  it('prints light from a dark page, without its buttons', async () => {
    const [colour, buttons] = await opened(browser, address, { colorScheme: 'dark' }, async (page) => {
      await page.emulateMedia({ media: 'print' });
      return [await paper(page), await page.locator('button:visible').count()] as const;
    });
    expect(colour).toBe('rgb(255, 255, 255)');
    expect(buttons).toBe(0);
  });

  it('unfolds the record for paper', async () => {
    const record = fileOf(recordHtml(first, assets), 'record');
    const [folded, open, after] = await opened(browser, record, {}, async (page) => {
      const closed = () => page.locator('details:not([open])').count();
      const counts = [await closed()];
      for (const event of ['beforeprint', 'afterprint']) {
        await page.evaluate(`dispatchEvent(new Event('${event}'))`);
        counts.push(await closed());
      }
      return counts;
    });
    expect(folded).toBeGreaterThan(0);
    expect([open, after]).toEqual([0, folded]);
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
      await page.locator('main img, main script').count(),
      await page.evaluate<number>('document.documentElement.scrollWidth'),
    ]);
    expect(result).toEqual([null, 0, 320]);
  });
});

describe('the checkers still see', () => {
  it.each(AXE_FAULTS)('$name', async ({ seen, spoil }) => {
    const spoilt = spoil(leaflet);
    expect(spoilt).not.toBe(leaflet);
    const options = { viewport: { width: 390, height: 800 }, bypassCSP: true };
    const found = await opened(browser, fileOf(spoilt, 'fault'), options, violations);
    expect(found.map((line) => line.split(' ')[0])).toContain(seen);
  });

  it.each(VALIDATE_FAULTS)('$name', async ({ seen, spoil }) => {
    const found = await faultsOf(spoil(leaflet));
    expect(found.map((line) => line.split(':')[0])).toContain(seen);
  });

  it('a script the policy does not know', async () => {
    const spoilt = leaflet.replace('</body>', '<script>globalThis.caught=1</script></body>');
    const [caught, said] = await opened(browser, 'about:blank', {}, async (page) => {
      const messages: string[] = [];
      page.on('console', (message) => messages.push(message.text()));
      await page.goto(fileOf(spoilt, 'fault'));
      return [await page.evaluate<unknown>('globalThis.caught ?? null'), messages] as const;
    });
    expect(caught).toBeNull();
    expect(said.join()).toMatch(/Content Security Policy/);
  });

  it('a line too long for the sheet', async () => {
    const spoilt = leaflet.replace('<main>', `<main><pre>${'w'.repeat(99)}</pre>`);
    const width = await opened(
      browser,
      fileOf(spoilt, 'fault'),
      { viewport: { width: 320, height: 700 } },
      (page) => page.evaluate<number>('document.documentElement.scrollWidth'),
    );
    expect(width).toBeGreaterThan(320);
  });
});
