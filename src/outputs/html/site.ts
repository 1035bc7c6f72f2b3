/**
 * All pages of a build through Eleventy: it walks `templates/`, which call the same functions that a single page is
 * rendered by. It never opens content and never writes; the shell writes what comes back.
 */
import type { LibraryView } from '../../catalogue/view.ts';
import type { Programme } from '../../programme/programme.ts';
import type { PageAssets } from './assets.ts';
import { leafletHtml } from './leaflet.ts';
import { publicFiles, publicPages } from './public/pages.ts';
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

/** The public folder without Eleventy: pages, style, scripts and pictures. */
export function libraryPages(view: LibraryView, assets: PageAssets): readonly Page[] {
  const pages = [...publicPages(view)].map(([path, page]) => ({ path, content: page(view, assets) }));
  return [...pages, ...filesOf(view, assets)].map(({ path, content }) => ({
    path: `public/${path}`,
    content,
  }));
}

function filesOf(view: LibraryView, assets: PageAssets): readonly Page[] {
  return [...publicFiles(view, assets)].map(([path, content]) => ({ path, content }));
}

/**
 * The pages of all programmes, and those of the library unless it is null, sorted by path. `templates` is the folder of
 * the templates, which import the compiled rooms; Eleventy itself is loaded here, at half a second, and nowhere else.
 */
export async function renderPages(
  programmes: readonly Programme[],
  view: LibraryView | null,
  assets: PageAssets,
  templates: string,
): Promise<readonly Page[]> {
  const pages = view === null ? new Map() : publicPages(view);
  const { default: Eleventy } = await import('@11ty/eleventy');
  const eleventy = new Eleventy(templates, '_site', {
    configPath: false,
    quietMode: true,
    config(config) {
      config.setTemplateFormats(['11ty.js']);
      // Ignore lists belong to a checkout; this folder is ours wherever it was installed.
      config.setUseGitIgnore(false);
      config.ignores.clear();
      // Quiet mode forgets its own timings, which it would print on a busy machine.
      config.benchmarkManager.get('Configuration').setIsVerbose(false);
      // A map passes through the data cascade as it is: plain objects would be merged key by key.
      config.addGlobalData('programmes', () => new Map(programmes.map((one) => [one.alias, one])));
      config.addGlobalData('aliases', () => programmes.map(({ alias }) => alias));
      config.addGlobalData('library', () => new Map([['view', view]]));
      config.addGlobalData('publicPages', () => pages);
      config.addGlobalData('publicPaths', () => [...pages.keys()]);
      config.addGlobalData('assets', () => assets);
    },
  });
  const rendered = await eleventy.toJSON();
  const beside = view === null ? [] : filesOf(view, assets);
  return [
    ...rendered.map(({ url, content }) => ({ path: pathOf(url), content })),
    ...beside.map(({ path, content }) => ({ path: `public/${path}`, content })),
  ].sort((a, b) => (a.path < b.path ? -1 : 1));
}

function pathOf(url: string | false): string {
  if (url === false) throw new Error('a template without an address');
  return url.slice(1).replace(/(^|\/)$/, '$1index.html');
}
