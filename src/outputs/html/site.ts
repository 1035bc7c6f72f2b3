/**
 * All pages of a build through Eleventy: it walks `templates/`, which call the same functions that a single page is
 * rendered by. It never opens content and never writes; the shell writes what comes back.
 */
import type { LibraryView } from '../../catalogue/view.ts';
import { createHash } from 'node:crypto';
import type { Programme } from '../../programme/programme.ts';
import type { PageAssets } from './assets.ts';
import { pagePath } from './public/links.ts';
import { layoutData, ownText } from './public/ownPage.ts';
import { publicFiles, publicPages, type PublicPages } from './public/pages.ts';

/** A file of the site: path with `/` below the output folder, and its text. */
export interface Page {
  readonly path: string;
  readonly content: string;
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
  const pages: PublicPages = view === null ? new Map() : publicPages(view);
  const own = view === null ? [] : ownTemplates(view);
  const framed = new Set(own.map(({ path }) => path));
  const { default: Eleventy } = await import('@11ty/eleventy');
  const eleventy = new Eleventy(templates, '_site', {
    configPath: false,
    pathPrefix: view?.site?.pathPrefix ?? '/',
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
      config.addGlobalData('publicPaths', () => [...pages.keys()].filter((path) => !framed.has(path)));
      // Addresses of a clinic's own layout may go through Eleventy's filter `url`.
      if (own.length > 0) config.setTemplateFormats(['11ty.js', 'liquid']);
      for (const { name, text, data } of own) config.addTemplate(name, text, data);
      if (view !== null && view.dress.layout !== null)
        config.addTemplate(`_includes/${layoutName(view)}`, layoutText(view.dress.layout));
      config.addGlobalData('assets', () => assets);
    },
  });
  // What is wrong with a layout comes back as an error, and is said with its place.
  eleventy.disableLogger();
  const rendered = await eleventy.toJSON();
  const beside = view === null ? [] : filesOf(view, assets);
  return [
    ...rendered.map(({ url, content }) => ({ path: pathOf(url), content })),
    ...beside.map(({ path, content }) => ({ path: `public/${path}`, content })),
  ].sort((a, b) => (a.path < b.path ? -1 : 1));
}

// Eleventy keeps what it read of a name for as long as the process lives, and a server builds again and again.
function nameOf(kind: string, text: string): string {
  return `${kind}-${createHash('sha256').update(text).digest('hex').slice(0, 16)}.liquid`;
}

function layoutName({ dress: { layout } }: LibraryView): string {
  return nameOf('layout', layout ?? '');
}

/** The clinic's layout stands in ours, which is the frame of every public page. */
function layoutText(layout: string): string {
  return `---\nlayout: frame.11ty.js\n---\n${layout}`;
}

/** A template for each page of the clinic's own, as far as it has a layout of its own; the others are made like ours. */
function ownTemplates(view: LibraryView) {
  if (view.dress.layout === null) return [];
  return view.pages.map((page) => {
    const path = pagePath('pages', page.id);
    const data = {
      ...layoutData(page, view),
      text: ownText(page),
      ownPage: page.id,
      layout: layoutName(view),
      permalink: `public/${path}`,
    };
    return { path, name: `ownPages/${nameOf(page.id, JSON.stringify(data))}`, text: '{{ text }}', data };
  });
}

function pathOf(url: string | false): string {
  if (url === false) throw new Error('a template without an address');
  return url.slice(1).replace(/(^|\/)$/, '$1index.html');
}
