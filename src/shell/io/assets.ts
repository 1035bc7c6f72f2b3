/** What is shipped with the tool and dresses every output: tokens, styles, fonts, templates, starters, version. */
import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { PageAssets, PageFiles } from '../../outputs/html/assets.ts';
import type { SealedDress } from '../../post/sealedFiles.ts';
import type { PaperAssets } from '../../outputs/pdf/leaflet.ts';
import type { LetterPairs } from '../../outputs/pdf/letterPairs.ts';
import type { LiveScripts } from '../server/server.ts';

type PairsOfFaces = Readonly<Record<'regular' | 'bold', LetterPairs>>;

// dist/shell/ and src/shell/ lie equally deep, so the same way leads to the top from both.
const TOP = new URL('../../../', import.meta.url);

export const TEMPLATES = fileURLToPath(new URL('templates/', TOP));

/** What a thread of the crew starts with: compiled, wherever this file lies. */
export function crewProgram(): URL {
  return new URL('dist/shell/crewMain.js', TOP);
}

/** The folder of the shipped library. */
export const SHIPPED = fileURLToPath(new URL('content/', TOP));

type Letters = 'latin' | 'few-letters';

const pageFont = (letters: Letters, weight: 400 | 700) =>
  `shared/fonts/atkinson-hyperlegible-next-${letters}-${weight}-normal.woff2`;

const WEIGHTS = [400, 700] as const;

const PAPER_FONTS = {
  regular: 'shared/fonts/AtkinsonHyperlegibleNext_400Regular.ttf',
  bold: 'shared/fonts/AtkinsonHyperlegibleNext_700Bold.ttf',
} as const;

export function version(): string {
  return (JSON.parse(read('package.json')) as { version: string }).version;
}

/** The starter file of a kind, as it stands before ids and dates are written into it. */
export function starterText(kind: string): string {
  return read(`shared/starters/${kind}.md`);
}

export async function readPageAssets(logo: Uint8Array | null = null): Promise<PageAssets> {
  const { pageAssets } = await import('../../outputs/html/assets.ts');
  return pageAssets(pageFiles(), logo);
}

/** Style, faces and scripts of the pages, as they are read. */
export function pageFiles(): PageFiles {
  return {
    tokens: tokens(),
    styles: {
      sheet: read('dist/styles/sheet.css'),
      leaflet: read('dist/styles/leaflet.css'),
      record: read('dist/styles/record.css'),
      public: read('dist/styles/public.css'),
      desk: read('dist/styles/desk.css'),
    },
    fonts: pageFaces('latin'),
    fewLetters: pageFaces('few-letters'),
    arrival: read('dist/scripts/arrival.js'),
    inUse: read('dist/scripts/inUse.js'),
    script: read('dist/scripts/leaflet.js'),
    catalogue: read('dist/scripts/catalogue.js'),
  };
}

function pageFaces(letters: Letters): PageFiles['fonts'] {
  return WEIGHTS.map((weight) => ({ weight, base64: bytes(pageFont(letters, weight)).toString('base64') }));
}

/** The desk's own scripts. */
export const DESK_SCRIPTS = ['yaml', 'desk', 'worker', 'later', 'paper', 'post'] as const;

export function deskScript(name: (typeof DESK_SCRIPTS)[number]): string {
  return read(`dist/desk/${name}.js`);
}

/** The two cuts of the printed typeface, TrueType. */
export function printedFaces(): Readonly<Record<'regular' | 'bold', Uint8Array>> {
  return {
    regular: bytes('shared/fonts/AtkinsonHyperlegibleNext_400Regular.ttf'),
    bold: bytes('shared/fonts/AtkinsonHyperlegibleNext_700Bold.ttf'),
  };
}

export async function readSealedAssets(): Promise<SealedDress> {
  const { hashed } = await import('../../outputs/html/assets.ts');
  return {
    assets: {
      style: hashed(read('dist/styles/sealed.css')),
      script: hashed(read('dist/scripts/sealed.js')),
      withdrawn: hashed(read('dist/scripts/withdrawn.js')),
    },
    worker: `${read('dist/scripts/sealedWorker.js')}\n`,
    withdrawnWorker: `${read('dist/scripts/withdrawnWorker.js')}\n`,
  };
}

/** What `serve` puts into the pages it shows, and what they share. */
export function liveScripts(): LiveScripts {
  return { page: read('dist/scripts/live.js'), worker: read('dist/scripts/liveWorker.js') };
}

export async function readPaperAssets(logo: Uint8Array | null): Promise<PaperAssets> {
  const { openFonts } = await import('../../outputs/pdf/fonts.ts');
  const fonts = openFonts(bytes(PAPER_FONTS.regular), bytes(PAPER_FONTS.bold), letterPairs());
  return { fonts, tokens: tokens(), logo };
}

/** What `scripts/program.mjs` kept when it built the demo; null before. */
export function shippedLibrary(): Buffer | null {
  const place = new URL('dist/program/library.bin', TOP);
  return existsSync(place) ? readFileSync(place) : null;
}

/** What the printed faces do with letters side by side, as it was kept when the program was made; undefined before. */
function letterPairs() {
  const place = new URL('dist/program/letters.json', TOP);
  return existsSync(place) ? (JSON.parse(readFileSync(place, 'utf8')) as PairsOfFaces) : undefined;
}

/** What decides about the bytes of an output: the mark of the compiled code, and what is shipped beside it. */
export function programFiles(): Buffer[] {
  return [
    'dist/.compiled-from',
    'package.json',
    'shared/tokens.json',
    ...Object.values(PAPER_FONTS),
    ...(['latin', 'few-letters'] as const).flatMap((letters) =>
      WEIGHTS.map((weight) => pageFont(letters, weight)),
    ),
  ].map(bytes);
}

function tokens() {
  return JSON.parse(read('shared/tokens.json'));
}

function read(file: string): string {
  return readFileSync(new URL(file, TOP), 'utf8');
}

function bytes(file: string): Buffer {
  return readFileSync(new URL(file, TOP));
}
