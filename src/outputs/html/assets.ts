/** Style and script of a page as text with their hashes: what goes into the file, and what its policy lets run. */
import { createHash } from 'node:crypto';
import type { Paint } from '../../drawing/drawing.ts';
import { paintRules } from '../../drawing/svg.ts';

/** The part of `shared/tokens.json` that the page reads. */
export interface PageTokens {
  readonly colour: Readonly<Record<'light' | 'dark' | 'print', Readonly<Record<string, string>>>>;
  /** The colour of each thing in a drawing, by the names of the drawings' paints. */
  readonly paint: Readonly<Record<Paint, string>>;
  readonly type: {
    readonly family: string;
    readonly page: Readonly<
      Record<string, { readonly sizeRem: number; readonly lineHeight: number; readonly weight: number }>
    >;
  };
  readonly space: { readonly page: Readonly<Record<string, number>> };
  readonly line: { readonly page: Readonly<Record<string, number>> };
  readonly sheet: { readonly page: Readonly<Record<string, number>> };
}

/** A WOFF2 face, base64. */
export interface PageFace {
  readonly weight: 400 | 700;
  readonly base64: string;
}

/** Files the page is dressed with, read by the shell. */
export interface PageFiles {
  readonly tokens: PageTokens;
  /** Style sheets by name, in as few letters as say the same: `sheet` for all pages, one more for each kind of page. */
  readonly styles: Readonly<Record<'sheet' | 'leaflet' | 'record' | 'public' | 'desk', string>>;
  readonly fonts: readonly PageFace[];
  /** The same faces with few letters, those of `FEW_LETTERS`. */
  readonly fewLetters: readonly PageFace[];
  /** For the head of a sheet, and for its end. */
  readonly arrival: string;
  readonly script: string;
  /** For the leaflet in use. */
  readonly inUse: string;
  /** The script of the index. */
  readonly catalogue: string;
}

/** Text to stand in the page, with the hash its policy names (`sha256-...`, CSP level 3 section 2.3.1). */
export interface Hashed {
  readonly text: string;
  readonly hash: string;
}

/** The clinic's logo as the pages take it, with the size it has. */
export interface LogoImage {
  readonly png: Uint8Array;
  readonly widthPx: number;
  readonly heightPx: number;
}

/** A clinic's own photo of an exercise, WebP. */
export interface LeafletPhoto {
  readonly alt: string;
  readonly takenBy: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly still: Uint8Array;
  /** Null for one that does not move. */
  readonly loop: Uint8Array | null;
}

/** By card. */
export type LeafletPhotos = ReadonlyMap<string, readonly LeafletPhoto[]>;

export interface PageAssets {
  /** Of exercises, for leaflets; empty where the clinic shows none. */
  readonly photos: LeafletPhotos;
  /** Null for a clinic without one. */
  readonly logo: LogoImage | null;
  readonly leaflet: Hashed;
  /** With the faces of few letters. */
  readonly leafletOfFew: Hashed;
  readonly record: Hashed;
  readonly public: Hashed;
  /** Without typefaces: the desk takes them from what its leaflets are dressed with. */
  readonly desk: Hashed;
  readonly arrival: Hashed;
  readonly script: Hashed;
  /** For the leaflet in use, after the script of all sheets. */
  readonly inUse: Hashed;
  /** For the index of the public pages. */
  readonly catalogue: Hashed;
  /** Colours of a picture that stands alone, light and dark. */
  readonly picture: string;
}

/** Everything that dresses the pages, ready to stand in them. `logo`: a PNG, or null for a clinic without one. */
export function pageAssets(
  { tokens, styles, fonts, fewLetters, arrival, script, inUse, catalogue }: PageFiles,
  logo: Uint8Array | null = null,
): PageAssets {
  const dressedIn = (faces: readonly PageFace[], sheets: readonly string[]) =>
    [
      ...faces.map((font) => face(tokens.type.family, font)),
      tokenSheet(tokens),
      paintSheet(tokens),
      styles.sheet,
      ...sheets,
    ].join('');
  const dressed = (...sheets: readonly string[]) => hashed(dressedIn(fonts, sheets));
  const leaflet = (faces: readonly PageFace[]) => hashed(asked(dressedIn(faces, [styles.leaflet])));
  return {
    photos: new Map(),
    logo: logo === null ? null : logoImage(logo),
    leaflet: leaflet(fonts),
    leafletOfFew: leaflet(fewLetters),
    record: dressed(styles.record),
    public: dressed(styles.leaflet, styles.record, styles.public),
    desk: hashed(
      [
        tokenSheet(tokens),
        paintSheet(tokens),
        inColumn([styles.sheet, styles.leaflet, styles.record].join('')),
        styles.desk,
      ].join(''),
    ),
    arrival: hashed(arrival),
    script: hashed(script),
    inUse: hashed(inUse),
    catalogue: hashed(catalogue),
    picture: pictureSheet(tokens),
  };
}

/** What the faces of few letters have: ASCII, and the signs of our own words. An arrow stands in none of the faces. */
export const FEW_LETTERS = /^[\n\x20-\x7e\u00a0£°·½×–—‘’“”…€−→]*$/;

