// The scripts and styles of the pages, each as one small text that stands inside a page: no module, no import, no request.
import { buildSync, transformSync } from 'esbuild';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const TOP = dirname(dirname(fileURLToPath(import.meta.url)));
const CLIENT = join(TOP, 'src', 'client');
const STYLES = join(TOP, 'templates', 'styles');

/** By the name of the script in `dist/scripts/`. */
export const SCRIPTS = {
  arrival: 'arrival.ts',
  leaflet: 'leaflet.ts',
  inUse: 'inUse/inUse.ts',
  live: 'live.ts',
  liveWorker: 'liveWorker.ts',
  catalogue: 'catalogue/catalogue.ts',
  sealed: 'sealed/sealed.ts',
  sealedWorker: 'sealed/worker.ts',
  withdrawn: 'sealed/withdrawn.ts',
  withdrawnWorker: 'sealed/withdrawnWorker.ts',
};
export const SHEETS = ['sheet', 'leaflet', 'record', 'public', 'sealed'];

/** One plain script with all it imports, for browsers back to 2020: pages opened from a disk may not load modules. */
export function bundledScript(name) {
  const { outputFiles } = buildSync({
    entryPoints: [join(CLIENT, SCRIPTS[name])],
    bundle: true,
    format: 'iife',
    target: 'es2020',
    minify: true,
    legalComments: 'none',
    charset: 'utf8',
    write: false,
    logLevel: 'silent',
  });
  return outputFiles[0].text.trim();
}

/** A style sheet without comments and spare white space. */
export function bundledSheet(name) {
  const { code } = transformSync(readFileSync(join(STYLES, `${name}.css`), 'utf8'), {
    loader: 'css',
    minifyWhitespace: true,
    charset: 'utf8',
    legalComments: 'none',
  });
  return code.trim();
}
