/** Reads the words of a card in a second language: laid over the card itself, with which it shares everything but words. */
import { issueWords, problemsOf } from '../issue.ts';
import { splitFile, type FrontMatter } from '../frontMatter.ts';
import { SCHEMAS } from '../kind.ts';
import { isWritten, placeOfKey, placeOfValue, writtenAt } from '../locate.ts';
import { pathText } from '../path.ts';
import { errorAt, sortProblems, type Problem } from '../problem.ts';
import { HEADINGS } from '../prose/headings.ts';
import { bodyOf, type FrontValue } from '../readFile.ts';
import type { Card } from '../readFolder.ts';
import { decode, type SourceFile } from '../source.ts';
import type { FileLink } from '../prose/body.ts';
import type { WordedKind } from './languageFile.ts';
import { otherFigures } from './figures.ts';
import { baseText, differences, keysOfWords } from './words.ts';

export interface WordsReading<K extends WordedKind> {
  /** Null where something is wrong; `problems` then says what. */
  readonly card: Card<K> | null;
  readonly problems: readonly Problem[];
  readonly links: readonly FileLink[];
}

/** `base`: the card, with nothing wrong in it. */
export function readWords<K extends WordedKind>(file: SourceFile, kind: K, base: Card<K>): WordsReading<K> {
  const { source, problems } = decode(file);
  if (source === null) return { card: null, problems, links: [] };
  const split = splitFile(source);
  if (split.front === null) return { card: null, problems: split.problems, links: [] };
  const { front } = split;
  const body = bodyOf(source, front.bodyOffset, HEADINGS[kind]);
  const whole = laidOver(front, base.front);
  const parsed = SCHEMAS[kind].safeParse(whole.value, { error: issueWords });
  const found = parsed.success
    ? [
        ...missing(front, base.front, kind),
        ...unlike(whole, kind, base.value, parsed.data),
        ...otherFigures(whole, kind, base, { value: parsed.data, body: body.sections }),
      ]
    : problemsOf(whole, SCHEMAS[kind], parsed.error.issues);
  const all = sortProblems([...split.problems, ...body.problems, ...found]);
  const { id } = base;
  const value = parsed.data as FrontValue<K>;
  return {
    card: all.length === 0 ? { id, value, front: whole, body: body.sections } : null,
    problems: all,
    links: body.links,
  };
}

/** What is not written stands in the card. */
function laidOver(front: FrontMatter, base: FrontMatter): FrontMatter {
  const [own, below] = [front.value, base.value] as Readonly<Record<string, unknown>>[];
  const inherited = Object.keys(below ?? {}).filter((key) => !Object.hasOwn(own ?? {}, key));
  return {
    ...front,
    value: { ...below, ...own },
    elsewhere: inherited.map((key) => ({ path: [key], front: base, at: [key] })),
  };
}

function missing(front: FrontMatter, base: FrontMatter, kind: WordedKind): Problem[] {
  return keysOfWords(kind)
    .filter((key) => isWritten(base, [key]) && !isWritten(front, [key]))
    .map((key) =>
      errorAt(placeOfValue(front, []), 'missing-key', {
        path: key,
        found: 'missing',
        expected: 'in the language of the file, like every word of the card',
        fix: `write ${key} in the language of the file`,
      }),
    );
}

function unlike(front: FrontMatter, kind: WordedKind, base: unknown, own: unknown): Problem[] {
  return differences(kind, base, own).map((one) =>
    errorAt(
      isWritten(front, one.path) ? placeOfKey(front, one.path) : placeOfValue(front, one.path),
      'does-not-fit',
      {
        path: pathText(one.path),
        found: writtenAt(front, one.path),
        expected: baseText(one),
        fix: keysOfWords(kind).includes(String(one.path[0]))
          ? `write ${String(one.path[0])} entry by entry as the card does, in the language of the file`
          : `take ${String(one.path[0])} out, or write it as it stands in the card: only words differ between languages`,
      },
    ),
  );
}
