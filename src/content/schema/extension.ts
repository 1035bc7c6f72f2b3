/** A protocol that is another one with some values changed, cards added to slots, and cards left out. */
import * as z from 'zod';
import { about, id, line, mark, oneLine } from './words.ts';

const single = z.union([z.number(), z.boolean(), oneLine('some text', 600)], 'a number, a word or a text');

export const extensionSchema = z.strictObject({
  extends: about('The id of the protocol that is changed.', id),
  values: about(
    'Values that are changed, one each.',
    z.array(
      z.strictObject({
        path: about('The way to the value, such as stages[Main].slots[Bow].dose.sets.', line),
        value: about('What it is with us.', single),
        was: about(
          'What it is in the protocol below; an error once that is something else.',
          single,
        ).optional(),
        mark: about('How sure we are of it; asked for with every number.', mark).optional(),
        cite: about('Where it stands; asked for with every number.', oneLine('a source', 200)).optional(),
      }),
    ),
  ).default([]),
  addCards: about(
    'Cards that may fill a slot, too.',
    z.array(
      z.strictObject({
        slot: about('The way to the slot, such as stages[Main].slots[Bow].', line),
        card: about('The id of the card.', id),
        place: about('Before all others, or after them.', z.enum(['first', 'last'])).default('last'),
      }),
    ),
  ).default([]),
  hideCards: about('Cards that fill no slot of it any more.', z.array(id)).default([]),
});

export type ExtensionFrontMatter = z.output<typeof extensionSchema>;
export type Single = string | number | boolean;
