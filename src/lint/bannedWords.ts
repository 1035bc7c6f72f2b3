/** Words that no leaflet says: the clinic's own talk, and words that frighten or promise. */
import type { LibraryFiles } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { BANNED } from '../messages/en/author/lexicon.ts';
import { bannedWord } from '../messages/en/author/words.ts';
import { finderOf } from './lexicon.ts';
import { warn } from './fieldPlace.ts';
import { sheetsOf } from './text.ts';

/** The banned words of a text. */
export const bannedIn = finderOf(BANNED);

export function bannedWords(library: LibraryFiles, placeOf: PlaceOf): Problem[] {
  return sheetsOf(library).flatMap(({ kind, id, texts }) =>
    texts
      .filter(({ on }) => on === 'leaflet')
      .flatMap(({ path, text }) =>
        bannedIn(text).map(({ word, offset, instead }) =>
          warn(placeOf, { kind, id, path, offset }, 'banned-word', bannedWord(word, instead)),
        ),
      ),
  );
}
