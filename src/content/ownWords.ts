/** Front matter that names sentences of its own file, word for word: what gives way for some people. */
import type { FrontMatter } from './frontMatter.ts';
import { placeOfValue, writtenAt } from './locate.ts';
import { nearest } from './nearest.ts';
import { pathText, type Path } from './path.ts';
import { errorAt, type Problem } from './problem.ts';
import type { ProseSection } from './prose/block.ts';
import { proseTexts } from './prose/plainText.ts';
import type { AdviceFrontMatter } from './schema/advice.ts';
import type { ExerciseFrontMatter } from './schema/exercise.ts';

interface Placed<T> {
  readonly value: T;
  readonly front: FrontMatter;
  readonly body: readonly ProseSection[];
}

/** Advice that gives way must be a whole paragraph or list entry of the body. */
export function adviceWords({ front, value, body }: Placed<AdviceFrontMatter>): Problem[] {
  const texts = proseTexts(body).map(({ text }) => text);
  return value.givesWay.flatMap(({ entry }, index) =>
    texts.includes(entry) ? [] : [unknownWords(front, ['givesWay', index, 'entry'], entry, texts)],
  );
}

/** What is said of a weight must be a caution, or stand in the body. */
export function exerciseWords({ front, value, body }: Placed<ExerciseFrontMatter>): Problem[] {
  const texts = [...value.cautions, ...proseTexts(body).map(({ text }) => text)];
  return value.withWeight.flatMap((sentence, index) =>
    texts.some((text) => text.includes(sentence))
      ? []
      : [unknownWords(front, ['withWeight', index], sentence, texts)],
  );
}

function unknownWords(front: FrontMatter, path: Path, words: string, texts: readonly string[]): Problem {
  const meant = nearest(words, texts);
  return errorAt(placeOfValue(front, path), 'wrong-word', {
    path: pathText(path),
    found: writtenAt(front, path),
    expected: 'words of this file, letter for letter',
    fix: meant === null ? 'copy the sentence from the body' : `write: ${meant}`,
  });
}
