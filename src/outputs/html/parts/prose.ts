/** The small block tree of a Markdown body as markup. */
import type { Block, Inline, ListEntry } from '../../../content/prose/block.ts';
import { CLINIC_FILE } from '../../../content/kind.ts';
import { isOutward } from '../../../content/prose/link.ts';
import { html, type Html } from '../html.ts';

/** Level of the headings: 3 below a section, 4 inside an exercise. */
export type Level = 3 | 4;

/**
 * Headed prose; an empty heading is left out. `up`: steps from the page up to the public folder, for links to its other
 * pages; null on the page of a person, beside which there are none: of such a link the words are left.
 */
export function proseHtml(
  body: readonly { readonly heading: string; readonly blocks: readonly Block[] }[],
  level: Level,
  up: string | null = null,
): readonly Html[] {
  return body.flatMap(({ heading, blocks }) => [
    ...(heading === '' ? [] : [headingHtml(heading, level)]),
    ...blocks.map((block) => blockHtml(block, up)),
  ]);
}

export function headingHtml(heading: string, level: Level): Html {
  return level === 3 ? html`<h3>${heading}</h3> ` : html`<h4>${heading}</h4> `;
}

function blockHtml(block: Block, up: string | null): Html {
  if (block.kind === 'paragraph') return html`<p>${inlines(block.text, up)}</p> `;
  return listHtml(
    block.entries.map((entry) => entryHtml(entry, up)),
    block.ordered,
  );
}

export function listHtml(entries: readonly Html[], ordered: boolean): Html {
  const items = entries.map((entry) => html`<li>${entry}</li> `);
  return ordered
    ? html`<ol>
        ${items}
      </ol> `
    : html`<ul>
        ${items}
      </ul> `;
}

function entryHtml({ text, entries, ordered }: ListEntry, up: string | null): Html {
  if (entries.length === 0) return html`${inlines(text, up)}`;
  return html`${inlines(text, up)}
  ${listHtml(
    entries.map((entry) => html`${inlines(entry.text, up)}`),
    ordered,
  )}`;
}

function inlines(text: readonly Inline[], up: string | null): Html[] {
  return text.map((inline) => inlineHtml(inline, up));
}

function inlineHtml(inline: Inline, up: string | null): Html {
  switch (inline.kind) {
    case 'text':
      return html`${inline.text}`;
    case 'strong':
      return html`<strong>${inlines(inline.children, up)}</strong>`;
    case 'emphasis':
      return html`<em>${inlines(inline.children, up)}</em>`;
    case 'link':
      return linkHtml(inline.href, html`${inlines(inline.children, up)}`, up);
  }
}

function linkHtml(href: string, words: Html, up: string | null): Html {
  if (isOutward(href)) return html`<a href="${href}" rel="noreferrer noopener">${words}</a>`;
  return up === null ? words : html`<a href="${up}${pageOf(href)}">${words}</a>`;
}

// The clinic shows itself on the first page; cards of a folder within their folder have their pages beside the others.
function pageOf(file: string): string {
  if (file === CLINIC_FILE) return 'index.html';
  return file.replace(/^([^/]+)\/(?:.*\/)?([^/]+)\.md$/, '$1/$2.html');
}
