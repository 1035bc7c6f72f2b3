/** The page that stands on the web: it holds a leaflet sealed, or says that it is in use no longer. Nobody's name is in it. */
import type { SealedWords } from '../../../messages/en/patient/sealed.ts';
import type { Hashed } from '../assets.ts';
import { element } from '../document.ts';
import { html, trusted, type Html } from '../html.ts';
import { withSources } from './policy.ts';

/** Style and script of these pages, with their hashes. */
export interface SealedAssets {
  readonly style: Hashed;
  readonly script: Hashed;
  readonly withdrawn: Hashed;
}

/** `leafletPolicy`: what the leaflet's own page lets run, since it is put into this one. */
export function sealedPage(
  jwe: string,
  words: SealedWords,
  leafletPolicy: string,
  { style, script }: SealedAssets,
): string {
  return frame(
    words,
    'locked',
    withSources(leafletPolicy, style.hash, script.hash),
    style,
    html`
      <div data-part="wrong">${paragraphs(words.wrong)}${contact(words)}</div>
      <div data-part="withdrawn" hidden>${paragraphs(words.withdrawn)}${contact(words)}</div>
      <div data-part="asks" hidden>${form(words)}${contact(words)}</div>
      <script type="application/json" id="sealed-words">
        ${trusted(JSON.stringify(words.keep).replaceAll('<', '\\u003c'))}
      </script>
      <script type="application/jose" id="sealed-leaflet">
        ${trusted(jwe)}
      </script>
      ${element('script', script)}
    `,
  );
}

/** In the same place when the leaflet is withdrawn; it empties what a phone has kept. */
export function withdrawnPage(words: SealedWords, { style, withdrawn }: SealedAssets): string {
  return frame(
    words,
    'withdrawn',
    withSources('', style.hash, withdrawn.hash),
    style,
    html`
      <div data-part="withdrawn">${paragraphs(words.withdrawn)}${contact(words)}</div>
      ${element('script', withdrawn)}
    `,
  );
}

// Where one letter of an end tag is spoilt, its element would swallow the message: it ends here at the latest. It stands in
// an attribute, for a comment that is not closed would swallow the message too.
const ENDED = '</title></style>';

function frame(
  { title }: SealedWords,
  state: 'locked' | 'withdrawn',
  policy: string,
  style: Hashed,
  body: Html,
): string {
  return `${
    html`<!doctype html>
      <html lang="en" data-sealed="${state}">
        <head>
          <meta charset="utf-8" />
          <meta http-equiv="Content-Security-Policy" content="${policy}" />
          <meta name="viewport" content="width=device-width, initial-scale=1" />
          <meta name="robots" content="noindex, nofollow, noarchive" />
          <meta name="referrer" content="no-referrer" />
          <meta name="color-scheme" content="light dark" />
          <meta name="generator" content="Loadleaf" />
          <link rel="icon" href="data:," />
          <title>${title}</title>
          ${element('style', style)}
        </head>
        <body data-ended="${trusted(ENDED)}">
          <main>
            <h1>${title}</h1>
            ${body}
          </main>
        </body>
      </html>`.markup
  }\n`;
}

function paragraphs(texts: readonly string[]): Html[] {
  return texts.map((text) => html`<p>${text}</p>`);
}

function contact({ contact: { heading, lines } }: SealedWords): Html {
  return html`<h2>${heading}</h2>
    <ul>
      ${lines.map((line) => html`<li>${line}</li>`)}
    </ul>`;
}

function form({ asks }: SealedWords): Html {
  return html`<form>
    <p>
      <label for="words">${asks.label}</label>
      <input id="words" type="text" autocomplete="off" autocapitalize="none" spellcheck="false" />
      <button type="submit">${asks.open}</button>
    </p>
    <p>${asks.hint}</p>
    <p data-wrong role="alert" hidden>${asks.wrong}</p>
  </form>`;
}
