// Chromium for what only a browser can tell; null where none is installed.
import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';

const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
const QUIET = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
];

/** A browser that has started, with the name of nothing open. */
export async function startChromium() {
  const executablePath = process.env.CHROMIUM ?? PLACES.find((place) => existsSync(place));
  return executablePath === undefined ? null : chromium.launch({ executablePath, args: QUIET });
}
