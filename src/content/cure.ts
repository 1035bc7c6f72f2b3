/** The cure of a Problem with a value: what the author most likely meant, if the schema would take it, or what to give. */
import { stringify } from 'yaml';
import type { z } from 'zod';
import { isoDate } from '../units/date.ts';
import { listed } from './inWords.ts';
import { nearest } from './nearest.ts';
import { pathText, type Path } from './path.ts';
import type { ProblemCode } from './problem.ts';
import { schemaAt, sentenceAt, wordsOf } from './schema/schemaAt.ts';

export interface Wrong {
  readonly code: ProblemCode;
  readonly path: Path;
  readonly value: unknown;
  readonly schema: z.ZodType;
  /** The part of the path that `schema` knows. */
  readonly schemaPath: Path;
  readonly expected: string;
}

/** What to write or do, in words for the author. */
export function cureFor(wrong: Wrong): string {
  const { code, path, value, schema, schemaPath, expected } = wrong;
  const shape = schemaAt(schema, schemaPath);
  const words = wordsOf(shape);
  const sentence = sentenceAt(schema, schemaPath);
  const meant = shape === null ? undefined : meantBy(value, shape, expected);
  // A pattern takes much that is not meant: the sentence says what is.
  if (meant !== undefined) {
    return `write ${lineWith(path, meant)}${words.length === 0 && sentence !== null ? `. ${sentence}` : ''}`;
  }
  if (code === 'does-not-fit') return `change ${pathText(path)}, or what it must agree with`;
  if (code === 'not-a-date') return `write a day that exists as year-month-day${daysIn(value)}`;
  if (code === 'wrong-word' && words.length > 0) {
    // A sentence that only lists the words again says nothing more.
    const more = sentence !== null && !words.every((word) => sentence.includes(String(word)));
    return `write one of ${listed(words, 'or')}${more ? `. ${sentence}` : ''}`;
  }
  const what = value === null && expected === 'a list' ? 'a list, [] where there is nothing' : expected;
  return sentence === null ? `give ${what}` : `give ${what}. ${sentence}`;
}

function lineWith(path: Path, value: unknown): string {
  const key = path.at(-1);
  const text = stringify(value, { collectionStyle: 'flow', lineWidth: 0 }).trimEnd();
  return typeof key === 'string' ? `${key}: ${text}` : text;
}

/** Words that have another name now; `keep` alone did not say of what. */
const RENAMED: ReadonlyMap<string, readonly string[]> = new Map([['keep', ['keepGoing']]]);

// Only what the author's own text says, in another spelling; a number is never made up.
function meantBy(value: unknown, shape: z.ZodType, expected: string): unknown {
  const word = typeof value === 'string' ? nearest(value, wordsOf(shape).map(String)) : null;
  const isAnyText = wordsOf(shape).length === 0;
  const renamed = typeof value === 'string' ? (RENAMED.get(value) ?? []) : [];
  const spellings = [
    ...renamed,
    ...(word === null ? [] : [word]),
    ...otherSpellings(value, expected, isAnyText),
  ];
  return spellings.find((spelling) => spelling !== value && shape.safeParse(spelling).success);
}

function otherSpellings(value: unknown, expected: string, isAnyText: boolean): unknown[] {
  if (typeof value === 'string') return [...numberIn(value, expected), ...ofText(value), [value]];
  if (typeof value === 'boolean') return [isAnyText ? String(value) : value ? 'yes' : 'no', [value]];
  if (typeof value === 'number' && Number.isFinite(value)) return [...ofNumber(value), [value]];
  return [];
}

// "72 kg" where kilograms are asked for is 72; "150 lb" is nothing we may guess.
function numberIn(text: string, expected: string): number[] {
  const [, number, unit] = /^(-?\d+(?:\.\d+|,\d{1,2})?)\s*(\S*)$/.exec(text.trim()) ?? [];
  if (number === undefined || unit === undefined) return [];
  const asked = unit === '' || expected.split(' ').includes(unit);
  return asked ? [Number(number.replace(',', '.'))] : [];
}

function ofText(text: string): string[] {
  const trimmed = text.trim();
  return [padded(trimmed), trimmed.toLowerCase(), trimmed.toUpperCase(), slug(trimmed)];
}

/** Words as an id joins them. @example slug('my red band') // => 'my-red-band' */
export function slug(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, '-');
}

function padded(text: string): string {
  const parts = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(text);
  return parts === null ? text : `${parts[1]}-${parts[2]?.padStart(2, '0')}-${parts[3]?.padStart(2, '0')}`;
}

// 20260302 without its hyphens is a number to YAML.
function ofNumber(value: number): string[] {
  const text = String(value);
  return [text.replace(/^(\d{4})(\d{2})(\d{2})$/, '$1-$2-$3'), text];
}

const MONTH = /^\d{4}-(?:0[1-9]|1[0-2])-\d{2}$/;

// "2026-02-30": the month is there, so its last day can be told.
function daysIn(value: unknown): string {
  if (typeof value !== 'string' || !MONTH.test(value)) return '';
  const month = value.slice(0, 8);
  const last = [31, 30, 29, 28].find((day) => isoDate(`${month}${day}`) !== null);
  return last === undefined ? '' : `; ${month.slice(0, 7)} has ${last} days`;
}
