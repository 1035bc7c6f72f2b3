/** The page's own files read from the working copy, scripts and styles bundled as the build bundles them. */
import { readFileSync } from 'node:fs';
import { bundledScript, bundledSheet } from '../../../scripts/bundle.mjs';
import { pageAssets, type PageFiles } from '../../../src/outputs/html/assets.ts';

const read = (path: string) => readFileSync(path, 'utf8');
const base64 = (path: string) => readFileSync(path).toString('base64');

const faces = (letters: string) =>
  ([400, 700] as const).map((weight) => ({
    weight,
    base64: base64(`shared/fonts/atkinson-hyperlegible-next-${letters}-${weight}-normal.woff2`),
  }));

export const files: PageFiles = {
  tokens: JSON.parse(read('shared/tokens.json')) as PageFiles['tokens'],
  styles: {
    sheet: bundledSheet('sheet'),
    leaflet: bundledSheet('leaflet'),
    record: bundledSheet('record'),
    public: bundledSheet('public'),
    desk: bundledSheet('desk'),
  },
  fonts: faces('latin'),
  fewLetters: faces('few-letters'),
  arrival: bundledScript('arrival'),
  script: bundledScript('leaflet'),
  inUse: bundledScript('inUse'),
  catalogue: bundledScript('catalogue'),
};

export const assets = pageAssets(files);
