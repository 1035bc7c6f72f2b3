/** Leaflets for the tests of this room, made from the files the shell would read. */
import { readFileSync } from 'node:fs';
import { openFonts } from '../../../src/outputs/pdf/fonts.ts';
import { leafletPdf, type PaperAssets } from '../../../src/outputs/pdf/leaflet.ts';
import { measurerOf } from '../../../src/outputs/pdf/measurer.ts';
import type { PaperTokens } from '../../../src/outputs/pdf/sheet.ts';
import type { Programme } from '../../../src/programme/programme.ts';

export const tokens = JSON.parse(readFileSync('shared/tokens.json', 'utf8')) as PaperTokens;

export const fonts = openFonts(
  readFileSync('shared/fonts/AtkinsonHyperlegibleNext_400Regular.ttf'),
  readFileSync('shared/fonts/AtkinsonHyperlegibleNext_700Bold.ttf'),
);

export const measurer = measurerOf(fonts);

export const assets: PaperAssets = { fonts, tokens, logo: null };

const made = new Map<Programme, Promise<Uint8Array>>();

/** The leaflet of a programme, made once for all tests of a file. */
export function leafletOf(programme: Programme): Promise<Uint8Array> {
  const known = made.get(programme) ?? leafletPdf(programme, assets);
  made.set(programme, known);
  return known;
}
