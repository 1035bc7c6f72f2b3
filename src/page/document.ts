/** The frame of every page: head, policy, style and script in the one file. */
import type { Hashed } from './assets.ts';
import { html, nothing, trusted, type Html } from './html.ts';

export interface PageDocument {
  readonly language: string;
  readonly title: string;
  /** Class of the body: what kind of page this is. */
  readonly kind: 'leaflet' | 'record' | 'public';
  readonly style: Hashed;
  /** Null for a page without buttons. */
  readonly script: Hashed | null;
  readonly body: Html;
}

/** The whole file as text. Nothing is fetched, framed, sent or indexed; only the hashed style and script run. */
export function documentText({ language, title, kind, style, script, body }: PageDocument): string {
  const page = html`<!doctype html>
    <html lang="${language}">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content="${policy(style, script)}" />
        <title>${title}</title>
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="robots" content="noindex, nofollow, noarchive" />
        <meta name="referrer" content="no-referrer" />
        <meta name="color-scheme" content="light dark" />
        <meta name="format-detection" content="telephone=no" />
        <link rel="icon" href="data:," />
        ${element('style', style)}
      </head>
      <body class="${kind}">
        ${body} ${script === null ? nothing : element('script', script)}
      </body>
    </html> `;
  return page.markup;
}

// Not a letter may come between the tags, or the hash no longer fits.
function element(name: 'style' | 'script', { text }: Hashed): Html {
  return trusted(`<${name}>${text}</${name}>`);
}

// Content Security Policy Level 3; frame-ancestors and sandbox do not work in a meta element.
function policy(style: Hashed, script: Hashed | null): string {
  return [
    `default-src 'none'`,
    `style-src '${style.hash}'`,
    script === null ? `script-src 'none'` : `script-src '${script.hash}'`,
    'font-src data:',
    'img-src data:',
    `base-uri 'none'`,
    `form-action 'none'`,
  ].join('; ');
}
