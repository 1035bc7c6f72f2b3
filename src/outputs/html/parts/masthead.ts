/** Head and foot of a sheet: whose it is, from when to when, who stands behind it. */
import { base64 } from '../../../units/base64.ts';
import type { LeafletLabels } from '../../../messages/en/labels.ts';
import type { Programme } from '../../../programme/programme.ts';
import type { LogoImage } from '../assets.ts';
import { html, nothing, type Html } from '../html.ts';
import { contactHtml } from './contact.ts';

/** Clinic, line of alias and dates, title, and the two buttons that only a script can bring to life. */
export function mastheadHtml(
  programme: Programme,
  title: string,
  labels: LeafletLabels,
  logo: LogoImage | null,
): Html {
  return html`<header class="masthead">
    <div class="line">
      <p class="clinic">${sheetLogoHtml(logo)}<bdi>${programme.clinic.name}</bdi></p>
      <p class="running">${programme.runningLine}</p>
      ${toolsHtml(labels)}
    </div>
    <h1>${title}</h1>
  </header> `;
}

/** Notice, who wrote it, how to reach the clinic, and the mark of the make. */
export function footHtml(programme: Programme, labels: LeafletLabels): Html {
  return html`<footer class="foot">
    ${programme.notice.map((sentence) => html`<p>${sentence}</p> `)}
    <p>${labels.from} <bdi>${programme.clinician}</bdi>, <bdi>${programme.clinic.name}</bdi></p>
    <ul class="contact">
      ${programme.clinic.contact.map((line) => html`<li><bdi>${contactHtml(line)}</bdi></li> `)}
    </ul>
    <p class="running">${programme.runningLine}</p>
    ${markHtml(programme, labels)}
  </footer> `;
}

/** In small type, to be held against the one on the paper. */
function markHtml({ mark }: Programme, labels: LeafletLabels): Html {
  return mark === undefined ? nothing : html`<p data-mark="${mark}">${labels.mark} ${mark}</p> `;
}

// A sheet is one file: the picture stands in it.
function sheetLogoHtml(logo: LogoImage | null): Html {
  if (logo === null) return nothing;
  return logoHtml(logo, `data:image/png;base64,${base64(logo.png)}`);
}

/** The picture alone, for the name stands beside it. */
export function logoHtml({ widthPx, heightPx }: LogoImage, address: string): Html {
  return html`<img class="logo" src="${address}" width="${widthPx}" height="${heightPx}" alt="" /> `;
}

export function toolsHtml({ print, toDark, toLight }: LeafletLabels): Html {
  return html`<div class="tools" data-tools hidden>
    <button type="button" data-tool="theme" data-to-dark="${toDark}" data-to-light="${toLight}">
      ${toDark}
    </button>
    <button type="button" data-tool="print">${print}</button>
  </div> `;
}
