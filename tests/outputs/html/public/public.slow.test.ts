/** The public folder below a path of a site, in a real browser: requests, each kind of page at its widths, search by keyboard, no script. */
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import fc from 'fast-check';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { proseTexts } from '../../../../src/content/prose/plainText.ts';
import { KIT_WORDS } from '../../../../src/content/schema/words.ts';
import { isAdmitted } from '../../../../src/client/catalogue/match.ts';
import { libraryPages } from '../../../../src/outputs/html/site.ts';
import { MUSCLE_TERMS } from '../../../../src/messages/en/catalogue/searchTerms.ts';
import { assets } from '../assets.ts';
import { heard, inBothSchemes, launch, NOTHING, opened, pagesAt, unfolded } from '../browser.ts';
import { seen } from '../eye.ts';
import { sampleView, shipped, shippedLibrary } from '../libraries.ts';
import { SAMPLE } from '../../../content/sample.ts';
import { served } from './publicServer.ts';

const files = libraryPages(shipped, assets);
/** One of each kind; every page at 390 px is in everyPage.slow.test.ts. */
const AXE_WIDTHS = [320, 1280];
const WIDTHS = [320, 768, 1280];
const KINDS = [
  'index.html',
  'exercises.html',
  'exercises/romanian-deadlift.html',
  'exercises/strides.html',
  'protocols.html',
  'protocols/proximal-hamstring.html',
  'advice.html',
  'advice/sitting-well.html',
  'numbers.html',
  'glossary.html',
  'authors.html',
  'pages/house-rules.html',
  'style/index.html',
];

const KEYED = ['authors.html', 'protocols/proximal-hamstring.html', 'style/index.html'];

let browser: Browser;
let site: Awaited<ReturnType<typeof served>>;
let pages: ReadonlyMap<number, Page>;
let guarded: Page;
beforeAll(async () => {
  [browser, site] = await Promise.all([launch(), served(files)]);
  [pages, guarded] = await Promise.all([pagesAt(browser, WIDTHS), browser.newPage()]);
});
afterAll(async () => {
  site.server.close();
  await browser.close();
});

describe.each(KINDS)('%s', (path) => {
  it.each(WIDTHS)(
    'is made for eye and hand at %i px, and axe 4.14 finds nothing, light or dark',
    async (width) => {
      const page = pages.get(width)!;
      const address = site.address + path;
      if (AXE_WIDTHS.includes(width)) expect(await inBothSchemes(page, address)).toEqual(NOTHING);
      else await unfolded(page, address);
      // No script runs here that could take a stop away where a table needs none; where names of keys stand in tables, and
      // the digits of the typeface, they may part.
      const besides = KEYED.includes(path) ? /^(idle tab stop|broken word)/ : /^idle tab stop/;
      const found = (await seen(page)).filter((one) => !besides.test(one));
      expect([...new Set(found)]).toEqual([]);
      expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBe(width);
    },
  );

  it('asks for nothing but its own files, and breaks no policy', async () => {
    const { asked, said } = await heard(guarded, site.address + path);
    expect(asked.filter((url) => !url.startsWith(site.address) && !url.startsWith('data:'))).toEqual([]);
    expect(said).toEqual([]);
  });
});

const shown = (page: Page) =>
  page.evaluate<string[]>(
    `[...document.querySelectorAll('[data-entry]:not([hidden]) a')].map((link) => link.getAttribute('href'))`,
  );
const hrefs = (ids: readonly string[]) => ids.map((id) => `exercises/${id}.html`);
const rules = Object.fromEntries(shipped.filters.map(({ key, rule }) => [key, rule]));
const admitted = (chosen: Readonly<Record<string, readonly string[]>>) =>
  shipped.cards.filter(({ facets }) => isAdmitted(rules, chosen, facets)).map(({ id }) => id);

