/** The program in one file, with what is kept for its start, makes the bytes that the rooms make from nothing. */
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { create } from 'fontkit';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readLibrary } from '../../src/content/readLibrary.ts';
import { letterPairsOf, type LetterPairs } from '../../src/outputs/pdf/letterPairs.ts';
import { printedFaces } from '../../src/shell/io/assets.ts';
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
    for (const file of ['whole/loadleaf.cjs', 'whole/loadleaf.cjs.cache', 'library.bin', 'letters.json'])
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
  it('the letters are those of the two printed faces', () => {
    const kept = JSON.parse(readFileSync('dist/program/letters.json', 'utf8')) as Record<string, LetterPairs>;
    const faces = Object.entries(printedFaces());
    expect(Object.keys(kept)).toEqual(faces.map(([cut]) => cut));
    for (const [cut, bytes] of faces) expect(kept[cut], cut).toEqual(letterPairsOf(create(bytes)));
  });

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
