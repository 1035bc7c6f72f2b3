/** The first page of the public folder, plain until the library has its own pages. */
import { labelsOf } from '../../programme/phrases/labels.ts';
import { NUMBERS_TITLE } from '../../programme/phrases/numbers.ts';
import type { Programme } from '../../programme/programme.ts';
import type { PageAssets } from '../assets.ts';
import { documentText } from '../document.ts';
import { html } from '../html.ts';

/** What the public pages say of the clinic; nothing of any person. */
export interface Front {
  readonly language: Programme['language'];
  readonly clinic: Programme['clinic'];
  readonly notice: Programme['notice'];
}

/** `index.html` of the public folder as text. */
export function startPageHtml({ language, clinic, notice }: Front, assets: PageAssets): string {
  const labels = labelsOf(language).public;
  return documentText({
    language,
    title: labels.startTitle,
    kind: 'public',
    style: assets.public,
    script: null,
    body: html`<header class="masthead">
        <div class="line">
          <p class="clinic"><bdi>${clinic.name}</bdi></p>
        </div>
        <h1>${labels.startTitle}</h1>
      </header>
      <main>
        <p>${labels.aboutFolder}</p>
        <p><a href="numbers/index.html">${NUMBERS_TITLE}</a></p>
        <p><a href="style/index.html">${labels.styleTitle}</a></p>
      </main>
      <footer class="foot">
        ${notice.map((sentence) => html`<p>${sentence}</p> `)}
        <ul class="contact">
          ${clinic.contact.map((line) => html`<li><bdi>${line}</bdi></li> `)}
        </ul>
      </footer>`,
  });
}
