/** How the numbers are made: the page of the public part that says what the body model is and is not. */
import { labelsOf } from '../../programme/phrases/labels.ts';
import { numbersPage } from '../../programme/library/numbers.ts';
import type { PageAssets } from '../assets.ts';
import { documentText } from '../document.ts';
import { html } from '../html.ts';
import { toolsHtml } from '../parts/masthead.ts';
import { sectionHtml } from '../parts/section.ts';
import type { Front } from './startPage.ts';

/** `numbers/index.html` of the public folder as text. */
export function numbersPageHtml({ language, clinic, notice }: Front, assets: PageAssets): string {
  const { title, lead, sections } = numbersPage();
  return documentText({
    language,
    title,
    kind: 'public',
    style: assets.public,
    script: assets.script,
    body: html`<header class="masthead">
        <div class="line">
          <p class="clinic"><bdi>${clinic.name}</bdi></p>
          ${toolsHtml(labelsOf(language).leaflet)}
        </div>
        <h1>${title}</h1>
        <p>${lead}</p>
      </header>
      <main>${sections.map((section) => sectionHtml(section))}</main>
      <footer class="foot">${notice.map((sentence) => html`<p>${sentence}</p> `)}</footer>`,
  });
}
