import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { create, type Font } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { FEW_LETTERS, leafletStyle, tokenSheet } from '../../../src/outputs/html/assets.ts';
import { assets, files } from './assets.ts';

const sheets = Object.entries({
  leaflet: assets.leaflet,
  'leaflet of few letters': assets.leafletOfFew,
  record: assets.record,
  public: assets.public,
});

describe.each(sheets)('the style of a %s', (_, { text, hash }) => {
  it('has the hash of its text (CSP level 3, sha256 in base64)', () => {
    expect(hash).toBe(`sha256-${createHash('sha256').update(text, 'utf8').digest('base64')}`);
  });

  it('uses no property that is not set', () => {
    const set = new Set([...text.matchAll(/(--[\w-]+):/g)].map(([, name]) => name));
    const used = [...text.matchAll(/var\((--[\w-]+)/g)].map(([, name]) => name);
    expect(used.filter((name) => !set.has(name))).toEqual([]);
    expect(used.length).toBeGreaterThan(50);
  });

  it('sets no property twice to different kinds of value', () => {
    const [root = ''] = /:root\{[^}]*\}/.exec(text) ?? [];
    const names = [...root.matchAll(/(--[\w-]+):/g)].map(([, name]) => name);
    expect(names.length).toBe(new Set(names).size);
  });

  it('carries its two faces and asks nobody for anything', () => {
    expect(text.match(/@font-face/g)).toHaveLength(2);
    const addresses = [...text.matchAll(/url\(([^)]{0,24})/g)].map(([, start]) => start);
    expect(addresses.every((start) => start?.startsWith('data:font/woff2;base64,'))).toBe(true);
    expect(text).not.toMatch(/@import|https?:/);
  });

  // A browser then need look in the dark for nothing but colour (`inBothSchemes`).
  it('changes in the dark colours and nothing else', () => {
    const schemes = /@media[^{]*prefers-color-scheme[^{]*\{[^{}]*\{([^}]*)\}\}|\[data-theme[^{]*\{([^}]*)\}/g;
    const changes = [...text.matchAll(schemes)].flatMap(([, media, theme]) =>
      (media ?? theme ?? '').split(';'),
    );
    expect(changes.length).toBeGreaterThan(30);
    expect(changes.filter((one) => !/^(--[\w-]+:#[0-9a-f]{6}|color-scheme:(dark|light))$/.test(one))).toEqual(
      [],
    );
    expect(text.replaceAll(schemes, '')).not.toMatch(/prefers-color-scheme|data-theme|light-dark\(/);
  });

  it('has no comment left and every brace closed', () => {
    expect(text).not.toContain('/*');
    expect(text.split('{').length).toBe(text.split('}').length);
  });
});

describe('the tokens as properties', () => {
  it('name lengths by their unit and print in the print colours', () => {
    const sheet = tokenSheet(files.tokens);
    expect(sheet).toContain('--body-size:1rem');
    expect(sheet).toContain('--hair-width:1px');
    expect(sheet).toMatch(/@media print\{:root\{color-scheme:light;--paper:#ffffff/);
  });
});

describe.each(['arrival', 'script', 'inUse'] as const)('the %s of a sheet', (name) => {
  it('has the hash of its text, sends nothing, and stores under names of the house alone', () => {
    const { text, hash } = assets[name];
    expect(hash).toBe(`sha256-${createHash('sha256').update(text, 'utf8').digest('base64')}`);
    expect(text).not.toMatch(
      /sessionStorage|indexedDB|fetch|XMLHttpRequest|sendBeacon|cookie|WebSocket|EventSource|\bimport\b|\bexport\b/,
    );
    const places = [...text.matchAll(/localStorage\.\w+\(("[^"]*")/g)].map(([, place]) => place);
    expect(new Set(places)).toEqual(new Set(name === 'inUse' ? [] : ['"loadleaf:theme"']));
  });
});

it.each(['leaflet', 'leafletOfFew'] as const)(
  'the %s sheet defines no custom property that it does not ask for',
  (name) => {
    const { text } = assets[name];
    const asked = new Set(Array.from(text.matchAll(/var\((--[\w-]+)/g), ([, one]) => one));
    const defined = new Set(Array.from(text.matchAll(/[{;](--[\w-]+):/g), ([, one]) => one));
    expect(asked.size).toBeGreaterThan(30);
    expect([...asked].filter((one) => !defined.has(one))).toEqual([]);
    expect([...defined].filter((one) => !asked.has(one))).toEqual([]);
  },
);

describe('the faces of few letters', () => {
  it.each([400, 700])(
    'of weight %i have every letter that is promised, and the kerning of the whole face',
    (weight) => {
      const face = (letters: string) =>
        create(readFileSync(`shared/fonts/atkinson-hyperlegible-next-${letters}-${weight}-normal.woff2`));
      const [few, whole] = [face('few-letters'), face('latin')];
      const promised = whole.characterSet.filter((code) => FEW_LETTERS.test(String.fromCodePoint(code)));
      expect(promised.length).toBeGreaterThan(105);
      expect(promised.filter((code) => !few.hasGlyphForCodePoint(code))).toEqual([]);
      expect(few.availableFeatures).toEqual(expect.arrayContaining(['kern', 'tnum', 'pnum']));
      const width = (font: Font) => font.layout('AVA To 3.5 kg – “fifty”').advanceWidth;
      expect(width(few)).toBe(width(whole));
    },
  );

  it('dress every text of theirs alone, and no other', () => {
    expect(leafletStyle(assets, ['3 × 8, about 0°', '“a”'])).toBe(assets.leafletOfFew);
    expect(leafletStyle(assets, ['3 × 8', 'Zoë'])).toBe(assets.leaflet);
  });

  it('have what the scripts of the page say', () => {
    expect(assets.inUse.text).toMatch(FEW_LETTERS);
    expect(assets.script.text).toMatch(FEW_LETTERS);
  });
});
