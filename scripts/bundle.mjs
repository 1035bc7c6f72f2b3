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

/**
 * The desk's own scripts, by the names they have in `dist/desk/`: the reader of YAML, the page and the thread that decides,
 * which both come after it, what draws PDFs, and what writes the post.
 */
export const DESK_SCRIPTS = {
  yaml: 'yaml.ts',
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

const shim = (name) => join(SHIMS, `${name}.ts`);
const nothing = shim('nothing');

/** What stands for a package in a script. */
const INSTEAD = {
  yaml: {},
  desk: { yaml: shim('yaml') },
  worker: { yaml: shim('yaml'), 'linkify-it': nothing },
  post: {},
  paper: {
    // Its build for browsers is no stream, and draws other bytes.
    pdfkit: join(TOP, 'node_modules', 'pdfkit', 'js', 'pdfkit.node.mjs'),
    stream: shim('stream'),
    // Packs alone: unpacking is as much again.
    pako: join(TOP, 'node_modules', 'pako', 'lib', 'deflate.js'),
    // For web fonts (WOFF2), which paper never has.
    'brotli/decompress.js': nothing,
    '@noble/ciphers/aes': nothing,
    linebreak: nothing,
    fs: nothing,
    module: nothing,
    zlib: nothing,
  },
};

/**
 * Sentences for authors and for the public pages, which the desk has none of: a tenth of the worker. A test holds that
 * nothing in it asks for one.
 */
export const OTHERS_WORDS =
  /messages[\\/]en[\\/](author[\\/](lexicon|library|pictured|poses|words)|catalogue[\\/](authors|estimates|glossary|libraryLabels|muscleNumbers|numbers|protocol|searchTerms|site))\.ts$/;
const withoutOthersWords = {
  name: 'without-others-words',
  setup({ onLoad }) {
    onLoad({ filter: OTHERS_WORDS }, () => ({ contents: 'export {};', loader: 'js' }));
  },
};

/** The rooms run in a browser as they are; what they ask of Node is done by shims. */
export async function bundledDeskScript(name) {
  return (await builtDeskScript(name)).outputFiles[0].text.trim();
}

/** The same with the files it is made of, in `metafile.inputs`. */
export function builtDeskScript(name) {
  return build({
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
    alias: { 'node:crypto': join(SHIMS, 'crypto.ts'), ...INSTEAD[name] },
    // A worker is told by its name where the reader of YAML lies.
    ...(name === 'worker' ? { banner: { js: 'importScripts(name);' } } : {}),
    plugins: [oneLanguage, withoutOthersWords],
    metafile: true,
    // pdfkit asks for its colour profile beside itself; a script that is no module has no place.
    define: { 'import.meta.url': '"https://desk.invalid/"' },
  });
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
