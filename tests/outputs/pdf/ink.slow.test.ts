/** Pages drawn to pixels by pdf.js: ink where a text stands, nothing over the edge, nothing over something else. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openFonts } from '../../../src/outputs/pdf/fonts.ts';
import { leafletPdf } from '../../../src/outputs/pdf/leaflet.ts';
import { otter } from '../../fixtures/programme.ts';
import { brokenRules } from './check.ts';
import { assets, leafletOf } from './make.ts';
import { readObjects } from './objects.ts';
import { inkIn, openPdf, pictureOf, textBoxes } from './viewer.ts';

/** Pixels a point: a hairline of half a point is still seen. */
const SCALE = 2;

/** Least difference in brightness that counts as ink, of 255: quiet grey on white has some 170, its thin strokes less. */
const INK = 60;

async function boxesWithoutInk(bytes: Uint8Array): Promise<readonly string[]> {
  const pdf = await openPdf(bytes);
  const blank: string[] = [];
  for (let at = 1; at <= pdf.numPages; at++) {
    const page = await pdf.getPage(at);
    const picture = await pictureOf(pdf, page, SCALE);
    for (const box of await textBoxes(page))
      if (inkIn(picture, box) < INK) blank.push(`page ${at}: ${box.text}`);
  }
  await pdf.destroy();
  return blank;
}

describe('every text leaves ink', () => {
  it.each([
    ['A4', otter],
    ['Letter', { ...otter, paper: 'Letter' as const }],
  ])('%s', async (_, programme) => {
    expect(await boxesWithoutInk(await leafletOf(programme))).toEqual([]);
  });

  it('sees the fault it is here for: letters without outlines pass every text check and leave blank pages', async () => {
    const blanked = (file: string) =>
      withoutOutlines(readFileSync(`shared/fonts/AtkinsonHyperlegibleNext_${file}.ttf`));
    const blank = openFonts(blanked('400Regular'), blanked('700Bold'));
    const bytes = await leafletPdf(otter, { ...assets, fonts: blank });
    expect(brokenRules(readObjects(bytes))).toEqual([]);
    const found = await boxesWithoutInk(bytes);
    expect(found.length).toBeGreaterThan(200);
  });

  it('WOFF2, which pdfkit takes and draws blank or breaks on, is refused', () => {
    const woff2 = readFileSync('shared/fonts/atkinson-hyperlegible-next-latin-400-normal.woff2');
    expect(() => openFonts(woff2, woff2)).toThrow(
      'the regular font is not a TrueType file; its first bytes are 119 79 70 50',
    );
  });
});

/** The font with every glyph's outline emptied: table `glyf` filled with zeros (no contours). */
function withoutOutlines(font: Uint8Array): Uint8Array {
  const bytes = Buffer.from(font);
  for (let at = 0; at < bytes.readUInt16BE(4); at++) {
    const entry = 12 + 16 * at;
    if (bytes.toString('latin1', entry, entry + 4) !== 'glyf') continue;
    const start = bytes.readUInt32BE(entry + 8);
    bytes.fill(0, start, start + bytes.readUInt32BE(entry + 12));
  }
  return bytes;
}
