/** No sentence escapes the messages: with an invented language every text of a programme and of the library carries its marks. */
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { libraryView } from '../../src/catalogue/libraryView.ts';
import { readConsults } from '../../src/content/readConsults.ts';
import { jsonSchemaOf } from '../../src/content/schema/jsonSchema.ts';
import { CLOSE, OPEN, PSEUDO } from './pseudo.ts';
import { pseudoCards } from './pseudoCards.ts';
import { filesBelow, make, shipped, workshopOver } from './shipped.ts';

/** What is written by authors, clinicians and the clinic, or is a code. */
function wordsOf(content: unknown): string[] {
  if (typeof content === 'string') return [content];
  if (content instanceof Map) return [...content.entries()].flatMap(wordsOf);
  if (Array.isArray(content)) return content.flatMap(wordsOf);
  return typeof content === 'object' && content !== null ? Object.values(content).flatMap(wordsOf) : [];
}

const WRITTEN = wordsOf([shipped.protocols, shipped.pages, shipped.clinic]);

// Cards have files of words in the invented language beside them.
const over = workshopOver(pseudoCards());

// The keys of files are told in the words of their own checks.
const OF_KEYS = wordsOf(
  (['exercise', 'advice', 'protocol', 'page', 'clinic', 'consult'] as const).map(jsonSchemaOf),
);

interface Found {
  readonly path: string;
  readonly text: string;
}

/** Texts of more than one word, with where they stand; sources and scenes left out. */
function textsIn(value: unknown, path: string): Found[] {
  if (typeof value === 'string') return /\p{L} \p{L}/u.test(value) ? [{ path, text: value }] : [];
  if (Array.isArray(value)) return value.flatMap((one, index) => textsIn(one, `${path}[${index}]`));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) =>
    ['source', 'sources', 'scene', 'evidence', 'inputs'].includes(key) ? [] : textsIn(one, `${path}.${key}`),
  );
}

/** What of a text stands outside all marks. */
function outside(text: string): string {
  const inner = new RegExp(`${OPEN}[^${OPEN}${CLOSE}]*${CLOSE}`, 'g');
  const less = text.replace(inner, '');
  return less === text ? text : outside(less);
}

/** Those that passed through no message and no card's words, and that nobody wrote into a protocol, the clinic's file or a consult. */
function escaped(value: unknown, consults: unknown): Found[] {
  const written = new Set([...WRITTEN, ...OF_KEYS, ...wordsOf(consults)]);
  return textsIn(value, '').filter(({ text }) => /\p{L} \p{L}/u.test(outside(text)) && !written.has(text));
}

// Between them: both sides, races, sport, dated rungs, pregnancy, a second visit, the end of treatment, an own entry.
const PEOPLE = [
  'second-visit',
  'race-on-the-review-day',
  'football-twice-and-tired',
  'outer-hip-three-weeks',
  'pregnant-thirty-weeks',
  'ends-well',
  'own-run-decision',
  'at-the-wheel',
];

describe('in an invented language', () => {
  it.each(PEOPLE)('every sentence of %s carries its marks', (name) => {
    const files = filesBelow(join('tests/cases', name, 'in'));
    const made = make(files, over, PSEUDO);
    if ('printed' in made) throw new Error(made.printed);
    const { consults } = readConsults(
      files.map((one) => ({ ...one, file: `consults/${one.file}` })),
      shipped,
    );
    expect(escaped(made.programme, consults)).toEqual([]);
    expect(JSON.stringify(made.programme)).toContain(OPEN);
  });

  it('every sentence of the public pages carries its marks', () => {
    const view = libraryView(over.library, new Map() as never, new Map(), PSEUDO);
    expect(escaped(view, null)).toEqual([]);
  });
});
