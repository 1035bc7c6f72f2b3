/** What must never be overlooked: when to call for help at once. */
import type { EmergencyBox } from '../../programme/programme.ts';
import { html, type Html } from '../html.ts';

export function emergencyHtml({ heading, lines }: EmergencyBox): Html {
  return html`<section class="emergency" id="emergency" aria-labelledby="emergency-heading">
    <h2 id="emergency-heading">${heading}</h2>
    <ul>
      ${lines.map((line) => html`<li>${line}</li> `)}
    </ul>
  </section> `;
}
