/** How the numbers are made: the page of the public part that says what the body model is and is not. */
import { labelsOf } from '../../programme/phrases/labels.ts';
import { NUMBERS_LEAD, NUMBERS_TITLE, numbersSections } from '../../programme/phrases/numbers.ts';
import type { PageAssets } from '../assets.ts';
import { documentText } from '../document.ts';
import { html } from '../html.ts';
import { toolsHtml } from '../parts/masthead.ts';
import { sectionHtml } from '../parts/section.ts';
import type { Front } from './startPage.ts';

/** `numbers/index.html` of the public folder as text. */
export function numbersPageHtml({ language, clinic, notice }: Front, assets: PageAssets): string {
  return documentText({
    language,
    title: NUMBERS_TITLE,
    kind: 'public',
    style: assets.public,
    script: assets.script,
    body: html`<header class="masthead">
        <div class="line">
          <p class="clinic"><bdi>${clinic.name}</bdi></p>
          ${toolsHtml(labelsOf(language).leaflet)}
        </div>
        <h1>${NUMBERS_TITLE}</h1>
        ${NUMBERS_LEAD.map((sentence) => html`<p>${sentence}</p> `)}
      </header>
      <main>${numbersSections().map((section) => sectionHtml(section))}</main>
      <footer class="foot">${notice.map((sentence) => html`<p>${sentence}</p> `)}</footer>`,
  });
}
