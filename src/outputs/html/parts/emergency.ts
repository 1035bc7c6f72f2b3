/** What must never be overlooked: when to call for help at once. */
import type { EmergencyBox } from '../../../messages/shapes.ts';
import { html, type Html } from '../html.ts';
import { contactHtml } from './contact.ts';

/** The box's address in the page. */
export const EMERGENCY_ID = 'emergency';

export function emergencyHtml({ heading, lines }: EmergencyBox): Html {
  return html`<section class="emergency" id="${EMERGENCY_ID}" aria-labelledby="${EMERGENCY_ID}-heading">
    <h2 id="${EMERGENCY_ID}-heading">${contactHtml(heading)}</h2>
    <ul>
      ${lines.map((line) => html`<li>${contactHtml(line)}</li> `)}
    </ul>
  </section> `;
}
