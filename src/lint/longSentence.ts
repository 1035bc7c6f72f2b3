/** Sentences that are too long to be kept in mind while doing what they say. */
import { longSentence } from '../messages/en/author/words.ts';
import type { LibraryFiles } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { sentencesIn, wordsIn } from '../wording/sentences.ts';
import { warn } from './fieldPlace.ts';
import { sheetsOf } from './text.ts';

/** [choice] */
const MOST_WORDS = 20;

export function longSentences(library: LibraryFiles, placeOf: PlaceOf): Problem[] {
  return sheetsOf(library).flatMap(({ kind, id, texts }) =>
    texts.flatMap(({ path, text }) =>
      sentencesIn(text).flatMap((sentence) => {
        const words = wordsIn(sentence.text).length;
        if (words <= MOST_WORDS) return [];
        const field = { kind, id, path, offset: sentence.from };
        return [warn(placeOf, field, 'long-sentence', longSentence(words, MOST_WORDS))];
      }),
    ),
  );
}