/** What a reader may ask: the words of the filters as they stand in the address, and words to be searched. */
interface Query {
  readonly text: string;
  readonly chosen: Readonly<Record<string, readonly string[]>>;
}
const QUERIES: fc.Arbitrary<Query> = fc.record({
  text: fc.constantFrom('', '', '', 'knees', 'knees toes', 'breath', 'toes', 'stand tall', 'zzz'),
  chosen: fc.record(
    {
      bend: fc.constantFrom(['30'], ['45'], ['60'], ['90']),
      kind: fc.subarray(['isometric', 'isotonic', 'energy-storage', 'mobility', 'running-drill'], {
        minLength: 1,
      }),
      position: fc.subarray(['lying', 'prone', 'standing', 'hinge', 'step', 'ballistic'], { minLength: 1 }),
      kit: fc.subarray(['nothing', 'rucksack', 'bench', 'ball', 'step', 'band'], { minLength: 1 }),
      cannot: fc.subarray(['kneel', 'lie-prone', 'lie-supine', 'get-to-the-floor', 'grip'], { minLength: 1 }),
    },
    { requiredKeys: [] },
  ),
});

function addressOf({ text, chosen }: Query): string {
  const words = Object.entries(chosen).flatMap(([key, values]) => values.map((value) => `${key}=${value}`));
  return [...(text === '' ? [] : [`q=${text.replaceAll(' ', '+')}`]), ...words].join('&');
}

/** By the card's own file: nothing of the index, its facets or its script is asked. */
function fits(id: string, { text, chosen: { bend, kind, position, kit, cannot } }: Query): boolean {
  const card = shippedLibrary.exercises.get(id)!;
  const ends = card.movement === null ? [] : [card.movement.start, card.movement.end ?? card.movement.start];
  const bendDeg = card.statedHipFlexion?.deg ?? Math.max(...ends.map(({ work }) => work.hip));
  const things = card.equipment.filter((thing) => (KIT_WORDS as readonly string[]).includes(thing));
  const read = [
    id,
    card.title,
    ...card.alsoCalled,
    ...card.muscles.map((muscle) => MUSCLE_TERMS[muscle]),
    card.landmark ?? '',
    ...card.needs,
    ...card.cautions,
    ...proseTexts(card.body).map((one) => one.text),
  ].join(' ');
  return (
    (bend === undefined || bendDeg <= Number(bend[0])) &&
    (kind === undefined || kind.includes(card.kind)) &&
    (position === undefined || card.positions.some((one) => position.includes(one))) &&
    (kit === undefined || things.every((one) => kit.includes(one))) &&
    (cannot === undefined || !card.needs.some((one) => cannot.includes(one))) &&
    text.split(' ').every((word) => new RegExp(`\\b${word.replace(/s$/, '')}`, 'i').test(read))
  );
}

