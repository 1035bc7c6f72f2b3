/** Turns what the schema found wrong into Problems: code, place, the value as written, what was expected, the cure. */
import type { z } from 'zod';
import { cureFor } from './cure.ts';
import type { FrontMatter } from './frontMatter.ts';
import { listed } from './inWords.ts';
import { isWritten, placeOfKey, placeOfValue, writtenAt } from './locate.ts';
import { nearest } from './nearest.ts';
import { pathText, valueAt, type Path } from './path.ts';
import { errorAt, type Problem, type ProblemCode } from './problem.ts';
import { keysOf, schemaAt, sentenceAt } from './schema/schemaAt.ts';
import type { WrongParams } from './schema/words.ts';

type Issue = z.core.$ZodIssue;

// Of a file only the first hundred Problems are told, and each issue is held against each.
const MOST_ISSUES = 300;
const MOST_UNKNOWN_KEYS = 100;

/**
 * A Problem for every issue of `schema` with the front matter. `base` is where the checked value stands in it.
 * A key that is missing because its name was misspelt gives one Problem, the one about the misspelling.
 */
export function problemsOf(
  front: FrontMatter,
  schema: z.ZodType,
  all: readonly Issue[],
  base: Path = [],
): Problem[] {
  const issues = all.slice(0, MOST_ISSUES);
  const slips = issues.flatMap((issue) => slipsOf(schema, issue));
  const meant = new Set(
    slips.flatMap(({ path, meant }) => (meant === null ? [] : [pathText([...path, meant])])),
  );
  const wrong = new Set(issues.filter(({ code }) => code !== 'custom').map(({ path }) => pathText(path)));
  const rest = issues.filter(
    (issue) =>
      issue.code !== 'unrecognized_keys' &&
      !isExplained(issue, meant, wrong) &&
      issues.every((other) => other === issue || !explains(other, issue)),
  );
  return [
    ...slips.map((slip) => unknownKey(front, slip, base)),
    ...rest.map((issue) => problemOf(front, schema, issue, base)),
  ];
}

/** Plain words for what the schema leaves unsaid; handed to zod, which asks only where the schema has no words. */
export function issueWords(issue: z.core.$ZodRawIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return TYPE_WORDS[issue.expected] ?? issue.expected;
    case 'invalid_value':
      return listed(issue.values.map(String), 'or');
    case 'too_small':
      return `at least ${issue.minimum} of them`;
    case 'too_big':
      return `at most ${issue.maximum} of them`;
    default:
      return 'of another form';
  }
}

const TYPE_WORDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  object: 'a group of keys',
  record: 'a group of keys',
  array: 'a list',
  tuple: 'a list',
};

interface Slip {
  readonly path: Path;
  readonly key: string;
  readonly known: readonly string[];
  /** The key that was probably meant, or null. */
  readonly meant: string | null;
}

function slipsOf(schema: z.ZodType, issue: Issue): Slip[] {
  if (issue.code !== 'unrecognized_keys') return [];
  const known = keysOf(schemaAt(schema, issue.path));
  return issue.keys
    .slice(0, MOST_UNKNOWN_KEYS)
    .map((key) => ({ path: issue.path, key, known, meant: nearest(key, known) }));
}

// Missing because it was misspelt, or wrong only because the key it hangs on was misspelt or wrong itself.
function isExplained(issue: Issue, meant: ReadonlySet<string>, wrong: ReadonlySet<string>): boolean {
  const { because, besides, depth } = paramsOf(issue);
  if (because === undefined && besides === undefined) return meant.has(pathText(issue.path));
  const key =
    because === undefined
      ? pathText([...issue.path.slice(0, issue.path.length - (depth ?? 0)), ...(besides ?? [])])
      : pathText([...issue.path.slice(0, -1), because]);
  return meant.has(key) || wrong.has(key);
}

// Of a value that is of another form, nothing else is worth saying: not its length, nor that it fits no other key.
function explains(other: Issue, issue: Issue): boolean {
  return rankOf(other) < rankOf(issue) && pathText(other.path) === pathText(issue.path);
}

function rankOf({ code }: Issue): number {
  if (code === 'custom') return 2;
  return code === 'too_small' || code === 'too_big' ? 1 : 0;
}

function unknownKey(front: FrontMatter, { path, key, known, meant }: Slip, base: Path): Problem {
  const at = [...base, ...path, key];
  const list = `the keys here are ${listed(known, 'and')}`;
  return errorAt(placeOfKey(front, at), 'unknown-key', {
    path: pathText(at),
    found: 'an unknown key',
    expected: meant ?? 'a key that is known here',
    fix: meant === null ? `take it out; ${list}` : `write ${meant}`,
  });
}

function problemOf(front: FrontMatter, schema: z.ZodType, issue: Issue, base: Path): Problem {
  const path = [...base, ...issue.path];
  if (!isWritten(front, path) || paramsOf(issue).missing === true)
    return missingKey(front, schema, issue, path);
  const value = valueAt(front.value, path);
  const code = codeOf(issue, value);
  const place = issue.code === 'invalid_key' ? placeOfKey(front, path) : placeOfValue(front, path);
  return errorAt(place, code, {
    path: pathText(path),
    found: issue.code === 'invalid_key' ? `a key called ${String(path.at(-1))}` : writtenAt(front, path),
    expected: expectedOf(issue),
    fix:
      paramsOf(issue).fix ??
      cureFor({ code, path, value, schema, schemaPath: issue.path, expected: expectedOf(issue) }),
  });
}

function missingKey(front: FrontMatter, schema: z.ZodType, issue: Issue, path: Path): Problem {
  const key = String(path.at(-1) ?? '');
  const sentence = sentenceAt(schema, issue.path);
  return errorAt(placeOfValue(front, path), 'missing-key', {
    path: pathText(path),
    found: 'missing',
    expected: expectedOf(issue),
    fix: paramsOf(issue).fix ?? (sentence === null ? `add ${key}` : `add ${key}. ${sentence}`),
  });
}

function paramsOf(issue: Issue): WrongParams & { readonly depth?: number } {
  return issue.code === 'custom' ? ((issue.params ?? {}) as WrongParams) : {};
}

function expectedOf(issue: Issue): string {
  return issue.code === 'invalid_key' ? (issue.issues[0]?.message ?? issue.message) : issue.message;
}

function codeOf(issue: Issue, value: unknown): ProblemCode {
  switch (issue.code) {
    case 'custom':
      return paramsOf(issue).code ?? 'does-not-fit';
    case 'too_small':
    case 'too_big':
      return 'out-of-range';
    case 'invalid_format':
    case 'invalid_key':
      return 'wrong-word';
    case 'invalid_value':
      return isWord(value) ? 'wrong-word' : 'wrong-type';
    case 'invalid_union':
      return choosesWords(issue, value) ? 'wrong-word' : 'wrong-type';
    default:
      return 'wrong-type';
  }
}

function isWord(value: unknown): boolean {
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean';
}

// Of a choice between words and numbers: a text is a wrong word; a number only where numbers are among the words.
function choosesWords(issue: z.core.$ZodIssueInvalidUnion, value: unknown): boolean {
  const words = issue.errors.flat().flatMap((error) => (error.code === 'invalid_value' ? error.values : []));
  return words.some((word) => typeof word === typeof value);
}
