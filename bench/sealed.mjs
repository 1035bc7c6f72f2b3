// The sealed page: its size, and when it and the leaflet in it are painted on a phone's screen, the processor slowed four
// times, in Chromium, from a server on this machine, since a file has no means to open it.
// Run after `npm run prepare`.
import { createServer } from 'node:http';
import { readPageAssets, readSealedAssets } from '#dist/shell/io/assets.js';
import { sealedOf } from '#dist/post/sealedFiles.js';
import { leafletHtml } from '#dist/outputs/html/leaflet.js';
import { startChromium } from './chromium.mjs';
import { median } from './clock.mjs';
import { tell } from './row.mjs';
import { cases, demos, programmeOf } from './shipped.mjs';

const SIZE_LIMIT_KB = 140;
const PAINT_LIMIT_MS = 300;
const SLOWED = 4;
const ROUNDS = 9;

const assets = await readPageAssets();
const sealing = {
  site: 'https://clinic.example/',
  secret: new Uint8Array(32).fill(7),
  dress: await readSealedAssets(),
};
const programmes = [...demos, ...cases].flatMap((consult) => programmeOf(consult) ?? []);
const pages = [];
for (const programme of programmes) pages.push(await pageOf(programme));
const fullest = pages.reduce((one, other) => (other.octets > one.octets ? other : one));
tell({
  what: `largest sealed page of ${pages.length}, without photos (${fullest.alias})`,
  value: fullest.octets / 1000,
  unit: 'KB',
  limit: SIZE_LIMIT_KB,
});
const paints = await paintsOf(fullest);
const what = `first paint of a sealed page, processor slowed ${SLOWED} times`;
tell({ what, value: paints?.first ?? null, unit: 'ms', limit: PAINT_LIMIT_MS });
tell({ what: 'the title of the leaflet in it drawn', value: paints?.leaflet ?? null, unit: 'ms' });

async function pageOf(programme) {
  const html = leafletHtml(programme, assets).replace('<h1', '<h1 elementtiming="leaflet"');
  const { alias, files, link } = await sealedOf(programme, html, sealing);
  const text = files.find(({ path }) => path.endsWith('index.html')).bytes;
  return { alias, text, octets: Buffer.byteLength(text), key: new URL(link.address).hash };
}

/** Medians in milliseconds from the start of the navigation; null without a browser. */
async function paintsOf({ text, key }) {
  const browser = await startChromium();
  if (browser === null) return null;
  const server = createServer((_, answer) =>
    answer.writeHead(200, { 'content-type': 'text/html; charset=utf-8' }).end(text),
  );
  await new Promise((ready) => server.listen(0, '127.0.0.1', ready));
  const address = `http://127.0.0.1:${server.address().port}/for/abc/${key}`;
  const times = [];
  for (let round = 0; round < ROUNDS; round += 1) times.push(await paintsMs(browser, address));
  await browser.close();
  server.close();
  return {
    first: median(times.map(({ first }) => first)),
    leaflet: median(times.map(({ leaflet }) => leaflet)),
  };
}

async function paintsMs(browser, address) {
  const context = await browser.newContext({
    viewport: { width: 390, height: 844 },
    serviceWorkers: 'block',
  });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: SLOWED });
  await page.goto(address);
  const times = await page.evaluate(
    () =>
      new Promise((done) => {
        const seen = {};
        const observer = new PerformanceObserver((list) => {
          for (const { name, identifier, startTime } of list.getEntries())
            seen[identifier ?? name] = startTime;
          const { leaflet } = seen;
          const first = seen['first-contentful-paint'];
          if (first && leaflet) done({ first, leaflet });
        });
        for (const type of ['paint', 'element']) observer.observe({ type, buffered: true });
      }),
  );
  await context.close();
  return times;
}
