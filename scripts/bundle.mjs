// The scripts and styles of the pages, each as one small text that stands inside a page: no module, no import, no request.
import { build, buildSync, transformSync } from 'esbuild';
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const TOP = dirname(dirname(fileURLToPath(import.meta.url)));
const CLIENT = join(TOP, 'src', 'client');
const DESK = join(TOP, 'src', 'desk');
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
export const SHEETS = ['sheet', 'leaflet', 'record', 'public', 'sealed', 'desk'];

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

/** The desk's own scripts, by the names they have in `dist/desk/`: the page, the thread that decides, what draws PDFs, and what writes the post. */
export const DESK_SCRIPTS = {
  desk: 'page/desk.tsx',
  worker: 'worker/worker.ts',
  paper: 'worker/paper.ts',
  post: 'worker/post.ts',
};

const SHIMS = join(TOP, 'src', 'desk', 'shims');

/** zod brings its own sentences in fifty languages, a quarter of the script; ours are said in their place anyway. */
const oneLanguage = {
  name: 'one-language',
  setup({ onLoad }) {
    onLoad({ filter: /zod[\\/]v4[\\/]locales[\\/]index\.js$/ }, () => ({
      contents: "export { default as en } from './en.js';",
      loader: 'js',
    }));
  },
};

/** The rooms run in a browser as they are; what they ask of Node is done by shims. */
export async function bundledDeskScript(name) {
  const { outputFiles } = await build({
    entryPoints: [join(DESK, DESK_SCRIPTS[name])],
    bundle: true,
    format: 'iife',
    target: 'es2022',
    minify: true,
    legalComments: 'none',
    charset: 'utf8',
    jsx: 'automatic',
    jsxImportSource: 'preact',
    write: false,
    logLevel: 'silent',
    alias: {
      'node:crypto': join(SHIMS, 'crypto.ts'),
      // Its build for browsers is no stream, and draws other bytes.
      ...(name === 'paper'
        ? {
            pdfkit: join(TOP, 'node_modules', 'pdfkit', 'js', 'pdfkit.node.mjs'),
            stream: join(SHIMS, 'stream.ts'),
            zlib: join(SHIMS, 'zlib.ts'),
            // For web fonts (WOFF2), which paper never has.
            'brotli/decompress.js': join(SHIMS, 'nothing.ts'),
            fs: join(SHIMS, 'nothing.ts'),
            module: join(SHIMS, 'nothing.ts'),
          }
        : {}),
    },
    plugins: [oneLanguage],
    // pdfkit asks for its colour profile beside itself; a script that is no module has no place.
    define: { 'import.meta.url': '"https://desk.invalid/"' },
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
