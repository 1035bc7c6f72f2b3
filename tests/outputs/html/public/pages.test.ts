/** The public folder as a whole: its links, its policy, and that nobody stands in it. */
import { readdirSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path/posix';
import { describe, expect, it } from 'vitest';
import { libraryPages } from '../../../../src/outputs/html/site.ts';
import { GLOSSARY } from '../../../../src/messages/en/catalogue/glossary.ts';
import { assets } from '../assets.ts';
import { shipped, shippedLibrary } from '../libraries.ts';
import { unescaped } from '../readBack.ts';

const files = new Map(libraryPages(shipped, assets).map(({ path, content }) => [path, content]));
const pages = [...files].filter(([path]) => path.endsWith('.html'));
const page = (path: string) => files.get(`public/${path}`) ?? '';

/** Everything a page names as an address, pictures in several sizes too. */
function addressesIn(markup: string): string[] {
  const single = [...markup.matchAll(/\s(?:href|src)="([^"]*)"/g)].map(([, address = '']) =>
    unescaped(address),
  );
  const sets = [...markup.matchAll(/\ssrcset="([^"]*)"/g)].flatMap(([, set = '']) =>
    set.split(', ').map((one) => one.split(' ')[0] ?? ''),
  );
  return [...single, ...sets];
}

describe('links', () => {
  it('lead to a file or a place that is there, from every page', () => {
    const broken = pages.flatMap(([path, markup]) =>
      addressesIn(markup)
        .filter((address) => !/^(data:|https?:|tel:|mailto:)/.test(address))
        .flatMap((address) => {
          const [, file = '', , fragment = ''] = /^([^?#]*)(\?[^#]*)?#?(.*)$/.exec(address) ?? [];
          const target = file === '' ? path : normalize(join(dirname(path), file));
          const there = files.get(target);
          const isThere = there !== undefined && (fragment === '' || there.includes(` id="${fragment}"`));
          return isThere ? [] : [`${path} -> ${address}`];
        }),
    );
    expect(broken).toEqual([]);
  });

  it('are relative, so that the folder works wherever it lies', () => {
    const rooted = pages.flatMap(([, markup]) =>
      addressesIn(markup).filter((address) => /^(\/|file:)/.test(address)),
    );
    expect(rooted).toEqual([]);
  });

  it('reach every page from the first one', () => {
    const reached = new Set(['public/index.html']);
    for (const path of reached)
      for (const address of addressesIn(files.get(path) ?? ''))
        if (!/^(data:|https?:|#)/.test(address))
          reached.add(normalize(join(dirname(path), address.replace(/[?#].*$/, ''))));
    expect(pages.map(([path]) => path).filter((path) => !reached.has(path))).toEqual([]);
  });

  it('ask the index for stages and words it knows', () => {
    const known = new Map(
      shipped.filters.map(({ key, options }) => [key as string, options.map(({ value }) => value)]),
    );
    const asked = pages.flatMap(([, markup]) =>
      addressesIn(markup).flatMap((address) => [
        ...new URLSearchParams(/exercises\.html\?(.*)$/.exec(address)?.[1] ?? ''),
      ]),
    );
    expect(asked.length).toBeGreaterThan(5);
    expect(asked.filter(([key, value]) => !known.get(key)?.includes(value))).toEqual([]);
  });
});

describe('nobody stands in the public folder', () => {
  const aliases = [
    ...new Set(readdirSync('content/consults').flatMap((file) => /^(.+)-r\d+\.md$/.exec(file)?.[1] ?? [])),
  ];

  it('there are consults to look for', () => {
    expect(aliases.length).toBeGreaterThanOrEqual(3);
  });

  it.each(aliases)('not %s', (alias) => {
    const word = new RegExp(`\\b${alias}\\b`, 'i');
    expect([...files].filter(([, text]) => word.test(text)).map(([path]) => path)).toEqual([]);
  });

  it('and no way leads out of it', () => {
    const out = pages.flatMap(([path, markup]) =>
      addressesIn(markup).filter((address) => !normalize(join(dirname(path), address)).startsWith('public/')),
    );
    expect(out.filter((address) => !/^(data:|https?:|#|\?)/.test(address))).toEqual([]);
  });
});

describe('what a page may do', () => {
  it.each(pages.map(([path, markup]) => ({ path, markup })))(
    '$path: fetches its own, runs its own',
    ({ markup }) => {
      const policy = unescaped(/Content-Security-Policy" content="([^"]*)"/.exec(markup)?.[1] ?? '');
      expect(policy).toMatch(/^default-src 'none'; style-src 'self'; script-src '(self|none)'; /);
      expect(markup).not.toMatch(/<style|\sstyle="|<script>|\son[a-z]+="/);
      expect(/<script/.test(markup)).toBe(policy.includes("script-src 'self'"));
    },
  );

  it.each(pages.map(([path, markup]) => ({ path, markup })))(
    '$path: sends no form anywhere, and no base moves its addresses',
    ({ markup }) => {
      const policy = unescaped(/Content-Security-Policy" content="([^"]*)"/.exec(markup)?.[1] ?? '');
      expect(policy.split('; ')).toEqual(expect.arrayContaining([`form-action 'none'`, `base-uri 'none'`]));
    },
  );

  it('its scripts send nothing, and store nothing but light or dark', () => {
    const scripts = [...files].filter(([path]) => path.endsWith('.js') && !path.endsWith('words.js'));
    expect(scripts).toHaveLength(2);
    for (const [, text] of scripts)
      expect(text.replaceAll(/localStorage\.\w+\("loadleaf:theme"/g, '')).not.toMatch(
        /localStorage|sessionStorage|indexedDB|fetch|XMLHttpRequest|sendBeacon|cookie|\bimport\b|\bexport\b|eval/,
      );
  });

  it('its pictures are drawings without scripts or addresses', () => {
    const drawings = [...files].filter(([path]) => path.endsWith('.svg'));
    expect(drawings.length).toBe(shipped.cards.filter(({ figures }) => figures !== null).length);
    for (const [, text] of drawings) {
      expect(text).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" [^>]*><style>/);
      expect(text.replace('http://www.w3.org/2000/svg', '')).not.toMatch(/script|href|url\(|http/);
    }
  });
});

describe('a card’s page', () => {
  it.each([...shippedLibrary.exercises.values()].map((card) => ({ card })))('of $card.id', ({ card }) => {
    const text = unescaped(page(`exercises/${card.id}.html`).replace(/<[^>]*>/g, ''));
    for (const { cite } of card.evidence) expect(text).toContain(cite);
    for (const caution of card.cautions) expect(text).toContain(caution);
    expect(text).toContain('Reviewed on');
    if (card.movement !== null)
      expect(page(`exercises/${card.id}.html`)).toContain(
        `<figure class="frames" aria-label="${card.title}">`,
      );
  });

  it('of a fast card gives no squeeze and says so', () => {
    const fast = shipped.cards.filter(({ facets }) => facets.kind[0] === 'energy-storage');
    expect(fast.length).toBeGreaterThan(0);
    for (const { id, facets } of fast) {
      expect(facets.squeeze).toEqual(['unknown']);
      expect(page(`exercises/${id}.html`)).toContain('says nothing of it');
    }
  });

  it('names every protocol that uses it', () => {
    for (const { id, uses } of shipped.cards)
      for (const { protocol } of uses)
        expect(page(`exercises/${id}.html`)).toContain(`../protocols/${protocol.id}.html`);
  });
});

describe('a protocol’s page', () => {
  it.each([...shippedLibrary.protocols.values()].map((protocol) => ({ protocol })))(
    'of $protocol.id',
    ({ protocol }) => {
      const markup = page(`protocols/${protocol.id}.html`);
      const text = unescaped(markup.replace(/<[^>]*>/g, ''));
      for (const stage of protocol.stages) {
        expect(text).toContain(stage.name);
        for (const slot of stage.slots) {
          expect(text).toContain(slot.name);
          expect(text).toContain(slot.doseSource.cite);
          for (const card of slot.cards) expect(markup).toContain(`../exercises/${card}.html`);
        }
      }
      for (const { cite } of protocol.sources) expect(text).toContain(cite);
    },
  );

  it('of a tendon outside the model says what guards it', () => {
    const other = shipped.protocols.find(({ ladder }) => ladder === null);
    expect(other?.guard).toContain('position and joint angle alone');
  });
});

describe('how the numbers are made', () => {
  const text = unescaped(page('numbers.html').replace(/<[^>]*>/g, ''));

  it.each([
    'gait2392',
    'Scott Delp, Peter Loan, Melissa Hoy, Felix Zajac, Eric Topp, Joseph Rosen, Darryl Thelen, Frank Anderson and Ajay Seth',
    'CC BY 3.0',
    'partly built in',
    'Choices made after seeing results',
    'What it under-estimates',
    'Tasks led by the knee',
    'Sitting.',
    'stretches',
    'not measured forces',
  ])('says %j', (words) => {
    expect(text).toContain(words);
  });
});

describe('body size, working along and friction on that page', () => {
  const { sections } = shipped.numbers;
  const tableIn = (id: string, at = 0) =>
    sections
      .find((one) => one.id === id)!
      .parts.flatMap((part) => (part.kind === 'table' ? [part.table] : []))[at]!;

  it('gives one pull and one share of strength for bodies of 47 to 90 kg, and more above 100 kg', () => {
    const { rows } = tableIn('body-size');
    expect(rows.map(([mass]) => mass)).toEqual(['47 kg', '60 kg', '75 kg', '90 kg', '120 kg']);
    expect(new Set(rows.map(([, , pull]) => pull)).size).toBe(1);
    const [counted, fixed] = [4, 3].map((column) => rows.map((row) => Number(row[column])));
    expect(counted!.slice(0, 4)).toEqual(counted!.slice(0, 4).map(() => counted![0]));
    expect(counted![4]! / counted![0]!).toBeCloseTo(1.2, 1);
    expect(fixed![4]! / fixed![0]!).toBeCloseTo(120 / 47, 1);
  });

  it('names each house number of the muscles with its mark and source', () => {
    const { rows } = tableIn('body-size', 1);
    expect(rows.map(([, value]) => value)).toEqual(['75', '45', '100', '0.2']);
    expect(rows[0]!.join()).toContain('Handsfield 2014');
    expect(rows.slice(1).map(([, , mark]) => mark)).toEqual(Array(3).fill('house choice'));
  });

  // The specification's own split squat: 2.00 by vertical pushes only, 1.12 at 0.3; 0.65 at 0.5 was read from a run of it.
  it('works out what friction does to a lunge: about 2 body weights without, about 0.65 at 0.5', () => {
    const { columns, rows } = tableIn('friction');
    expect(columns.slice(1)).toEqual(['0', '0.1', '0.2', '0.3', '0.4', '0.5']);
    const split = rows
      .find(([card]) => card === 'Split squat')!
      .slice(1)
      .map(Number);
    expect(Math.abs(split[0]! - 2)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(split[3]! - 1.12)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(split[5]! - 0.65)).toBeLessThanOrEqual(0.05);
    for (const row of rows) {
      const values = row.slice(1).map(Number);
      expect(values).toEqual(values.toSorted((a, b) => b - a));
    }
  });

  it('says which cards the least share changes, and that no largest squeeze falls by it', () => {
    const { rows } = tableIn('together');
    expect(rows.length).toBeGreaterThan(0);
    for (const [before, after] of rows.flatMap((row) =>
      row.slice(1).flatMap((cell) => (cell.includes('→') ? [cell.split(' → ').map(Number)] : [])),
    ))
      expect(after).toBeGreaterThan(before!);
  });
});

describe('the glossary', () => {
  it('stands in the order of the alphabet, each term once', () => {
    const terms = GLOSSARY.map(({ term }) => term);
    expect(terms).toEqual([...terms].sort((a, b) => (a < b ? -1 : 1)));
    expect(new Set(terms).size).toBe(terms.length);
  });
});
