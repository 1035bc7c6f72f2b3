// Programmes as pages: 200 through Eleventy against a plain writer, milliseconds a programme, the size of the fullest.
// Run after `npm run prepare`.
import { gzipSync } from 'node:zlib';
import { readPageAssets, TEMPLATES } from '#dist/shell/io/assets.js';
import { leafletHtml } from '#dist/outputs/html/leaflet.js';
import { recordHtml } from '#dist/outputs/html/record.js';
import { renderPages } from '#dist/outputs/html/site.js';
import { medianMs } from './clock.mjs';
import { tell } from './row.mjs';
import { cases, copiesOf, demos, programmeOf } from './shipped.mjs';
import { bothWays, writeOut } from './written.mjs';

const PROGRAMMES = 200;
const ROUNDS = 120;
const RATIO_LIMIT = 2.5;
const PAGE_LIMIT_MS = 15;
const SIZE_LIMIT_KB = 220;
const PACKED_LIMIT_KB = 80;

const [way] = process.argv.slice(2);
const assets = await readPageAssets();
if (way === undefined) await measure();
else {
  const many = copiesOf(
    demos.map((consult) => programmeOf(consult)),
    PROGRAMMES,
  );
  await writeOut(() =>
    way === 'plain'
      ? many.flatMap((programme) => [
          { path: `private/${programme.alias}/leaflet.html`, content: leafletHtml(programme, assets) },
          { path: `private/${programme.alias}/record.html`, content: recordHtml(programme, assets) },
        ])
      : renderPages(many, null, assets, TEMPLATES),
  );
}

async function measure() {
  const programmes = [...demos, ...cases].flatMap((consult) => programmeOf(consult) ?? []);
  const copies = copiesOf(programmes, ROUNDS);
  for (const [what, page] of [
    ['leaflet', leafletHtml],
    ['record', recordHtml],
  ]) {
    const value = await medianMs(ROUNDS, (round) => page(copies[round], assets));
    tell({ what: `${what}.html of a programme`, value, unit: 'ms', limit: PAGE_LIMIT_MS });
  }
  const { plainMs, eleventyMs } = bothWays(import.meta.url);
  const times = eleventyMs / plainMs;
  tell({ what: `${PROGRAMMES} programmes through Eleventy`, value: eleventyMs, unit: 'ms' });
  tell({
    what: 'the same to a plain writer of the same bytes',
    value: times,
    unit: 'times',
    limit: RATIO_LIMIT,
  });
  const largest = (sizeOf, how, limit) => {
    const sizes = programmes.map((programme) => sizeOf(leafletHtml(programme, assets)) / 1000);
    const value = Math.max(...sizes);
    const { alias } = programmes[sizes.indexOf(value)];
    tell({ what: `largest leaflet.html of ${sizes.length}${how} (${alias})`, value, unit: 'KB', limit });
  };
  largest((text) => Buffer.byteLength(text), '', SIZE_LIMIT_KB);
  largest((text) => gzipSync(text).length, ', gzipped', PACKED_LIMIT_KB);
}
