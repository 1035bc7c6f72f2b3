/** A clinic's own pages: menu, dress, map and feed of the site. Map by sitemaps.org 0.9, feed by RFC 4287. */
import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { parseAtomFeed } from 'feedsmith';
import { describe, expect, it } from 'vitest';
import { readLibrary } from '../../../../src/content/readLibrary.ts';
import { problemText } from '../../../../src/content/problemText.ts';
import { checkLibrary } from '../../../../src/lint/library.ts';
import { libraryView } from '../../../../src/catalogue/libraryView.ts';
import { libraryPages } from '../../../../src/outputs/html/site.ts';
import { isoDate } from '../../../../src/units/date.ts';
import { fileOf, filesWith, SAMPLE } from '../../../content/sample.ts';
import { assets } from '../assets.ts';
import { libraryOf, shipped } from '../libraries.ts';

const SITE = 'site: { url: "https://brook.example", pathPrefix: /lib/, feedEntries: 3 }';
const CLINIC = SAMPLE['clinic.md'].replace('paper: A4', `paper: A4\n${SITE}`);
const PAGE =
  '---\ntitle: Who & what we are\nmenu: About\norder: 2\nchanged:\n  - { on: 2026-03-01, what: New hours. }\n  - { on: 2026-03-01, what: A new door. }\n---\n\n## Our work\n\nWe see [a bridge](../exercises/bridge.md).\n';
const FIRST = '---\ntitle: Zoo\norder: 1\n---\n\nPlain words.\n';
const own = (changes: Readonly<Record<string, string>> = {}) =>
  Object.entries({ 'clinic.md': CLINIC, 'pages/about.md': PAGE, 'pages/zoo.md': FIRST, ...changes }).map(
    ([file, text]) => fileOf(file, text),
  );
const pagesOf = (changes: Readonly<Record<string, string>> = {}) =>
  new Map(
    libraryPages(libraryView(libraryOf(filesWith(), own(changes)), new Map(), new Map()), assets).map(
      ({ path, content }) => [path, content],
    ),
  );
const said = (changes: Readonly<Record<string, string>>) =>
  readLibrary(filesWith(), own(changes))
    .problems.map((one) => problemText(one, null))
    .join('\n');

