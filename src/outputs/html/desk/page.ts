/** The page of the desk: a head that lets nothing in but its own, and an empty sheet that its script fills. */
import { html, type Html } from '../html.ts';

/** Names of the files beside the page. */
export interface DeskNames {
  readonly style: string;
  /** The reader of YAML, before the page's own script. */
  readonly yaml: string;
  readonly script: string;
  readonly worker: string;
  readonly later: string;
  readonly paper: string;
  readonly post: string;
  readonly catalogue: string;
  readonly library: string;
  readonly dress: string;
  readonly sealing: string;
  readonly regular: string;
  readonly bold: string;
}

export const DESK_WORDS = {
  title: 'Desk',
  noScript:
    'The desk works out the programme in this browser, and for that it needs scripts. Nothing is sent anywhere.',
  loading: 'The library is being read.',
} as const;

/** The whole file as text. `clinic`: the name in its head. */
export function deskHtml(names: DeskNames, clinic: string): string {
  return html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content="${POLICY}" />
        <title>${DESK_WORDS.title} · ${clinic}</title>
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="generator" content="Loadleaf" />
        <meta name="robots" content="noindex, nofollow, noarchive" />
        <meta name="referrer" content="no-referrer" />
        <meta name="color-scheme" content="light dark" />
        <meta name="format-detection" content="telephone=no" />
        <link rel="icon" href="data:," />
        <link rel="stylesheet" href="${names.style}" />
        ${scriptHtml(names)}
      </head>
      <body class="desk leaflet" data-state="loading">
        <div id="desk">
          <h1>${DESK_WORDS.title}</h1>
          <p>${DESK_WORDS.loading}</p>
          <noscript><p>${DESK_WORDS.noScript}</p></noscript>
        </div>
      </body>
    </html> `.markup;
}

function scriptHtml(names: DeskNames): Html {
  const { yaml, script, worker, later, paper, post, catalogue, library, dress, sealing, regular, bold } =
    names;
  return html`<script defer src="${yaml}"></script>
    <script
      defer
      src="${script}"
      data-yaml="${yaml}"
      data-worker="${worker}"
      data-later="${later}"
      data-paper="${paper}"
      data-post="${post}"
      data-catalogue="${catalogue}"
      data-library="${library}"
      data-dress="${dress}"
      data-sealing="${sealing}"
      data-regular="${regular}"
      data-bold="${bold}"
    ></script>`;
}

// Content Security Policy Level 3. Pictures of made files are shown from memory, never fetched from elsewhere.
const POLICY = [
  `default-src 'none'`,
  `style-src 'self'`,
  `script-src 'self'`,
  `worker-src 'self'`,
  `connect-src 'self'`,
  `img-src 'self' data:`,
  'font-src data:',
  `base-uri 'none'`,
  `form-action 'none'`,
].join('; ');
