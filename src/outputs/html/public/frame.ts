/** The frame of the public pages: head, policy, the way to the other pages, and the foot. */
import type { LibraryView } from '../../../catalogue/view.ts';
import type { FilterKey } from '../../../decisions/terms/scale.ts';
import { LIBRARY_LABELS } from '../../../messages/en/catalogue/libraryLabels.ts';
import { type PageAssets, hashed } from '../assets.ts';
import { html, nothing, type Html, trusted } from '../html.ts';
import { pagePath } from './links.ts';
import { logoHtml } from '../parts/masthead.ts';

export interface PublicPage {
  readonly title: string;
  /** Steps up to the public folder: empty on its own level, `../` below it. */
  readonly up: '' | '../';
  /** Where the page stands in the way to the others; null where it has no entry there. */
  readonly place: keyof typeof LIBRARY_LABELS.ways | null;
  /** Id of the clinic's own page it is; left out for ours. */
  readonly own?: string;
  /** Under the title: one line of what it is. */
  readonly lead: Html;
  readonly main: Html;
  /** Scripts by the names of their files, in the order they run. */
  readonly scripts?: readonly PublicScript[];
}

export type PublicScript = 'catalogue.js' | 'words.js' | 'sheet.js';

/** Where the clinic's logo lies, from the public folder. */
export const LOGO_FILE = 'assets/logo.png';

/** The clinic's own style, in `assets/`. */
export const OWN_STYLE = 'own.css';
export const FEED_FILE = 'feed.xml';
export const SITEMAP_FILE = 'sitemap.xml';

/** The addresses of the first pages, from the public folder. */
export const ADDRESSES: Readonly<Record<keyof typeof LIBRARY_LABELS.ways, string>> = {
  start: 'index.html',
  exercises: 'exercises.html',
  protocols: 'protocols.html',
  advice: 'advice.html',
  numbers: 'numbers.html',
  glossary: 'glossary.html',
  authors: 'authors.html',
};

/** The index with one word of a filter chosen. @example indexWith('stage', 'keep-1') // => 'exercises.html?stage=keep-1' */
export function indexWith(filter: FilterKey, value: string): string {
  return `${ADDRESSES.exercises}?${filter}=${value}`;
}

/**
 * The whole file as text. Style and scripts stand in `assets/`, once for all pages; every address is relative, so that
 * the folder works wherever it lies. Nothing else is fetched, framed or sent.
 */
export function publicHtml(
  { title, up, place, own, lead, main, scripts = [] }: PublicPage,
  view: LibraryView,
  assets: PageAssets,
): string {
  const { clinic } = view;
  const page = html`<!doctype html>
    <html lang="${view.language}">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content="${policy(scripts.length > 0)}" />
        <title>${title === clinic.name ? title : `${title} · ${clinic.name}`}</title>
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="generator" content="Loadleaf" />
        <meta name="referrer" content="no-referrer" />
        <meta name="color-scheme" content="light dark" />
        <meta name="format-detection" content="telephone=no" />
        <link rel="icon" href="data:," />
        <link rel="stylesheet" href="${up}${asset('sheet.css', versionOf(assets.public.hash))}" />
        ${
          view.dress.style === null
            ? nothing
            : html`<link
                rel="stylesheet"
                href="${up}${asset(OWN_STYLE, versionOf(hashed(view.dress.style).hash))}"
              /> `
        }
        ${
          hasFeed(view)
            ? html`<link
                rel="alternate"
                type="application/atom+xml"
                title="${view.site?.feedTitle ?? ''}"
                href="${up}${FEED_FILE}"
              /> `
            : nothing
        }
        ${scripts.map((script) => html`<script defer src="${up}${asset(script, versionOfScript(script, view, assets))}"></script> `)}
      </head>
      <body class="public">
        <a class="skip" href="#main">${LIBRARY_LABELS.skip}</a>
        <header class="masthead">
          <div class="line">
            <p class="clinic">
              ${assets.logo === null ? nothing : logoHtml(assets.logo, up + LOGO_FILE)}<bdi
                >${clinic.name}</bdi
              >
            </p>
          </div>
          ${waysHtml(up, place)} ${ownWaysHtml(up, own, view)}
          <h1>${title}</h1>
          ${lead}
        </header>
        <main id="main">${main}</main>
        ${footHtml(up, view)}
      </body>
    </html> `;
  return page.markup;
}

function waysHtml(up: string, place: PublicPage['place']): Html {
  const ways = Object.entries(LIBRARY_LABELS.ways) as [keyof typeof ADDRESSES, string][];
  return html`<nav class="rooms" aria-label="${LIBRARY_LABELS.nav}">
    <ul>
      ${ways.map(([name, label]) =>
        name === place
          ? html`<li><a href="${up}${ADDRESSES[name]}" aria-current="page">${label}</a></li> `
          : html`<li><a href="${up}${ADDRESSES[name]}">${label}</a></li> `,
      )}
    </ul>
  </nav>`;
}

/** The menu of the clinic's own pages. */
function ownWaysHtml(up: string, own: string | undefined, { pages, clinic }: LibraryView): Html {
  if (pages.length === 0) return nothing;
  return html`<nav class="rooms own" aria-label="${clinic.name}">
    <ul>
      ${pages.map(
        ({ id, menu }) =>
          html`<li>
            <a href="${up}${pagePath('pages', id)}" ${id === own ? trusted('aria-current="page"') : nothing}
              ><bdi>${menu}</bdi></a
            >
          </li> `,
      )}
    </ul>
  </nav>`;
}

export function hasFeed({ site }: LibraryView): boolean {
  return site !== null && site.feed.length > 0;
}

function footHtml(up: string, view: LibraryView): Html {
  const { notice, clinic, version } = view;
  return html`<footer class="foot">
    ${notice.map((sentence) => html`<p>${sentence}</p> `)}
    <ul class="contact">
      ${clinic.contact.map((line) => html`<li><bdi>${line}</bdi></li> `)}
    </ul>
    ${hasFeed(view) ? html`<p><a href="${up}${FEED_FILE}">${LIBRARY_LABELS.feed}</a></p> ` : nothing}
    <p class="running">${version}</p>
  </footer>`;
}

function asset(file: string, version: string): string {
  return `assets/${file}?v=${version}`;
}

/** A new file under an old name must not be mistaken for the one a browser kept. */
function versionOf(hash: string): string {
  return hash
    .replace(/^sha256-/, '')
    .replace(/[^A-Za-z0-9]/g, '')
    .slice(0, 8);
}

function versionOfScript(script: PublicScript, view: LibraryView, assets: PageAssets): string {
  if (script === 'words.js') return view.id;
  return versionOf(script === 'sheet.js' ? assets.script.hash : assets.catalogue.hash);
}

function policy(hasScript: boolean): string {
  return [
    `default-src 'none'`,
    `style-src 'self'`,
    hasScript ? `script-src 'self'` : `script-src 'none'`,
    `img-src 'self' data:`,
    'font-src data:',
    `base-uri 'none'`,
    `form-action 'none'`,
  ].join('; ');
}
