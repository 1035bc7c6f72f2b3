/** The small block tree of a Markdown body as markup. */
import type { Block, Inline, ListEntry } from '../../content/prose/block.ts';
import { html, type Html } from '../html.ts';

/** Level of the headings: 3 below a section, 4 inside an exercise. */
export type Level = 3 | 4;

/** Headed prose; an empty heading is left out. */
export function proseHtml(
  body: readonly { readonly heading: string; readonly blocks: readonly Block[] }[],
  level: Level,
): readonly Html[] {
  return body.flatMap(({ heading, blocks }) => [
    ...(heading === '' ? [] : [headingHtml(heading, level)]),
    ...blocks.map(blockHtml),
  ]);
}

export function headingHtml(heading: string, level: Level): Html {
  return level === 3 ? html`<h3>${heading}</h3> ` : html`<h4>${heading}</h4> `;
}

function blockHtml(block: Block): Html {
  if (block.kind === 'paragraph') return html`<p>${inlines(block.text)}</p> `;
  return listHtml(block.entries.map(entryHtml), block.ordered);
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

function entryHtml({ text, entries, ordered }: ListEntry): Html {
  if (entries.length === 0) return html`${inlines(text)}`;
  return html`${inlines(text)}
  ${listHtml(
    entries.map((entry) => html`${inlines(entry.text)}`),
    ordered,
  )}`;
}

function inlines(text: readonly Inline[]): Html[] {
  return text.map(inlineHtml);
}

function inlineHtml(inline: Inline): Html {
  switch (inline.kind) {
    case 'text':
      return html`${inline.text}`;
    case 'strong':
      return html`<strong>${inlines(inline.children)}</strong>`;
    case 'emphasis':
      return html`<em>${inlines(inline.children)}</em>`;
    case 'link':
      return html`<a href="${inline.href}" rel="noreferrer noopener">${inlines(inline.children)}</a>`;
  }
}
