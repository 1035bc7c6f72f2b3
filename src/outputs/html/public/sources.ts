/** What a card, an advice card or a protocol rests on. */
import { MARK_WORDS } from '../../../messages/en/catalogue/library.ts';
import type { Source } from '../../../units/source.ts';
import { html, type Html } from '../html.ts';

export function sourcesHtml(sources: readonly Source[]): Html {
  return html`<ul class="sources">
    ${sources.map((source) => html`<li>${sourceHtml(source)}</li> `)}
  </ul> `;
}

export function sourceHtml({ cite, mark }: Source): Html {
  return html`${cite} <span class="mark">${MARK_WORDS[mark]}</span>`;
}
