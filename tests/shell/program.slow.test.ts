/** The program in one file, with what is kept for its start, makes the bytes that the rooms make from nothing. */
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { openFonts, widthPt } from '../../src/outputs/pdf/fonts.ts';
import { libraryReading } from '../../src/shell/io/libraryReading.ts';
import { readLayers } from '../../src/shell/io/layers.ts';
import { lookAt } from '../../src/shell/io/sources.ts';
import { hashesOf, loadleaf, runHere, shippedClinic, withoutHistory, type Clinic } from './workbench.ts';

let own: Clinic;
beforeAll(() => {
  own = shippedClinic();
});
afterAll(() => own.remove());

describe('the program in one file', () => {
  it('is what the command line runs, with the code the engine made of it', () => {
    for (const file of ['whole/loadleaf.cjs', 'whole/loadleaf.cjs.cache', 'library.bin', 'words.json'])
      expect(existsSync(join('dist/program', file)), file).toBe(true);
  });

  it('builds the demo byte for byte as the rooms do', async () => {
    const out = join(own.top, 'whole');
    expect(loadleaf(['build', '--quiet', '--content', own.content, '--out', out])).toMatchObject({
      exit: 0,
      err: '',
    });
    await own.run('build', '--quiet');
    expect(withoutHistory(hashesOf(out))).toEqual(own.hashes());
    rmSync(out, { recursive: true });
  });

  it('ends as the rooms do where there is something wrong', async () => {
    for (const words of [['buidl'], ['build', 'nobody', '--content', own.content, '--out', own.site]]) {
      const [whole, rooms] = [loadleaf(words), await runHere(words)];
      expect([whole.exit, whole.err]).toEqual([rooms.exit, rooms.err]);
    }
  });
});

describe('what is kept for the start', () => {
  const bytes = (cut: string) => readFileSync(`shared/fonts/AtkinsonHyperlegibleNext_${cut}.ttf`);
  const [regular, bold] = [bytes('400Regular'), bytes('700Bold')];
  const words = JSON.parse(readFileSync('dist/program/words.json', 'utf8')) as Parameters<
    typeof openFonts
  >[2] & {};

  it.each(['regular', 'bold'] as const)(
    'the %s words have the widths and glyphs of words shaped now',
    (cut) => {
      const [kept, shaped] = [openFonts(regular, bold, words), openFonts(regular, bold)];
      const keys = Object.keys(words[cut].runs);
      expect(keys.length).toBeGreaterThan(100);
      for (const key of keys) {
        const [features = '', text = ''] = key.split('\u0000');
        const layout = ({ [cut]: { font } }: typeof kept) =>
          font.layout(text, features === '' ? undefined : features.split(','));
        const of = ({ glyphs, positions, advanceWidth }: ReturnType<typeof layout>) => ({
          glyphs: glyphs.map(({ id, advanceWidth: widths, codePoints }) => [id, widths, [...codePoints]]),
          positions: positions.map(({ xAdvance }) => xAdvance),
          advanceWidth,
        });
        expect(of(layout(kept)), key).toEqual(of(layout(shaped)));
      }
      expect(widthPt(kept[cut], 'Bend the knee 3 × 10', 11, false)).toBe(
        widthPt(shaped[cut], 'Bend the knee 3 × 10', 11, false),
      );
    },
  );

  it('the library read again is the library read from its files, and every place in it', () => {
    const sources = lookAt({ content: own.content, consults: join(own.content, 'consults') });
    const read = readLibrary(...readLayers(own.content).folders);
    libraryReading(own.site, sources, 'a key');
    const again = libraryReading(own.site, sources, 'a key');
    expect(again.library).toEqual(read.library);
    expect(again.counts).toEqual(read.counts);
    expect(again.files.map(({ file }) => file)).toEqual(read.files.map(({ file }) => file));
    for (const id of read.library?.exercises.keys() ?? [])
      for (const path of [[], ['title'], ['body', 0]])
        expect(again.placeOf('exercise', id, path), id).toEqual(read.placeOf('exercise', id, path));
    for (const kind of ['advice', 'protocol', 'clinic'] as const)
      for (const id of ['clinic', 'when-it-flares', 'runner-strength'])
        expect(again.placeOf(kind, id, ['title'])).toEqual(read.placeOf(kind, id, ['title']));
    expect(libraryReading(own.site, sources, 'another key').library).toEqual(read.library);
  });
});