describe('pages of the clinic’s own', () => {
  const pages = pagesOf();
  it('stand in the menu of every page, in their order', () => {
    for (const [path, content] of pages) {
      if (!path.endsWith('.html')) continue;
      const names = [...content.matchAll(/pages\/(about|zoo)\.html"[^>]*><bdi>([^<]*)/g)].map(
        ([, id, name]) => [id, name],
      );
      expect(names, path).toEqual([
        ['zoo', 'Zoo'],
        ['about', 'About'],
      ]);
    }
    expect(pages.get('public/pages/about.html')).toMatch(/about\.html"\s+aria-current="page"/);
  });
  it('show their text, with links to cards', () => {
    const about = pages.get('public/pages/about.html') ?? '';
    expect(about).toContain('<h1>Who &amp; what we are</h1>');
    expect(about).toContain('href="../exercises/bridge.html"');
    expect(pages.get('public/pages/zoo.html')).toContain('Plain words.');
  });
  it('are those of the uppermost folder alone', () => {
    const { library } = readLibrary(filesWith({ 'pages/below.md': FIRST }), own());
    expect(library?.pages.map(({ id }) => id)).toEqual(['zoo', 'about']);
  });
  it('make no other library of it: leaflets are not theirs', () => {
    expect(libraryOf(filesWith(), own()).version).toBe(
      libraryOf(filesWith(), own({ 'pages/zoo.md': PAGE })).version,
    );
  });
  it.each([
    [
      'a link to nothing',
      { 'pages/zoo.md': `${FIRST}[x](../exercises/bridg.md)\n` },
      'error link found a link to ../exercises/bridg.md',
    ],
    ['a key nobody knows', { 'pages/zoo.md': FIRST.replace('order', 'ordre') }, 'error unknown-key ordre'],
    [
      'text before its headings',
      { 'pages/zoo.md': `${FIRST}\n## Then\n\nText.\n` },
      'error heading found text before the first heading',
    ],
    [
      'a heading of another level',
      { 'pages/zoo.md': '---\ntitle: Zoo\n---\n\n# Then\n\nText.\n' },
      'error heading',
    ],
    [
      'a style that fetches',
      { 'style.css': '@import "x.css";' },
      'style.css:1:1: error does-not-fit found @import',
    ],
    [
      'a picture from elsewhere',
      { 'style.css': 'a { background: url(https://a.example/x.png) }' },
      'style.css:1:17: error does-not-fit found url(https://a.example/x.png',
    ],
    [
      'a layout with a script',
      { 'layouts/page.liquid': '{{ content }}<script>1</script>' },
      'layouts/page.liquid:1:14: error does-not-fit found <script',
    ],
    [
      'a layout with a handler',
      { 'layouts/page.liquid': '{{ content }}<p onclick="x">' },
      'error does-not-fit found onclick',
    ],
    [
      'a layout without the text',
      { 'layouts/page.liquid': '<p>Hello</p>' },
      'found a layout that shows no text',
    ],
    [
      'a site without a name',
      { 'clinic.md': CLINIC.replace('https://brook.example', 'brook') },
      'error wrong-word site.url',
    ],
  ])('are refused with %s', (_, changes, words) => {
    expect(said(changes as Record<string, string>)).toContain(words);
  });
  it('are read for words like the cards', () => {
    const { library, placeOf } = readLibrary(
      filesWith(),
      own({ 'pages/zoo.md': `${FIRST}\nThe risk is small.\n` }),
    );
    const codes = checkLibrary(library!, isoDate('2026-11-25')!, placeOf).filter(
      ({ file }) => file === 'pages/zoo.md',
    );
    expect(codes.map(({ code }) => code)).toContain('banned-word');
  });
});

describe('a style of the clinic’s own', () => {
  it('comes after ours on every page, and is a file of the site', () => {
    const pages = pagesOf({ 'style.css': 'a { color: red }' });
    expect(pages.get('public/assets/own.css')).toBe('a { color: red }');
    for (const [path, content] of pages)
      if (path.endsWith('.html'))
        expect(content.indexOf('own.css'), path).toBeGreaterThan(content.indexOf('sheet.css'));
  });
});

describe('the map of the site', () => {
  it('names every page once, by its whole address, with the day of its last change', () => {
    const pages = pagesOf();
    const text = pages.get('public/sitemap.xml') ?? '';
    expect(XMLValidator.validate(text)).toBe(true);
    const { urlset } = new XMLParser({ ignoreAttributes: false, isArray: (name) => name === 'url' }).parse(
      text,
    ) as {
      urlset: { '@_xmlns': string; url: { loc: string; lastmod?: string }[] };
    };
    expect(urlset['@_xmlns']).toBe('http://www.sitemaps.org/schemas/sitemap/0.9');
    const expected = [...pages.keys()]
      .filter((path) => path.endsWith('.html'))
      .map((path) => path.replace(/^public\//, 'https://brook.example/lib/').replace(/\/index\.html$/, '/'));
    expect(urlset.url.map(({ loc }) => loc).sort()).toEqual(expected.sort());
    const about = urlset.url.find(({ loc }) => loc.endsWith('pages/about.html'));
    expect(about?.lastmod).toBe('2026-03-01');
    expect(urlset.url.find(({ loc }) => loc.endsWith('/exercises/bridge.html'))?.lastmod).toBe('2026-01-05');
    expect(urlset.url.find(({ loc }) => loc.endsWith('/glossary.html'))).not.toHaveProperty('lastmod');
  });
  it('is not there, nor a feed, where nobody said where the site lies', () => {
    const paths = [...pagesOf({ 'clinic.md': SAMPLE['clinic.md'] }).keys()];
    expect(paths.filter((path) => path.endsWith('.xml'))).toEqual([]);
  });
});

describe('the feed', () => {
  const text = pagesOf().get('public/feed.xml') ?? '';
  const feed = parseAtomFeed(text);
  it('is read by a parser of Atom, with all that RFC 4287 4.1.1 asks of a feed', () => {
    expect(XMLValidator.validate(text)).toBe(true);
    expect(text).toMatch(
      /^<\?xml version="1\.0" encoding="utf-8"\?>\n<feed xmlns="http:\/\/www\.w3\.org\/2005\/Atom"/,
    );
    expect(feed.id).toBe('https://brook.example/lib/feed.xml');
    expect(feed.title?.value).toBeTruthy();
    expect(feed.authors?.[0]?.name).toBeTruthy();
    expect(feed.updated).toBe('2026-03-01T00:00:00Z');
    expect(feed.links?.filter(({ rel }) => rel === 'self')).toHaveLength(1);
  });
  it('has what RFC 4287 4.1.2 asks of an entry; each has an id of its own', () => {
    const entries = feed.entries ?? [];
    expect(entries).toHaveLength(3);
    for (const { id, title, updated, links, summary } of entries) {
      expect(id).toMatch(/^https:\/\/brook\.example\/lib\//);
      expect(title?.value).toBeTruthy();
      expect(summary?.value).toBeTruthy();
      expect(updated).toMatch(/^\d{4}-\d\d-\d\dT00:00:00Z$/);
      expect(links?.filter(({ rel }) => rel === undefined || rel === 'alternate')).toHaveLength(1);
    }
    expect(new Set(entries.map(({ id }) => id)).size).toBe(3);
    expect(entries.map(({ updated }) => updated)).toEqual(
      entries
        .map(({ updated }) => updated)
        .sort()
        .reverse(),
    );
    expect(entries.slice(0, 2).map(({ title, summary }) => [title?.value, summary?.value])).toEqual([
      ['Who & what we are', 'A new door.'],
      ['Who & what we are', 'New hours.'],
    ]);
  });
  it('is named in the head of every page of the shipped site', () => {
    const pages = libraryPages(shipped, assets);
    for (const { path, content } of pages)
      if (path.endsWith('.html'))
        expect(content, path).toMatch(/rel="alternate"\s+type="application\/atom\+xml"/);
  });
});
