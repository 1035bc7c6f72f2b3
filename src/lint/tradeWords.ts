/** Words of the trade in texts that patients read. */
import type { LibraryFiles } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { GLOSSARY } from '../messages/en/catalogue/glossary.ts';
import { TRADE } from '../messages/en/author/lexicon.ts';
import { tradeWord } from '../messages/en/author/words.ts';
import { finderOf } from './lexicon.ts';
import { warn } from './fieldPlace.ts';
import { sheetsOf } from './text.ts';

/** The trade words of a text. */
export const tradeIn = finderOf(TRADE);

/** Words of the glossary may stand on the public pages beside it; on a leaflet there is none. */
export function tradeWords(library: LibraryFiles, placeOf: PlaceOf): Problem[] {
  return sheetsOf(library).flatMap(({ kind, id, texts }) =>
    texts.flatMap(({ path, text, on }) =>
      tradeIn(text)
        .filter(({ word }) => on === 'leaflet' || !EXPLAINED.has(word.toLowerCase()))
        .map(({ word, offset, instead }) =>
          warn(placeOf, { kind, id, path, offset }, 'trade-word', tradeWord(word, instead, on === 'leaflet')),
        ),
    ),
  );
}

const EXPLAINED = new Set(GLOSSARY.flatMap(({ term }) => term.toLowerCase().split(', ')));
