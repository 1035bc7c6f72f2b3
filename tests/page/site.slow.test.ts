/** Eleventy and the direct way give the same bytes; needs the compiled rooms (`npm run prepare`). */
import { existsSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { describe, expect, it } from 'vitest';
import { programmePages, publicPages, renderPages } from '../../src/page/site.ts';
import { pageShelf, TEMPLATES } from '../../src/build/shelf.ts';
import { files } from './assets.ts';
import { programmes } from './programmes.ts';

const [, first] = programmes[0]!;
const front = { language: first.language, clinic: first.clinic, notice: first.notice };
const assets = await pageShelf();

describe('the pages through Eleventy', () => {
  const two = [first, { ...first, alias: 'heron', title: 'Home exercises for heron' }];

  it('are those of the direct way, byte for byte, sorted by path', async () => {
    const direct = [...two.flatMap((one) => programmePages(one, assets)), ...publicPages(front, assets)];
    const rendered = await renderPages(two, front, assets, TEMPLATES);
    expect(rendered.map(({ path }) => path)).toEqual(direct.map(({ path }) => path).sort());
    for (const { path, content } of direct) {
      expect(rendered.find((page) => page.path === path)?.content === content, path).toBe(true);
    }
  });

  it('come without a programme too', async () => {
    const rendered = await renderPages([], front, assets, TEMPLATES);
    expect(rendered.map(({ path }) => path)).toEqual([
      'public/index.html',
      'public/numbers/index.html',
      'public/style/index.html',
    ]);
  });

  it('come from any working folder, and nothing is written', async () => {
    const before = process.cwd();
    process.chdir(tmpdir());
    try {
      const rendered = await renderPages([first], front, assets, TEMPLATES);
      expect(rendered).toHaveLength(5);
      expect(existsSync('_site/private')).toBe(false);
    } finally {
      process.chdir(before);
    }
  });

  it('fail when a template cannot render', async () => {
    const broken = { ...first, steps: [] };
    await expect(renderPages([broken], front, assets, TEMPLATES)).rejects.toThrow();
  });
});

describe('the compiled script', () => {
  it('is the one the other tests translate for themselves', () => {
    expect(readFileSync('dist/page/client/leaflet.js', 'utf8').trim()).toBe(files.script.trim());
  });
});
