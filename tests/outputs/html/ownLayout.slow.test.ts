/** A clinic's own layout through Eleventy: round the text of its pages, within our frame, and the same bytes each time. */
import { describe, expect, it } from 'vitest';
import { libraryPages, renderPages } from '../../../src/outputs/html/site.ts';
import { libraryView } from '../../../src/catalogue/libraryView.ts';
import { layoutFaults } from '../../../src/shell/building/layoutFaults.ts';
import { TEMPLATES } from '../../../src/shell/io/assets.ts';
import { fileOf, filesWith, SAMPLE } from '../../content/sample.ts';
import { assets } from './assets.ts';
import { inBothSchemes, launch, NOTHING, pagesAt } from './browser.ts';
import { libraryOf } from './libraries.ts';
import { served } from './public/publicServer.ts';
import { faultsOf } from './validate.ts';

const LAYOUT =
  '<div class="ours">{{ content }}</div>{% for one in menu %}<a href="{{ one.url }}">{{ one.name }}</a>{% endfor %}<a href="{{ \'/exercises.html\' | url }}">All</a> {{ title }}';
const library = (layout: string) =>
  libraryOf(filesWith(), [
    fileOf(
      'clinic.md',
      SAMPLE['clinic.md'].replace(
        'paper: A4',
        'paper: A4\nsite: { url: "https://brook.example", pathPrefix: /lib/ }',
      ),
    ),
    fileOf('pages/about.md', '---\ntitle: Us & you\n---\n\n## Hours\n\nFrom eight.\n'),
    fileOf('layouts/page.liquid', layout),
  ]);
const view = libraryView(library(LAYOUT), new Map(), new Map());

describe('a layout of the clinic’s own', () => {
  it('stands round the text, within our frame, with addresses under the prefix', async () => {
    const pages = await renderPages([], view, assets, TEMPLATES);
    const about = pages.find(({ path }) => path === 'public/pages/about.html')?.content ?? '';
    expect(about).toMatch(/<main id="main"><div class="ours">[^]*From eight\.[^]*<\/div>/);
    expect(about).toContain('<a href="../pages/about.html">Us &amp; you</a>');
    expect(about).toContain('href="/lib/exercises.html"');
    expect(about).toContain('Content-Security-Policy');
    expect(about).toContain('<h1>Us &amp; you</h1>');
    expect(await renderPages([], view, assets, TEMPLATES)).toEqual(pages);
  });

  it('changes no other page', async () => {
    const plain = new Map(libraryPages(view, assets).map(({ path, content }) => [path, content]));
    const pages = await renderPages([], view, assets, TEMPLATES);
    expect(pages.map(({ path }) => path).sort()).toEqual([...plain.keys()].sort());
    for (const { path, content } of pages)
      if (!path.startsWith('public/pages/')) expect(content, path).toBe(plain.get(path));
  });

  it('axe and html-validate find nothing in its pages, at 320 and 1280 px, light or dark', async () => {
    const files = await renderPages([], view, assets, TEMPLATES);
    const [browser, site] = await Promise.all([launch(), served(files)]);
    try {
      const own = files.filter(({ path }) => path.startsWith('public/pages/'));
      expect(own).not.toEqual([]);
      const looks = [...(await pagesAt(browser, [320, 1280])).values()];
      for (const { path, content } of own) {
        expect(await faultsOf(content), path).toEqual([]);
        for (const page of looks)
          expect(await inBothSchemes(page, site.address + path.replace('public/', '')), path).toEqual(
            NOTHING,
          );
      }
    } finally {
      await browser.close();
      site.server.close();
    }
  });

  it.each([
    ['nothing wrong', LAYOUT, []],
    [
      'a dead link',
      `${LAYOUT}<a href="../exercise.html">x</a>`,
      [{ code: 'link', found: 'a link to ../exercise.html' }],
    ],
    [
      'a link beside the prefix',
      `${LAYOUT}<a href="/exercises.html">x</a>`,
      [{ code: 'link', found: 'a link to /exercises.html' }],
    ],
    [
      'words Liquid cannot read',
      `${LAYOUT}\n{% if %}`,
      [{ code: 'does-not-fit', file: 'layouts/page.liquid', line: 2 }],
    ],
  ])('has %s', async (_, layout, problems) => {
    expect(await layoutFaults(library(layout))).toMatchObject(problems);
  });
});
