/** Eleventy and the direct way give the same bytes; needs the compiled rooms (`npm run prepare`). */
import { existsSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { describe, expect, it } from 'vitest';
import { libraryPages, renderPages } from '../../../src/outputs/html/site.ts';
import { ownPages } from '../../../src/shell/building/make.ts';
import { readPageAssets, TEMPLATES } from '../../../src/shell/io/assets.ts';
import { pageAssets } from '../../../src/outputs/html/assets.ts';
import { assets as paper } from '../pdf/make.ts';
import { files } from './assets.ts';
import { shipped } from './libraries.ts';
import { programmes } from './programmes.ts';

const [, first] = programmes[0]!;
const assets = await readPageAssets();

describe('the pages through Eleventy', () => {
  const two = [first, { ...first, alias: 'heron', title: 'Home exercises for heron' }];

  it('are those of the direct way, byte for byte, sorted by path', async () => {
    const beside = { pages: assets, paper, fridge: false, link: null };
    const own = (await Promise.all(two.map((one) => ownPages(one, beside)))).flat();
    const direct = [
      ...own.map(({ path, bytes }) => ({ path, content: bytes })),
      ...libraryPages(shipped, assets),
    ];
    const rendered = await renderPages(two, shipped, assets, TEMPLATES);
    expect(rendered.map(({ path }) => path)).toEqual(direct.map(({ path }) => path).sort());
    for (const { path, content } of direct) {
      expect(rendered.find((page) => page.path === path)?.content === content, path).toBe(true);
    }
  });

  it('come without a programme too, and without the library', async () => {
    const library = await renderPages([], shipped, assets, TEMPLATES);
    expect(library.map(({ path }) => path)).toEqual(
      libraryPages(shipped, assets)
        .map(({ path }) => path)
        .sort(),
    );
    const leaflets = await renderPages([first], null, assets, TEMPLATES);
    expect(leaflets.every(({ path }) => path.startsWith('private/'))).toBe(true);
    expect(leaflets).toHaveLength(2);
  });

  it('come from any working folder, and nothing is written', async () => {
    const before = process.cwd();
    process.chdir(tmpdir());
    try {
      expect(await renderPages([first], null, assets, TEMPLATES)).toHaveLength(2);
      expect(existsSync('_site/private')).toBe(false);
    } finally {
      process.chdir(before);
    }
  });

  it('fail when a template cannot render', async () => {
    const broken = { ...first, steps: [] };
    await expect(renderPages([broken], null, assets, TEMPLATES)).rejects.toThrow();
  });
});

describe('the compiled scripts', () => {
  it('are those the other tests bundle for themselves', () => {
    expect(readFileSync('dist/scripts/arrival.js', 'utf8')).toBe(files.arrival);
    expect(readFileSync('dist/scripts/leaflet.js', 'utf8')).toBe(files.script);
    expect(assets.catalogue).toEqual(pageAssets(files).catalogue);
  });
});
