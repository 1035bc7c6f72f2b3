/** The dosage cells with their words and rules. */
import type { Messages } from '../messages/messages.ts';
import { type Person, cardOf } from '../decisions/person/person.ts';
import type { Prescription } from '../decisions/session/prescribe.ts';

import type { Cell } from './programme.ts';

/** All cells of an exercise, in the order of CELLS. */
export function cellsInWords(say: Messages, one: Prescription, person: Person): Cell[] {
  const texts = say.cellTexts(one);
  const titleOf = (id: string) => cardOf(person, id).title;
  return one.cells.map(({ step, slot, card, cell, value, rule, ...why }) => ({
    step,
    slot,
    card,
    cell,
    value,
    text: texts[cell],
    rule: say.ruleText(rule, titleOf),
    ...why,
  }));
}
