/** What is shipped with the tool and dresses every output: tokens, styles, fonts, templates, starters, version. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { PageAssets, PageFiles } from '../../outputs/html/assets.ts';
import type { PaperAssets } from '../../outputs/pdf/leaflet.ts';
import type { LiveScripts } from '../server/server.ts';

// dist/shell/ and src/shell/ lie equally deep, so the same way leads to the top from both.
const TOP = new URL('../../../', import.meta.url);

export const TEMPLATES = fileURLToPath(new URL('templates/', TOP));

/** The folder of the shipped library. */
export const SHIPPED = fileURLToPath(new URL('content/', TOP));

export function version(): string {
  return (JSON.parse(read('package.json')) as { version: string }).version;
}

/** The starter file of a kind, as it stands before ids and dates are written into it. */
export function starterText(kind: string): string {
  return read(`shared/starters/${kind}.md`);
}

export async function pageShelf(logo: Uint8Array | null = null): Promise<PageAssets> {
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
    fonts: ([400, 700] as const).map((weight) => ({
      weight,
      base64: bytes(`shared/fonts/atkinson-hyperlegible-next-latin-${weight}-normal.woff2`).toString(
        'base64',
      ),
    })),
    arrival: read('dist/scripts/arrival.js'),
    script: read('dist/scripts/leaflet.js'),
    catalogue: read('dist/scripts/catalogue.js'),
  };
}

/** One of the desk's own scripts. */
export function deskScript(name: 'desk' | 'worker' | 'paper'): string {
  return read(`dist/desk/${name}.js`);
}

/** The two cuts of the printed typeface, TrueType. */
export function printedFaces(): Readonly<Record<'regular' | 'bold', Uint8Array>> {
  return {
    regular: bytes('shared/fonts/AtkinsonHyperlegibleNext_400Regular.ttf'),
    bold: bytes('shared/fonts/AtkinsonHyperlegibleNext_700Bold.ttf'),
  };
}

/** What `serve` puts into the pages it shows, and what they share. */
export function liveScripts(): LiveScripts {
  return { page: read('dist/scripts/live.js'), worker: read('dist/scripts/liveWorker.js') };
}

export async function paperShelf(logo: Uint8Array | null): Promise<PaperAssets> {
  const { openFonts } = await import('../../outputs/pdf/fonts.ts');
  const { regular, bold } = printedFaces();
  const fonts = openFonts(regular, bold);
  return { fonts, tokens: tokens(), logo };
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
