/** Hostile words wherever an author may write them: valid markup by html-validate 10.17, and nothing that runs or asks. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { libraryPages } from '../../../../src/outputs/html/site.ts';
import { libraryView } from '../../../../src/catalogue/libraryView.ts';
import type { LibraryView } from '../../../../src/catalogue/view.ts';
import { filesWith, SAMPLE, spoilt } from '../../../content/sample.ts';
import { NAUGHTY } from '../../../laws/naughty.ts';
import { assets } from '../assets.ts';
import { launch, opened } from '../browser.ts';
import { libraryOf, sampleView } from '../libraries.ts';
import { unescaped } from '../readBack.ts';
import { faultsOf } from '../validate.ts';
import { served } from './publicServer.ts';

const HOSTILE = [
  ...NAUGHTY,
  '<script>globalThis.caught=1</script>',
  '"><img src=x onerror="globalThis.caught=1">',
  "' onfocus='globalThis.caught=1' autofocus='",
  '</li></ul></main><svg onload=globalThis.caught=1>',
  '`-globalThis.caught=1-`',
  'https://elsewhere.example/p.gif',
  '--></style><style>@import"//elsewhere.example"',
].filter((text) => text.trim() !== '' && text.length <= 300);

/** The text in every place of the sample that takes one line, or null where content refuses it. */
function viewWith(text: string): LibraryView | null {
  const quoted = JSON.stringify(text);
  const bridge = spoilt('exercises/bridge.md', 'cautions: [Keep the pelvis level.]', `cautions: [${quoted}]`)
    .replace('{ cite: house choice, mark: choice }', () => `{ cite: ${quoted}, mark: choice }`)
    .replace('harder:', () => `photos: [{ file: a.jpg, alt: ${quoted} }]\nharder:`);
  const changes = {
    'exercises/bridge.md': bridge,
    'clinic.md': spoilt('clinic.md', 'name:', `name: ${quoted} #`),
  };
  const picture = { file: 'exercises/a.jpg', bytes: new Uint8Array(), link: 'no' } as const;
  try {
    const photo = { name: 'bridge-1', alt: text.trim(), sizes: [{ widthPx: 480, heightPx: 320 }] };
    const library = libraryOf([...filesWith(changes), picture]);
    return libraryView(library, new Map([['bridge', [photo]]]), new Map());
  } catch {
    return null;
  }
}

const admitted = HOSTILE.flatMap((text) => {
  const view = viewWith(text);
  return view === null ? [] : [{ text, view }];
});

describe('hostile cautions, sources, photos and clinics', () => {
  it('get past content in good number', () => {
    expect(admitted.length).toBeGreaterThan(50);
  });

  it.each(admitted)('$text: its page is valid', async ({ view }) => {
    const page = libraryPages(view, assets).find(({ path }) => path === 'public/exercises/bridge.html');
    expect(await faultsOf(page?.content ?? '')).toEqual([]);
  });
});

describe('hostile titles', () => {
  const bridge = SAMPLE['exercises/bridge.md'];
  const shown = NAUGHTY.filter(
    (text) => text.trim() !== '' && text.length < 200 && !/[\n\r]/.test(text),
  ).flatMap((text) => {
    try {
      return [
        [
          text,
          sampleView({
            'exercises/bridge.md': bridge.replace(/^title: .*$/m, () => `title: ${JSON.stringify(text)}`),
          }),
        ] as const,
      ];
    } catch {
      // Content refuses what misleads; those never reach a page.
      return [];
    }
  });

  it('enough of them get past content', () => {
    expect(shown.length).toBeGreaterThan(30);
  });

  it.each(shown)('%j stands as text, in title, heading and index', (text, view) => {
    const made = new Map(libraryPages(view, assets).map(({ path, content }) => [path, content]));
    const title = view.cards.find(({ id }) => id === 'bridge')?.title ?? '';
    const card = made.get('public/exercises/bridge.html') ?? '';
    expect(unescaped(/<h1>([^<]*)<\/h1>/.exec(card)?.[1] ?? '')).toBe(title);
    expect(unescaped(/<title>([^<]*)<\/title>/.exec(card)?.[1] ?? '')).toContain(title);
    const entry = /<a href="exercises\/bridge\.html"[^>]*>\s*<bdi>([^<]*)<\/bdi>/.exec(
      made.get('public/exercises.html') ?? '',
    );
    expect(unescaped(entry?.[1] ?? '')).toBe(title);
    expect(text.trim()).toBe(title);
  });
});

describe('in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser.close());

  it('all of them at once are read as they were written; nothing runs, and nobody else is asked', async () => {
    const words = admitted.map(({ text }) => text.trim());
    const bridge = spoilt(
      'exercises/bridge.md',
      'cautions: [Keep the pelvis level.]',
      `cautions: ${JSON.stringify(words)}`,
    );
    const library = libraryOf(filesWith({ 'exercises/bridge.md': bridge }));
    const site = await served(libraryPages(libraryView(library, new Map(), new Map()), assets));
    const said: string[] = [];
    try {
      const options = { viewport: { width: 320, height: 800 } };
      const seen = await opened(browser, `${site.address}exercises/bridge.html`, options, async (page) => {
        page.on('request', (request) => said.push(request.url()));
        page.on('console', (message) => said.push(message.text()));
        await page.reload();
        return {
          texts: await page.locator('#watch li').allTextContents(),
          caught: await page.evaluate<unknown>('globalThis.caught ?? null'),
          wide: await page.evaluate<number>('document.documentElement.scrollWidth'),
        };
      });
      expect(seen).toEqual({ texts: words, caught: null, wide: 320 });
      expect(said.filter((one) => !one.startsWith(site.address) && !one.startsWith('data:'))).toEqual([]);
      expect(site.missed).toEqual([]);
    } finally {
      site.server.close();
    }
  });
});
