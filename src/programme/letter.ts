/** The one-page letter at the end of treatment. */
import type { Messages } from '../messages/messages.ts';
import type { Decided } from '../decisions/decide.ts';
import { dischargeCriteria } from '../decisions/person/discharge.ts';

import type { Section } from '../messages/shapes.ts';

/** Null unless treatment ends with this programme. */
export function letterOf(say: Messages, { person, course, shown }: Decided): Section | null {
  if (course !== 'discharge') return null;
  return say.letterText({
    consult: person.consult,
    clinic: person.clinic,
    tendon: person.protocol.tendon,
    criteria: dischargeCriteria(person),
    exercises: shown[0].prescriptions.map(({ card }) => card.title),
  });
}
