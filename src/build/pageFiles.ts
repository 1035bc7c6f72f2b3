/** Reads what the pages are dressed with from the installed package: tokens, styles, fonts, the compiled script. */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { PageFiles } from '../page/assets.ts';

const root = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const text = (path: string) => readFileSync(root(path), 'utf8');
const face = (weight: 400 | 700) => ({
  weight,
  base64: readFileSync(
    root(`shared/fonts/atkinson-hyperlegible-next-latin-${weight}-normal.woff2`),
    'base64',
  ),
});

/** The folder of the templates, for Eleventy. */
export const TEMPLATES = root('templates');

/** The files of the page; throws when the package is not whole or was not compiled. */
export function readPageFiles(): PageFiles {
  return {
    tokens: JSON.parse(text('shared/tokens.json')) as PageFiles['tokens'],
    styles: {
      sheet: text('templates/styles/sheet.css'),
      leaflet: text('templates/styles/leaflet.css'),
      record: text('templates/styles/record.css'),
      public: text('templates/styles/public.css'),
    },
    fonts: [face(400), face(700)],
    script: text('dist/page/client/leaflet.js'),
  };
}
