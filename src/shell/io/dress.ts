/** What dresses the outputs of one clinic, by its logo; with it the words that were measured. */
import type { PageAssets } from '../../outputs/html/assets.ts';
import type { PaperAssets } from '../../outputs/pdf/leaflet.ts';
import { hashOf } from './issued.ts';
import { readPageAssets, readPaperAssets } from './assets.ts';

export interface Dress {
  readonly paper: PaperAssets;
  readonly pages: PageAssets;
}

/** The last one, for a server that builds again and again. */
let last: (Dress & { readonly logo: string }) | null = null;

/** `png`: the clinic's logo; null without one. */
export async function dressFor(png: Uint8Array | null): Promise<Dress> {
  const logo = png === null ? '' : hashOf(png);
  if (last?.logo !== logo)
    last = { logo, paper: await readPaperAssets(png), pages: await readPageAssets(png) };
  return last;
}
