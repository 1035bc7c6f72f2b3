/** Files whose text asks for more years of school than patients can be asked for. */
import { hardToRead } from '../messages/en/author/words.ts';
import type { LibraryFiles } from '../content/library.ts';
import type { PlaceOf } from '../content/place.ts';
import type { Problem } from '../content/problem.ts';
import { countsOf, fleschKincaid, fleschReadingEase, LONG_WORD_SYLLABLES, smog } from './reading.ts';
import { sentencesIn, wordsIn } from '../wording/sentences.ts';
import { warn } from './fieldPlace.ts';
import { syllablesIn } from './syllables.ts';
import { sheetsOf, type Text } from './text.ts';

/** Health leaflets are written for grade 6, 8 at most: AMA, HHS and NIH [secondary]. */
const MOST_GRADE = 8;

const LONG_WORDS_NAMED = 3;

/** A warning at the hardest sentence of each file that is above the grade by either formula. */
export function readingGrade(library: LibraryFiles, placeOf: PlaceOf): Problem[] {
  const syllables = remembering(syllablesIn);
  return sheetsOf(library).flatMap(({ kind, id, texts }) => {
    const grade = gradeOf(texts, syllables);
    const hardest = grade === null ? null : hardestOf(texts);
    if (grade === null || hardest === null) return [];
    return [
      warn(
        placeOf,
        { kind, id, path: hardest.path, offset: hardest.from },
        'reading-grade',
        hardToRead(grade, MOST_GRADE, longWords(hardest.text)),
      ),
    ];
  });
}

// A library has few words, each many times.
function remembering(syllables: (word: string) => number): (word: string) => number {
  const known = new Map<string, number>();
  return (word) => {
    const count = known.get(word) ?? syllables(word);
    known.set(word, count);
    return count;
  };
}

// A title is no sentence: it would make every text look easier.
const NO_SENTENCES: readonly PropertyKey[] = ['title', 'tendon', 'photos'];

function running(texts: readonly Text[]): readonly Text[] {
  return texts.filter(({ path: [key = ''] }) => !NO_SENTENCES.includes(key));
}

function gradeOf(
  texts: readonly Text[],
  syllables: (word: string) => number,
): { grade: number; formula: string; ease: number } | null {
  const counts = countsOf(
    running(texts).map(({ text }) => text),
    syllables,
  );
  const [kincaid, smogGrade] = [fleschKincaid(counts) ?? 0, smog(counts) ?? 0];
  if (Math.max(kincaid, smogGrade) <= MOST_GRADE) return null;
  const [grade, formula] = kincaid > MOST_GRADE ? [kincaid, 'Flesch-Kincaid'] : [smogGrade, 'SMOG'];
  return { grade, formula, ease: fleschReadingEase(counts) ?? 0 };
}

function hardestOf(texts: readonly Text[]) {
  const sentences = running(texts).flatMap(({ path, text }) =>
    sentencesIn(text).map((sentence) => ({
      ...sentence,
      path,
      grade: fleschKincaid(countsOf([sentence.text])) ?? -Infinity,
    })),
  );
  return sentences.toSorted((a, b) => b.grade - a.grade)[0] ?? null;
}

function longWords(sentence: string): readonly string[] {
  return wordsIn(sentence)
    .map(({ text }) => text)
    .filter((word, index, words) => words.indexOf(word) === index)
    .filter((word) => syllablesIn(word) >= LONG_WORD_SYLLABLES)
    .toSorted((a, b) => syllablesIn(b) - syllablesIn(a))
    .slice(0, LONG_WORDS_NAMED);
}
