/**
 * All pages of a build through Eleventy: it walks `templates/`, which call the same functions that a single page is
 * rendered by. It never opens content and never writes; the shell writes what comes back.
 */
import type { Programme } from '../programme/programme.ts';
import type { PageAssets } from './assets.ts';
import { leafletHtml } from './leaflet.ts';
import { numbersPageHtml } from './public/numbersPage.ts';
import { startPageHtml, type Front } from './public/startPage.ts';
import { stylePageHtml } from './public/stylePage.ts';
import { recordHtml } from './record.ts';

/** A file of the site: path with `/` below the output folder, and its text. */
export interface Page {
  readonly path: string;
  readonly content: string;
}

/** The pages of one programme without Eleventy, byte for byte the same: what a single changed consult costs. */
export function programmePages(programme: Programme, assets: PageAssets): readonly Page[] {
  const folder = `private/${programme.alias}`;
  return [
    { path: `${folder}/leaflet.html`, content: leafletHtml(programme, assets) },
    { path: `${folder}/record.html`, content: recordHtml(programme, assets) },
  ];
}

/** The public pages without Eleventy. */
export function publicPages(front: Front, assets: PageAssets): readonly Page[] {
  return [
    { path: 'public/index.html', content: startPageHtml(front, assets) },
    { path: 'public/numbers/index.html', content: numbersPageHtml(front, assets) },
    { path: 'public/style/index.html', content: stylePageHtml(front, assets) },
  ];
}

/**
 * The pages of all programmes and the public ones, sorted by path. `templates` is the folder of the templates, which
 * import the compiled rooms; Eleventy itself is loaded here, at half a second, and nowhere else.
 */
export async function renderPages(
  programmes: readonly Programme[],
  front: Front,
  assets: PageAssets,
  templates: string,
): Promise<readonly Page[]> {
  const { default: Eleventy } = await import('@11ty/eleventy');
  const eleventy = new Eleventy(templates, '_site', {
    configPath: false,
    quietMode: true,
    config(config) {
      config.setTemplateFormats(['11ty.js']);
      // Ignore lists belong to a checkout; this folder is ours wherever it was installed.
      config.setUseGitIgnore(false);
      config.ignores.clear();
      // A map passes through the data cascade as it is: plain objects would be merged key by key.
      config.addGlobalData('programmes', () => new Map(programmes.map((one) => [one.alias, one])));
      config.addGlobalData('aliases', () => programmes.map(({ alias }) => alias));
      config.addGlobalData('front', () => front);
      config.addGlobalData('assets', () => assets);
    },
  });
  const rendered = await eleventy.toJSON();
  return rendered
    .map(({ url, content }) => ({ path: pathOf(url), content }))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
}

function pathOf(url: string | false): string {
  if (url === false) throw new Error('a template without an address');
  return url.slice(1).replace(/(^|\/)$/, '$1index.html');
}
