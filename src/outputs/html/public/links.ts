/** Addresses of the single pages, relative to the public folder, and links to them. */
import type { Link } from '../../../catalogue/view.ts';
import { html, join, type Html } from '../html.ts';

export type PublicFolder = 'exercises' | 'protocols' | 'advice' | 'pages';

/** @example pagePath('exercises', 'hip-hinge') // => 'exercises/hip-hinge.html' */
export function pagePath(folder: PublicFolder, id: string): string {
  return `${folder}/${id}.html`;
}

/** `up`: steps from the page that holds the link up to the public folder. */
export function linkHtml(up: string, folder: PublicFolder, { id, title }: Link): Html {
  return html`<a href="${up}${pagePath(folder, id)}"><bdi>${title}</bdi></a>`;
}

export function linksHtml(up: string, folder: PublicFolder, links: readonly Link[]): Html {
  return join(
    links.map((link) => linkHtml(up, folder, link)),
    ' · ',
  );
}