describe('the index', () => {
  it('shows what the address asks, and nothing else', async () => {
    const ids = await opened(
      browser,
      `${site.address}exercises.html?bend=45&squeeze=low&squeeze=middle&cannot=kneel`,
      {},
      shown,
    );
    expect(ids).toEqual(hrefs(admitted({ bend: ['45'], squeeze: ['low', 'middle'], cannot: ['kneel'] })));
    expect(ids.length).toBeGreaterThan(3);
    expect(ids.length).toBeLessThan(shipped.cards.length);
  });

  it('on random queries shows what a look through the files of the cards finds', async () => {
    const asked = fc.sample(QUERIES, { seed: 20261125, numRuns: 120 });
    const found = await opened(browser, `${site.address}exercises.html`, {}, (page) =>
      page.evaluate<string[][]>(`${JSON.stringify(asked.map(addressOf))}.map((query) => {
        history.replaceState(null, '', '?' + query);
        dispatchEvent(new PopStateEvent('popstate'));
        return [...document.querySelectorAll('[data-entry]:not([hidden]) h3 a')].map((link) => link.getAttribute('href'));
      })`),
    );
    // In which order they come is search.test.ts's matter.
    const byHand = asked.map((query) => shipped.cards.map(({ id }) => id).filter((id) => fits(id, query)));
    const sorted = (lists: readonly (readonly string[])[]) => lists.map((list) => list.toSorted());
    expect(sorted(found)).toEqual(sorted(byHand.map(hrefs)));
    const telling = byHand.filter(({ length }) => length > 0 && length < shipped.cards.length);
    expect(telling.length).toBeGreaterThan(40);
  });

  it('is worked by the keyboard alone, and its state stands in the address', async () => {
    const [ids, address, back, all] = await opened(
      browser,
      `${site.address}exercises.html`,
      { viewport: { width: 1280, height: 900 } },
      async (page) => {
        await page.keyboard.press('Tab');
        expect(await page.evaluate('document.activeElement.textContent')).toBe('To the text');
        while ((await page.evaluate('document.activeElement.id')) !== 'search')
          await page.keyboard.press('Tab');
        await page.keyboard.type('bridges pillow');
        // On to the first group's radio buttons, and two down.
        while ((await page.evaluate('document.activeElement.name')) !== 'bend')
          await page.keyboard.press('Tab');
        for (const key of ['ArrowDown', 'ArrowDown']) await page.keyboard.press(key);
        const found = await shown(page);
        const url = page.url();
        await page.reload();
        const after = await shown(page);
        await page.getByRole('button', { name: 'Show all again' }).press('Enter');
        expect(await page.evaluate('document.activeElement.id')).toBe('search');
        return [found, url, after, await shown(page)] as const;
      },
    );
    expect(new URL(address).search).toBe('?q=bridges+pillow&bend=45');
    expect(ids.length).toBeGreaterThan(0);
    expect(back).toEqual(ids);
    expect(all).toHaveLength(shipped.cards.length);
  });

  it('leads from the search to what was found', async () => {
    const focus = await opened(browser, `${site.address}exercises.html`, {}, async (page) => {
      await page.locator('#search').fill('bridge');
      await page.keyboard.press('Enter');
      await page.keyboard.press('Tab');
      return page.evaluate<string>('document.activeElement.getAttribute("href")');
    });
    expect(focus).toMatch(/^exercises\/.*bridge/);
  });

  it('tells how many there are, and when there are none', async () => {
    const [some, none] = await opened(
      browser,
      `${site.address}exercises.html?kind=isometric`,
      {},
      async (page) => {
        const tally = () => page.locator('output').textContent();
        const before = await tally();
        await page.locator('#search').fill('zzz');
        return [before, [await tally(), await page.locator('[data-none]').isVisible()]] as const;
      },
    );
    expect(some).toBe(`${admitted({ kind: ['isometric'] }).length} of ${shipped.cards.length} exercises`);
    expect(none).toEqual([`0 of ${shipped.cards.length} exercises`, true]);
  });

  it.each([
    ['osteoporosis', 'osteoporosis', 'osteoporosis'],
    ['pregnancy bridge', 'pregnant-or-postpartum', 'pregnant or postpartum'],
    ['dizzy', 'dizziness', 'dizziness'],
  ])('shows for %j no card that is not for such a person, and says so', async (typed, need, words) => {
    const [ids, said] = await opened(browser, `${site.address}exercises.html`, {}, async (page) => {
      await page.locator('#search').fill(typed);
      return [await shown(page), await page.locator('[data-left-out]').textContent()] as const;
    });
    const barred = shipped.cards.filter(({ facets }) => facets.cannot.includes(need)).map(({ id }) => id);
    expect(barred.length).toBeGreaterThan(5);
    expect(ids.filter((one) => hrefs(barred).includes(one))).toEqual([]);
    expect(ids.length).toBeGreaterThan(0);
    expect(said).toBe(`Not shown: ${barred.length} exercises that are not for “${words}”.`);
  });

  it('puts the nearest first, and its own order back', async () => {
    const [first, own] = await opened(browser, `${site.address}exercises.html`, {}, async (page) => {
      await page.locator('#search').fill('hip hinge');
      const found = await shown(page);
      await page.locator('#search').fill('');
      return [found[0], await shown(page)] as const;
    });
    expect(first).toBe('exercises/hip-hinge.html');
    expect(own).toEqual(hrefs(shipped.cards.map(({ id }) => id)));
  });

  it('says what to ask for where nothing is found, and does it', async () => {
    const address = `${site.address}exercises.html?q=nordic+kettlebell+xylophone`;
    const [said, found] = await opened(browser, address, {}, async (page) => {
      const entries = await page.locator('[data-none-words] li').allTextContents();
      await page.locator('[data-none-words] button').first().click();
      return [entries, await shown(page)] as const;
    });
    expect(said).toEqual([
      '“nordic” alone: 3',
      expect.stringMatching(/^“kettlebell” alone: \d+$/),
      '“xylophone” stands in no card. Look at its letters, or take another word.',
    ]);
    expect(found).toHaveLength(3);
    expect(await inBothSchemes(pages.get(320)!, address)).toEqual(NOTHING);
  });

  it('offers the words without the filters', async () => {
    const address = `${site.address}exercises.html?q=nordic&kind=mobility`;
    const found = await opened(browser, address, {}, async (page) => {
      await page.getByRole('button', { name: 'The same words without the filters: 3' }).click();
      return shown(page);
    });
    expect(found).toHaveLength(3);
  });

  it('stands there whole without a script, without filters that could not work', async () => {
    const [ids, forms] = await opened(
      browser,
      `${site.address}exercises.html?squeeze=high`,
      { javaScriptEnabled: false },
      async (page) => [
        await page.locator('[data-entry]:visible a').count(),
        await page.locator('form:visible').count(),
      ],
    );
    expect([ids, forms]).toEqual([shipped.cards.length, 0]);
  });

  it('goes back to what was asked', async () => {
    const ids = await opened(browser, `${site.address}exercises.html`, {}, async (page) => {
      await page.locator('#search').fill('hop');
      const before = await shown(page);
      await page.locator('[data-entry]:visible a').first().click();
      await page.waitForURL(/exercises\/[\w-]+\.html$/);
      await page.goBack();
      expect(await page.locator('#search').inputValue()).toBe('hop');
      expect(await shown(page)).toEqual(before);
      return before;
    });
    expect(ids.length).toBeGreaterThan(0);
    expect(ids.length).toBeLessThan(shipped.cards.length);
  });

  it('works from a disk, by double click', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'library-'));
    for (const { path, content } of files) {
      mkdirSync(dirname(join(folder, path)), { recursive: true });
      writeFileSync(join(folder, path), content);
    }
    const said: string[] = [];
    const result = await opened(
      browser,
      pathToFileURL(join(folder, 'public/exercises.html')).href,
      {},
      async (page) => {
        page.on('console', (message) => said.push(message.text()));
        await page.locator('#search').fill('bridge');
        const ids = await shown(page);
        const [url, font] = [
          page.url(),
          await page.evaluate<string>('getComputedStyle(document.body).fontFamily'),
        ];
        const drawn = await page.evaluate<number>(
          '[...document.images].filter((one) => one.complete && one.naturalWidth > 0).length',
        );
        await page.locator('[data-entry]:visible a').first().click();
        await page.waitForURL(/exercises\/[\w-]+\.html$/);
        return { ids, url, font, drawn, title: await page.title() };
      },
    );
    expect(said).toEqual([]);
    expect(result.ids.length).toBeGreaterThan(3);
    expect(result.ids.length).toBeLessThan(shipped.cards.length);
    expect(new URL(result.url).search).toBe('?q=bridge');
    expect(result.font).toContain('Atkinson');
    expect(result.drawn).toBeGreaterThan(0);
    expect(result.title).toContain('Larkfield');
  });
});

