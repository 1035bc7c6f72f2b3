/** What must never be overlooked: when to call for help at once. */
import type { EmergencyBox } from '../../../messages/shapes.ts';
import { spoken, type ForeignWord } from '../../../messages/foreign.ts';
import { html, type Html } from '../html.ts';
import { contactHtml } from './contact.ts';

/** The box's address in the page. */
export const EMERGENCY_ID = 'emergency';

export function emergencyHtml({ heading, call, lines, then, foreign }: EmergencyBox): Html {
  return html`<section class="emergency" id="${EMERGENCY_ID}" aria-labelledby="${EMERGENCY_ID}-heading">
    <h2 id="${EMERGENCY_ID}-heading">${contactHtml(heading)}</h2>
    <p>${spokenHtml(call, foreign)}</p>
    <ul>
      ${lines.map((line) => html`<li>${spokenHtml(line, foreign)}</li> `)}
    </ul>
    ${then.map((words) => html`<p>${spokenHtml(words, foreign)}</p> `)}
  </section> `;
}

function spokenHtml(text: string, foreign: readonly ForeignWord[]): Html {
  return html`${spoken(text, foreign).map(({ text: words, language }) =>
    language === null ? contactHtml(words) : html`<span lang="${language}">${words}</span>`,
  )}`;
}
