/** What is wrong with a clinic's own layout once its pages are made with it: words Eleventy cannot read, and links to nothing. */
import type { Library } from '../../content/library.ts';
import { LAYOUT_FILE } from '../../content/dress.ts';
import { errorAt, type Problem } from '../../content/problem.ts';
import { topOf } from '../../content/sourceText.ts';
import { libraryView } from '../../catalogue/libraryView.ts';
import { readPageAssets } from '../io/assets.ts';
import type { OutFile } from '../io/site.ts';
import { sitePages } from './make.ts';

/** None without a layout, for half a second is long. */
export async function layoutFaults(library: Library): Promise<Problem[]> {
  if (library.dress.layout === null) return [];
  const view = libraryView(library, new Map(), new Map());
  try {
    const pages = await sitePages([], view, await readPageAssets());
    return deadLinks(pages, view.site?.pathPrefix ?? '/').map(deadLink);
  } catch (error) {
    return [unfilled(reasonOf(error))];
  }
}

/** The layout's own messages stand below those of Eleventy. */
function reasonOf(error: unknown): string {
  const { message, originalError } = error as Error & { readonly originalError?: unknown };
  return originalError === undefined ? (message.split('\n')[0] ?? '') : reasonOf(originalError);
}

/** `reason`: as Liquid says it, with its own file, line and column behind the words. */
function unfilled(reason: string): Problem {
  const [, words = reason, line = '1', column = '1'] =
    /^(.*?)(?:, file:.*?)?(?:, line:(\d+), col:(\d+))?$/.exec(reason) ?? [];
  return errorAt({ file: LAYOUT_FILE, line: Number(line), column: Number(column) }, 'does-not-fit', {
    found: `what Liquid cannot read (${words})`,
    expected: 'a layout in Liquid',
    fix: 'look for a bracket that does not close, or a word that Liquid does not know',
  });
}

/** Addresses in the clinic's own pages that lead to no file of the site. */
function deadLinks(files: readonly OutFile[], prefix: string): string[] {
  const paths = new Set(files.map(({ path }) => path));
  const dead = files
    .filter(({ path }) => path.startsWith('public/pages/'))
    .flatMap(({ path, bytes }) =>
      [...String(bytes).matchAll(/\s(?:href|src)="([^"]*)"/g)].flatMap(([, href = '']) =>
        isDead(href, path, prefix, paths) ? [href] : [],
      ),
    );
  return [...new Set(dead)];
}

const HERE = 'https://site.invalid/';

function isDead(href: string, page: string, prefix: string, paths: ReadonlySet<string>): boolean {
  if (/^[a-z][a-z0-9+.-]*:/i.test(href) || href.startsWith('#')) return false;
  if (href.startsWith('/') && !href.startsWith(prefix)) return true;
  const whole = href.startsWith('/') ? `${HERE}public/${href.slice(prefix.length)}` : href;
  const { pathname } = new URL(whole, HERE + page);
  return !paths.has(pathname.slice(1).replace(/\/$/, '/index.html'));
}

function deadLink(href: string): Problem {
  return errorAt(topOf(LAYOUT_FILE), 'link', {
    found: `a link to ${href}`,
    expected: 'the way to a page of the site that is there',
    fix: "write it from the page, as {{ up }}exercises.html, or as {{ '/exercises.html' | url }}",
  });
}