describe('hostile titles in the index', () => {
  const words = [
    '<script>globalThis.caught=1</script>',
    '"><img src=x onerror="globalThis.caught=1">',
    '${alert(1)}',
    "');globalThis.caught=1;('",
    'w'.repeat(199),
    'مرحبا بالعالم',
  ];

  it.each(words)('%j runs nothing, is found, and fits 320 px', async (title) => {
    const bridge = SAMPLE['exercises/bridge.md'].replace(
      /^title: .*$/m,
      () => `title: ${JSON.stringify(title)}`,
    );
    const other = await served(libraryPages(sampleView({ 'exercises/bridge.md': bridge }), assets));
    try {
      const result = await opened(
        browser,
        `${other.address}exercises.html`,
        { viewport: { width: 320, height: 800 } },
        async (page) => {
          await page.locator('#search').fill(title);
          const texts = await page.locator('[data-entry]:visible h3').allTextContents();
          await page.locator('[data-entry]:visible a').first().click();
          await page.waitForURL(/exercises\/[\w-]+\.html$/);
          return [
            texts.map((text) => text.trim()).includes(title),
            await page.locator('h1').textContent(),
            await page.evaluate<unknown>('globalThis.caught ?? null'),
            await page.evaluate<number>('document.documentElement.scrollWidth'),
          ];
        },
      );
      expect(result).toEqual([true, title, null, 320]);
      expect(other.missed).toEqual([]);
    } finally {
      other.server.close();
    }
  });
});
