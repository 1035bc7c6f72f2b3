/** The frame of every page: head, policy, style and script in the one file. */
import type { Hashed } from './assets.ts';
import { html, trusted, type Html } from './html.ts';

export interface PageDocument {
  readonly language: string;
  readonly title: string;
  /** Class of the body: what kind of page this is. */
  readonly kind: 'leaflet' | 'record' | 'public';
  readonly style: Hashed;
  /** Runs before the body is read. */
  readonly arrival: Hashed;
  /** Stands within the body, and runs when that is read as far. */
  readonly within?: Hashed;
  /** Runs when all of it has been read. */
  readonly script: Hashed;
  readonly body: Html;
}

/** The whole file as text. Nothing is fetched, framed, sent or indexed; only the hashed style and scripts run. */
export function documentText(sheet: PageDocument): string {
  const { language, title, kind, style, arrival, within, script, body } = sheet;
  const scripts = [arrival, ...(within === undefined ? [] : [within]), script];
  const page = html`<!doctype html>
    <html lang="${language}">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content="${policy(style, scripts)}" />
        <title>${title}</title>
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="robots" content="noindex, nofollow, noarchive" />
        <meta name="referrer" content="no-referrer" />
        <meta name="color-scheme" content="light dark" />
        <meta name="format-detection" content="telephone=no" />
        <link rel="icon" href="data:," />
        ${element('style', style)} ${element('script', arrival)}
      </head>
      <body class="${kind}">
        ${body} ${element('script', script)}
      </body>
    </html> `;
  return page.markup;
}

/** Not a letter may come between the tags, or the hash no longer fits. */
export function element(name: 'style' | 'script', { text }: Hashed): Html {
  return trusted(`<${name}>${text}</${name}>`);
}

/** The address of the block in the page. */
const BLOCK_ID = 'sheet-in-use';

/** For the scripts to read; the page shows nothing of it. */
// A block of data is never run, so the policy need not name it. No letter in it may end it.
export function blockHtml(block: object): Html {
  const text = JSON.stringify(block).replace(/</g, '\\u003c');
  return trusted(`<script type="application/json" id="${BLOCK_ID}">${text}</script>`);
}

// Content Security Policy Level 3; frame-ancestors and sandbox do not work in a meta element.
function policy(style: Hashed, scripts: readonly Hashed[]): string {
  return [
    `default-src 'none'`,
    `style-src '${style.hash}'`,
    `script-src ${scripts.map(({ hash }) => `'${hash}'`).join(' ')}`,
    'font-src data:',
    'img-src data:',
    `base-uri 'none'`,
    `form-action 'none'`,
  ].join('; ');
}
