/** What must never be overlooked: when to call for help at once. */
import type { EmergencyBox } from '../../../programme/programme.ts';
import { html, type Html } from '../html.ts';

/** The box's address in the page. */
export const EMERGENCY_ID = 'emergency';

export function emergencyHtml({ heading, call, lines, then }: EmergencyBox): Html {
  return html`<section class="emergency" id="${EMERGENCY_ID}" aria-labelledby="${EMERGENCY_ID}-heading">
    <h2 id="${EMERGENCY_ID}-heading">${heading}</h2>
    <p>${call}</p>
    <ul>
      ${lines.map((line) => html`<li>${line}</li> `)}
    </ul>
    ${then.map((words) => html`<p>${words}</p> `)}
  </section> `;
}
