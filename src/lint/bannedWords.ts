/** Words that no leaflet says: the clinic's own talk, and words that frighten or promise. */
import type { Shelves } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { finderOf, type Lexicon } from './lexicon.ts';
import { warn } from './spot.ts';
import { sheetsOf } from './text.ts';

/** House rules 9; percentages and body weights are what its kilograms stand for. The words instead are ours [choice]. */
const BANNED: Lexicon = [
  ['stag(?:es?|ed|ing)', 'for now, or the step on your plan'],
  ['(?<!knee |bottle )cap(?:s|ped|ping)?', 'as far as your plan says'],
  ['compress(?:ion|ions|es|ed|ing|ive)?', 'press, squeeze'],
  ['demand(?:s|ed|ing)?', 'work, ask for'],
  ['reserves?', 'what you could still do'],
  ['\\d*-?RM|repetition[- ]max(?:imum|ima)?', 'the kilograms on your plan'],
  ['damag(?:es?|ed|ing)', 'sore'],
  ['torn|tear(?:s|ing)?|rupture[sd]?', 'sore'],
  ['(?:un)?safe(?:ly|r|st|ty)?', 'steady, or say what holds'],
  ['danger(?:s|ous|ously)?', 'say what may happen and what to do then'],
  ['risk(?:s|y|ier|ed|ing)?', 'say what may happen and what to do then'],
  ['[\\d.,]+ ?%|per ?cent', 'kilograms, seconds or times'],
  ['body[- ]?weights?', 'without a weight, or kilograms'],
];

/** The banned words of a text. */
export const bannedIn = finderOf(BANNED);

export function bannedWords(library: Shelves, placeOf: PlaceOf): Problem[] {
  return sheetsOf(library).flatMap(({ kind, id, texts }) =>
    texts
      .filter(({ on }) => on === 'leaflet')
      .flatMap(({ path, text }) =>
        bannedIn(text).map(({ word, offset, instead }) =>
          warn(placeOf, { kind, id, path, offset }, 'banned-word', {
            found: `text with “${word}”`,
            expected: 'text without the words a leaflet leaves out',
            fix: `write it another way: ${instead}`,
          }),
        ),
      ),
  );
}