/** The leaflet's style for such texts: most leaflets need few letters, and are a tenth smaller for it. */
export function leafletStyle(
  { leaflet, leafletOfFew }: Pick<PageAssets, 'leaflet' | 'leafletOfFew'>,
  texts: readonly string[],
): Hashed {
  return texts.every((text) => FEW_LETTERS.test(text)) ? leafletOfFew : leaflet;
}

/** The desk shows a leaflet in a column: as wide as that is, not as the window is. */
function inColumn(sheets: string): string {
  return sheets.replace(
    /@media ?(?:screen and )?\((min|max)-width:\s*([\d.]+rem)\)/g,
    '@container paper ($1-width:$2)',
  );
}

/** Width and height stand in the first chunk of a PNG (W3C PNG, 11.2.1 IHDR). */
function logoImage(png: Uint8Array): LogoImage {
  const head = new DataView(png.buffer, png.byteOffset);
  return { png, widthPx: head.getUint32(16), heightPx: head.getUint32(20) };
}

/**
 * The tokens as custom properties, light, dark and print; `sizeRem: 1` of `body` becomes `--body-size: 1rem`.
 * The dark set is for screens only, so that paper is always printed light.
 */
export function tokenSheet(tokens: PageTokens): string {
  const { light, dark, print } = tokens.colour;
  const type = Object.entries(tokens.type.page).flatMap(([name, { sizeRem, lineHeight, weight }]) => [
    `--${name}-size:${sizeRem}rem`,
    `--${name}-line:${lineHeight}`,
    `--${name}-weight:${weight}`,
  ]);
  const sizes = [tokens.space.page, tokens.line.page, tokens.sheet.page].flatMap(lengths);
  return [
    `:root{color-scheme:light dark;${[...colours(light), ...type, ...sizes].join(';')}}`,
    `@media screen and (prefers-color-scheme:dark){:root:not([data-theme="light"]){${colours(dark).join(';')}}}`,
    `@media screen{:root[data-theme="dark"]{color-scheme:dark;${colours(dark).join(';')}}:root[data-theme="light"]{color-scheme:light}}`,
    `@media print{:root{color-scheme:light;${colours(print).join(';')}}}`,
  ].join('');
}

/** More often than this the name of a value is shorter than the value. */
const MOST_ASKS = 2;

/**
 * A leaflet is dressed by this sheet alone: without the custom properties that none of its rules asks for, and with the
 * value itself where it is the same on every screen and on paper and few rules ask for it. Nothing else knows their names,
 * so the others are called by letters.
 */
function asked(sheet: string): string {
  const times = (text: string) => sheet.split(text).length - 1;
  const [common = ''] = /:root\{[^}]*\}/.exec(sheet) ?? [];
  const values = Array.from(common.matchAll(/(--[\w-]+):([^;}]*)/g), ([, name = '', value = '']) => ({
    name,
    value,
  }));
  const written = values.filter(({ name }) => times(`${name}:`) === 1 && times(`var(${name})`) <= MOST_ASKS);
  const unasked = new Set(values.filter(({ name }) => times(`var(${name})`) === 0).map(({ name }) => name));
  const valueOf = new Map(written.map(({ name, value }) => [name, value]));
  const told = sheet
    .replace(/var\((--[\w-]+)\)/g, (whole, name: string) => valueOf.get(name) ?? whole)
    .replace(/(--[\w-]+):[^;}]*;?/g, (whole, name: string) =>
      valueOf.has(name) || unasked.has(name) ? '' : whole,
    );
  return withShortNames(told);
}

function withShortNames(sheet: string): string {
  const names = [...new Set(Array.from(sheet.matchAll(/--[a-z][\w-]*(?=[:)])/g), ([name]) => name))];
  const shortOf = new Map(names.map((name, at) => [name, `--${at.toString(36)}`]));
  return sheet.replace(/--[a-z][\w-]*(?=[:)])/g, (name) => shortOf.get(name) ?? name);
}

/** Paints of drawings in the page's own colours, which it gives by name. */
function paintSheet({ paint }: PageTokens): string {
  return paintRules((name) => `var(--${kebab(paint[name])})`);
}

/** The same with the colours themselves: a picture in a file of its own knows no custom properties of the page. */
function pictureSheet({ paint, colour: { light, dark } }: PageTokens): string {
  const rules = (set: Readonly<Record<string, string>>) => paintRules((name) => set[paint[name]] ?? '');
  return `${rules(light)}@media screen and (prefers-color-scheme:dark){${rules(dark)}}`;
}

function colours(set: Readonly<Record<string, string>>): string[] {
  return Object.entries(set).map(([name, value]) => `--${kebab(name)}:${value}`);
}

/** `smallRem: 0.5` becomes `--small:0.5rem`: the unit stands at the end of the name. */
function lengths(set: Readonly<Record<string, number>>): string[] {
  return Object.entries(set).map(([name, value]) => {
    const [, stem = name, unit = ''] = /^(.+?)(Rem|Px)$/.exec(name) ?? [];
    return `--${kebab(stem)}:${value}${unit.toLowerCase()}`;
  });
}

function kebab(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

function face(family: string, font: PageFace): string {
  return `@font-face{font-family:"${family}";font-weight:${font.weight};font-style:normal;src:url(data:font/woff2;base64,${font.base64}) format("woff2")}`;
}

/** With the hash by which a policy lets it run. */
export function hashed(text: string): Hashed {
  return { text, hash: `sha256-${createHash('sha256').update(text).digest('base64')}` };
}
