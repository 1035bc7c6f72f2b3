/** A headed section of paragraphs, lists and tables. */
import type { Part, Section } from '../../../messages/shapes.ts';
import { html, type Html } from '../html.ts';
import { linked, NO_PLACES, type Places } from './linked.ts';
import { listHtml } from './prose.ts';
import { tableHtml } from './table.ts';

/** The section with its heading in the margin where there is room; `kind` is its class beside `hang`, `places` what names in it lead to. */
export function sectionHtml(section: Section, kind = '', places: Places = NO_PLACES): Html {
  const content = html`${section.parts.map((part) => partHtml(part, places))}`;
  return hangHtml(section.id, section.heading, content, kind);
}

/** Any content under a second-level heading. Without content there is no section. */
export function hangHtml(id: string, heading: string, content: Html, kind = ''): Html {
  if (content.markup === '') return content;
  return html`<section class="${`hang ${kind}`.trim()}" id="${id}" aria-labelledby="${id}-heading">
    <h2 id="${id}-heading">${heading}</h2>
    <div class="text">${content}</div>
  </section> `;
}

/** `places`: names in the text that lead somewhere. */
export function partHtml(part: Part, places: Places = NO_PLACES): Html {
  if (part.kind === 'table') return tableHtml(part.table, places);
  if (part.kind === 'list')
    return listHtml(
      part.entries.map((entry) => linked(entry, places)),
      part.ordered,
    );
  const text = linked(part.text, places);
  if (part.weight === 'strong') return html`<p class="strong">${text}</p> `;
  return part.weight === 'quiet' ? html`<p class="quiet">${text}</p> ` : html`<p>${text}</p> `;
}
