// Draws the picture of the README: an excerpt of the demo consult beside the leaflet made from it.
// Needs a finished build in _site and Chromium.
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import sharp from 'sharp';

const KEYS = [
  'alias',
  'side',
  'stage',
  'usualMorningPain',
  'tests',
  'testedSets',
  'kit',
  'days',
  'minutesPerDay',
];
const WIDTH = 1280;
const HEIGHT = 920;

const excerpt = sections(readFileSync('content/consults/otter-r1.md', 'utf8').split('---\n')[1] ?? '');
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: [
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
});
const phone = await shot(pathToFileURL('_site/private/otter/leaflet.html').href, 390, HEIGHT, null);
const exercise = await shot(pathToFileURL('_site/private/otter/leaflet.html').href, 390, HEIGHT, 2);
const page = await browser.newPage({ viewport: { width: WIDTH, height: HEIGHT } });
await page.setContent(`<style>
  body { margin: 0; display: grid; grid-template-columns: 460px 390px 390px; gap: 20px; background: #e4e7e8; height: ${HEIGHT}px; overflow: hidden }
  pre { margin: 0; padding: 24px 28px; background: #fdfdfc; color: #182026; font: 13px/1.5 monospace; height: ${HEIGHT}px; box-sizing: border-box; overflow: hidden }
  img { display: block }
</style><pre>${escape(excerpt)}</pre><img src="data:image/png;base64,${phone}"><img src="data:image/png;base64,${exercise}">`);
const drawn = await page.screenshot();
await browser.close();
await sharp(drawn).png({ palette: true, colours: 64, compressionLevel: 9 }).toFile('shared/readme.png');

async function shot(address, width, height, at) {
  const view = await browser.newPage({ viewport: { width, height }, colorScheme: 'light' });
  await view.goto(address);
  if (at !== null) await view.locator(`#exercise-${at}`).evaluate((element) => element.scrollIntoView());
  const picture = await view.screenshot();
  await view.close();
  return picture.toString('base64');
}

/** The lines of the keys that say most, with a mark where others were left out. */
function sections(head) {
  const blocks = head.split(/\n(?=[a-zA-Z])/);
  const kept = blocks.map((block) => (KEYS.includes(block.split(':')[0]) ? block.trimEnd() : '...'));
  return kept.filter((block, index) => block !== '...' || kept[index - 1] !== '...').join('\n');
}

function escape(text) {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;');
}
