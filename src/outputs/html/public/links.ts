/** Addresses of the single pages, relative to the public folder, and links to them. */
import type { Link } from '../../../catalogue/view.ts';
import { html, join, type Html } from '../html.ts';

export type PublicFolder = 'exercises' | 'protocols' | 'advice' | 'pages';

/** @example pagePath('exercises', 'hip-hinge') // => 'exercises/hip-hinge.html' */
export function pagePath(shelf: PublicFolder, id: string): string {
  return `${shelf}/${id}.html`;
}

/** `up`: steps from the page that holds the link up to the public folder. */
export function linkHtml(up: string, shelf: PublicFolder, { id, title }: Link): Html {
  return html`<a href="${up}${pagePath(shelf, id)}"><bdi>${title}</bdi></a>`;
}

export function linksHtml(up: string, shelf: PublicFolder, links: readonly Link[]): Html {
  return join(
    links.map((link) => linkHtml(up, shelf, link)),
    ' · ',
  );
}
