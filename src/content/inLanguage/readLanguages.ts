/** The words of a library's cards in other languages than theirs. */
import { adviceCard } from '../advice.ts';
import { exerciseCard } from '../exercise.ts';
import { nameOf } from '../fileName.ts';
import { cardWithoutHidden, type Hidden } from '../hidden.ts';
import { listed } from '../inWords.ts';
import type { Library } from '../library.ts';
import { errorAt, type Problem } from '../problem.ts';
import type { FileLink } from '../prose/body.ts';
import type { Card, Folder } from '../readFolder.ts';
import { LANGUAGES, type Language } from '../schema/words.ts';
import type { SourceFile } from '../source.ts';
import { topOf } from '../sourceText.ts';
import { languageFile, type WordedKind } from './languageFile.ts';
import { readWords } from './readWords.ts';

export interface InLanguage<K extends WordedKind> {
  readonly language: Language;
  readonly card: Card<K>;
}

export interface Languages {
  readonly exercises: readonly InLanguage<'exercise'>[];
  readonly advice: readonly InLanguage<'advice'>[];
  readonly problems: readonly Problem[];
  readonly links: readonly FileLink[];
}

/** `files`: those in a second language. */
export function readLanguages(
  files: readonly SourceFile[],
  exercises: Folder<'exercise'>,
  advice: Folder<'advice'>,
): Languages {
  const ofExercises = files.map((file) => reading(file, 'exercise', exercises));
  const ofAdvice = files.map((file) => reading(file, 'advice', advice));
  const bases = [...exercises.files.values(), ...advice.files.values()];
  return {
    exercises: ofExercises.flatMap(({ found }) => found),
    advice: ofAdvice.flatMap(({ found }) => found),
    problems: [
      ...files.flatMap((file) => nameProblems(file, bases)),
      ...[...ofExercises, ...ofAdvice].flatMap(({ problems }) => problems),
    ],
    links: [...ofExercises, ...ofAdvice].flatMap(({ links }) => links),
  };
}

export function wordsByLanguage(
  { exercises, advice }: Pick<Languages, 'exercises' | 'advice'>,
  hidden: Hidden,
): Library['inLanguage'] {
  const languages = [...new Set([...exercises, ...advice].map(({ language }) => language))];
  const cardsIn = <K extends WordedKind>(language: Language, all: readonly InLanguage<K>[]) =>
    all.flatMap((one) => (one.language === language ? [one.card] : []));
  return new Map(
    languages.map((language) => [
      language,
      {
        exercises: new Map(
          cardsIn(language, exercises).map((card) => {
            const { id, value, body } = cardWithoutHidden(card, hidden);
            return [id, exerciseCard(id, value, body)];
          }),
        ),
        advice: new Map(
          cardsIn(language, advice).map(({ id, value, body }) => [id, adviceCard(id, value, body)]),
        ),
      },
    ]),
  );
}

interface Reading<K extends WordedKind> {
  readonly found: readonly InLanguage<K>[];
  readonly problems: readonly Problem[];
  readonly links: readonly FileLink[];
}

const NOTHING = { found: [], problems: [], links: [] };

function reading<K extends WordedKind>(file: SourceFile, kind: K, { files, cards }: Folder<K>): Reading<K> {
  const named = languageFile(file.file);
  const [id] = [...files].find(([, one]) => one.file === named?.base) ?? [];
  const language = LANGUAGES.find((one) => one === named?.language);
  const base = cards.find((card) => card.id === id);
  // What is wrong with the card is told there.
  if (language === undefined || base === undefined) return NOTHING;
  const { card, problems, links } = readWords(file, kind, base);
  return { found: card === null ? [] : [{ language, card }], problems, links };
}

function nameProblems({ file }: SourceFile, bases: readonly SourceFile[]): Problem[] {
  const { base = '', language = '' } = languageFile(file) ?? {};
  const wrong = (found: string, expected: string) => [
    errorAt(topOf(file), 'wrong-file-name', {
      found,
      expected,
      fix: 'rename it, or move it out of this folder',
    }),
  ];
  if (!LANGUAGES.some((one) => one === language))
    return wrong(
      `a file called ${nameOf(file)}`,
      `called by an id and .md, or with a language between them: ${listed(LANGUAGES, 'or')}`,
    );
  if (!bases.some((one) => one.file === base))
    return wrong(`the words of ${nameOf(base)}, which is not there`, 'beside the card whose words they are');
  return [];
}
