// The public site of a library of 500 cards: Eleventy against a plain writer, the index's search, the index's size.
// Run after `npm run prepare`.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { buildSync } from 'esbuild';
import { readPageAssets, TEMPLATES } from '#dist/shell/io/assets.js';
import { indexText } from '#dist/outputs/html/public/wordIndex.js';
import { libraryPages, renderPages } from '#dist/outputs/html/site.js';
import { libraryView } from '#dist/catalogue/libraryView.js';
import { manyFiles } from './cards.mjs';
import { startChromium } from './chromium.mjs';
import { medianMs } from './clock.mjs';
import { tell } from './row.mjs';
import { libraryOf } from './shipped.mjs';
import { bothWays, writeOut } from './written.mjs';

// The page's own matcher, which stands in dist/ only within the script of the index.
const catalogue = (name) => fileURLToPath(new URL(`../src/client/catalogue/${name}.ts`, import.meta.url));
const { outputFiles } = buildSync({
  stdin: {
    contents: `export * from '${catalogue('match')}'; export * from '${catalogue('search')}';`,
    resolveDir: '.',
  },
  bundle: true,
  format: 'esm',
  write: false,
});
const { askedWords, isAdmitted, ranked, readIndex } = await import(
  `data:text/javascript,${encodeURIComponent(outputFiles[0].text)}`
);

const RATIO_LIMIT = 3;
const SEARCH_LIMIT_MS = 50;
const INDEX_LIMIT_KB = 150;
const ROUNDS = 25;
const QUERIES = ['s', 'slow bridge', 'a leg on a mat with the heel', 'hamstring tendon', 'nothing like it'];

const [way] = process.argv.slice(2);
const view = libraryView(libraryOf(manyFiles).library, new Map(), new Map());
const assets = await readPageAssets();
if (way === 'plain') await writeOut(() => libraryPages(view, assets));
else if (way === 'eleventy') await writeOut(() => renderPages([], view, assets, TEMPLATES));
else await measure();

async function measure() {
  const cards = `${view.cards.length} cards`;
  const { pages, plainMs, eleventyMs } = bothWays(import.meta.url);
  const times = eleventyMs / plainMs;
  tell({ what: `public site of ${cards}, ${pages} files, through Eleventy`, value: eleventyMs, unit: 'ms' });
  tell({
    what: 'the same to a plain writer of the same bytes',
    value: times,
    unit: 'times',
    limit: RATIO_LIMIT,
  });
  tell({
    what: `search of ${cards}, slowest query`,
    value: await matcherMs(),
    unit: 'ms',
    limit: SEARCH_LIMIT_MS,
  });
  const what = `search of ${cards} in Chromium, slowest query`;
  tell({ what, value: await chromiumMs(), unit: 'ms', limit: SEARCH_LIMIT_MS });
  const { content } = libraryPages(view, assets).find(({ path }) => path === 'public/exercises.html');
  const kilobytes = gzipSync(content).length / 1000;
  tell({ what: `exercises.html of ${cards}, gzipped`, value: kilobytes, unit: 'KB', limit: INDEX_LIMIT_KB });
}

/** The page's own matcher over every row, with a filter of each kind set: index read, words found, filters held. */
async function matcherMs() {
  const rules = Object.fromEntries(view.filters.map(({ key, rule }) => [key, rule]));
  const chosen = Object.fromEntries(view.filters.map(({ key, options }) => [key, [options[0].value]]));
  const text = indexText(view);
  const times = [];
  for (const query of QUERIES)
    times.push(
      await medianMs(ROUNDS, () => {
        const hits = ranked(readIndex(text), askedWords(query));
        hits?.filter(({ card }) => isAdmitted(rules, chosen, view.cards[card].facets));
      }),
    );
  return Math.max(...times);
}

/** From a key pressed to the list laid out anew. */
async function chromiumMs() {
  const browser = await startChromium();
  if (browser === null) return null;
  const out = mkdtempSync(join(tmpdir(), 'bench-site-'));
  for (const { path, content } of libraryPages(view, assets)) {
    mkdirSync(dirname(join(out, path)), { recursive: true });
    writeFileSync(join(out, path), content);
  }
  const page = await browser.newPage();
  await page.goto(pathToFileURL(join(out, 'public/exercises.html')).href);
  const times = [];
  for (const query of QUERIES) times.push(await page.evaluate(searchMs, [query, ROUNDS]));
  await browser.close();
  rmSync(out, { recursive: true });
  return Math.max(...times);
}

/** Runs in the page: the middle of the rounds, the list whole again before each. */
function searchMs([query, rounds]) {
  const input = document.querySelector('input[name="q"]');
  const ask = (text) => {
    const start = performance.now();
    input.value = text;
    input.dispatchEvent(new Event('input', { bubbles: true }));
    document.body.getBoundingClientRect();
    return performance.now() - start;
  };
  const times = Array.from({ length: rounds }, () => {
    ask('');
    return ask(query);
  });
  return times.sort((a, b) => a - b)[Math.floor(rounds / 2)];
}
