/** Numbers in sentences, held equal between the words of two languages. */
import type { FrontMatter } from '../frontMatter.ts';
import { placeOfValue } from '../locate.ts';
import { valueAt } from '../path.ts';
import { errorAt, type Place, type Problem } from '../problem.ts';
import type { ProseSection } from '../prose/block.ts';
import { placeInProse } from '../prose/placeInProse.ts';
import { proseTexts } from '../prose/plainText.ts';
import type { WordedKind } from './languageFile.ts';
import { keysOfWords } from './words.ts';

interface Written {
  readonly value: unknown;
  readonly body: readonly ProseSection[];
}

/** Numbers in figures, sorted; decimal comma and point are one. @example figuresIn('1,5 to 30 cm') // => ['1.5', '30'] */
export function figuresIn(text: string): string[] {
  return [...text.matchAll(/\d+(?:[.,]\d+)*/g)].map(([figure]) => figure.replaceAll(',', '.')).sort();
}

/** A Problem for every key of words, and every section of the body, whose figures are not those of the card. */
export function otherFigures(front: FrontMatter, kind: WordedKind, base: Written, own: Written): Problem[] {
  const inHead = keysOfWords(kind).flatMap((key) =>
    told(
      placeOfValue(front, [key]),
      key,
      textOf(valueAt(base.value, [key])),
      textOf(valueAt(own.value, [key])),
    ),
  );
  const inBody = base.body.flatMap((section, index) =>
    told(
      placeInProse(front.source, front.bodyOffset, [index, 'blocks', 0], 0),
      section.heading,
      proseOf([section]),
      proseOf(own.body.slice(index, index + 1)),
    ),
  );
  return [...inHead, ...inBody];
}

function told(place: Place, where: string, base: string, own: string): Problem[] {
  const [wanted, found] = [base, own].map((text) => figuresIn(text).join(', ') || 'none');
  if (wanted === found) return [];
  return [
    errorAt(place, 'does-not-fit', {
      found: `figures under ${where} that are ${found}`,
      expected: `those of the card: ${wanted}`,
      fix: 'write the numbers of the card, in figures where it has figures',
    }),
  ];
}

/** Every text of a value, one after the other. */
function textOf(value: unknown): string {
  if (typeof value === 'string') return value;
  return typeof value === 'object' && value !== null ? Object.values(value).map(textOf).join(' ') : '';
}

function proseOf(sections: readonly ProseSection[]): string {
  return proseTexts(sections)
    .map(({ text }) => text)
    .join(' ');
}
