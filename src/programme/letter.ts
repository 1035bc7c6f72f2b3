/** The one-page letter at the end of treatment. */
import type { Messages } from '../messages/messages.ts';
import type { Decided } from '../decisions/decide.ts';
import { dischargeCriteria } from '../decisions/person/discharge.ts';

import type { CourseEntry } from './programme.ts';
import { scoreChanges } from './record/scores.ts';
import type { Section } from '../messages/shapes.ts';

/** Null unless treatment ends with this programme. */
export function letterOf(
  say: Messages,
  { person, course, shown }: Decided,
  revisions: readonly CourseEntry[],
): Section | null {
  if (course !== 'discharge') return null;
  return say.letterText({
    consult: person.consult,
    clinic: person.clinic,
    tendon: person.protocol.tendon,
    criteria: dischargeCriteria(person),
    scores: scoreChanges(revisions, person.protocol),
    titleOf: (card) => person.library.exercises.get(card)?.title ?? card,
    exercises: shown[0].prescriptions.map(({ card }) => card.title),
  });
}
