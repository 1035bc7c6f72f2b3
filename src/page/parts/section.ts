/** A headed section of paragraphs, lists and tables. */
import type { Part, Section } from '../../programme/programme.ts';
import { html, type Html } from '../html.ts';
import { listHtml } from './prose.ts';
import { tableHtml } from './table.ts';

/** The section with its heading in the margin where there is room; `kind` is its class beside `hang`. */
export function sectionHtml(section: Section, kind = ''): Html {
  return hangHtml(section.id, section.heading, html`${section.parts.map(partHtml)}`, kind);
}

/** Any content under a second-level heading. Without content there is no section. */
export function hangHtml(id: string, heading: string, content: Html, kind = ''): Html {
  if (content.markup === '') return content;
  return html`<section class="${`hang ${kind}`.trim()}" id="${id}" aria-labelledby="${id}-heading">
    <h2 id="${id}-heading">${heading}</h2>
    <div class="text">${content}</div>
  </section> `;
}

export function partHtml(part: Part): Html {
  if (part.kind === 'table') return tableHtml(part.table);
  if (part.kind === 'list')
    return listHtml(
      part.entries.map((entry) => html`${entry}`),
      part.ordered,
    );
  if (part.weight === 'strong') return html`<p class="strong">${part.text}</p> `;
  return part.weight === 'quiet' ? html`<p class="quiet">${part.text}</p> ` : html`<p>${part.text}</p> `;
}
