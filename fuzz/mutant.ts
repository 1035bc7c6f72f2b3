/** A Markdown file with front matter, spoilt in one place: a value, a key, a line, a sign of YAML, a byte. */
import { NAUGHTY } from '../tests/laws/naughty.ts';
import type { Chance } from './chance.ts';

/** Values that stand under a key in files of the same kind. */
export type Values = ReadonlyMap<string, readonly string[]>;

const KEY_LINE = /^(\s*(?:- )?)([A-Za-z][A-Za-z0-9-]*):(?: (.*))?$/;

/** What stands under each key of these texts. */
export function valuesIn(texts: readonly string[]): Values {
  const values = new Map<string, string[]>();
  for (const line of texts.flatMap(frontLines)) {
    const [, , key = '', value = ''] = KEY_LINE.exec(line) ?? [];
    if (value !== '') values.set(key, [...(values.get(key) ?? []), value]);
  }
  return values;
}

/** Half of all keep to what an author may slip into, so that many are built; the rest are as wild as can be. */
export function mutantOf(text: string, values: Values, others: readonly string[], chance: Chance): string {
  const isGentle = chance.onceIn(2);
  let mutant = text;
  for (let count = 1 + chance.below(3); count > 0; count -= 1) {
    const way = chance.of(isGentle ? GENTLE : WAYS);
    mutant = way(mutant, chance, values, others);
  }
  return mutant;
}

type Way = (text: string, chance: Chance, values: Values, others: readonly string[]) => string;

const near: Way = (text, chance) => onNumber(text, chance, (value) => nearValue(value, chance));
const extreme: Way = (text, chance) => onNumber(text, chance, () => chance.of(EXTREMES));
const date: Way = (text, chance) =>
  onValue(text, chance, /^\d{4}-\d\d-\d\d$/, (value) => shifted(value, chance));
const noDate: Way = (text, chance) => onValue(text, chance, /^\d{4}-\d\d-\d\d$/, () => chance.of(NO_DATES));
const known: Way = (text, chance, values) =>
  onKeyLine(text, chance, (lead, key, value) =>
    value === '' ? null : `${lead}${key}: ${chance.of(values.get(key) ?? [value])}`,
  );
const naughty: Way = (text, chance) =>
  onKeyLine(text, chance, (lead, key) => {
    const word = chance.of(NAUGHTY);
    return `${lead}${key}: ${chance.onceIn(2) ? word : JSON.stringify(word)}`;
  });
const misspelt: Way = (text, chance) =>
  onKeyLine(text, chance, (lead, key, value) =>
    chance.onceIn(2) ? `${lead}${slip(key, chance)}: ${value}` : `${lead}${key}: ${slip(value, chance)}`,
  );
const structure: Way = (text, chance) =>
  onKeyLine(text, chance, (lead, key, value) => `${lead}${key}: ${chance.of(STRUCTURES)(value)}`);
const without: Way = (text, chance) => onLine(text, chance, () => []);
const twice: Way = (text, chance) => onLine(text, chance, (line) => [line, line]);
const indented: Way = (text, chance) =>
  onLine(text, chance, (line) => [`${chance.of([' ', '  ', '\t', '- '])}${line}`]);
const added: Way = (text, chance) => onLine(text, chance, (line) => [line, chance.of(LINES)]);
const block: Way = (text, chance, _, others) => {
  const [own, other] = [blocksOf(text), blocksOf(chance.of(others))];
  const taken = chance.of(other);
  const key = keyOf(taken);
  return withFront(
    text,
    own.some((one) => keyOf(one) === key)
      ? own.map((one) => (keyOf(one) === key ? taken : one)).join('\n')
      : [...own, taken].join('\n'),
  );
};
const withoutBlock: Way = (text, chance) => {
  const own = blocksOf(text);
  const gone = chance.below(own.length);
  return withFront(text, own.filter((_, index) => index !== gone).join('\n'));
};
const body: Way = (text, chance) => `${text}\n${chance.of(NAUGHTY)}\n`;
const cut: Way = (text, chance) => text.slice(0, chance.below(text.length));
const character: Way = (text, chance) => {
  const at = chance.below(text.length);
  return text.slice(0, at) + chance.of(CHARACTERS) + text.slice(at + chance.below(2));
};
const lineEnds: Way = (text, chance) => text.replaceAll('\n', chance.of(['\r\n', '\r', '\n\n']));

const GENTLE: readonly Way[] = [
  near,
  near,
  near,
  date,
  known,
  known,
  known,
  known,
  block,
  block,
  withoutBlock,
];
const WAYS: readonly Way[] = [
  near,
  extreme,
  extreme,
  date,
  noDate,
  known,
  naughty,
  naughty,
  misspelt,
  structure,
  structure,
  without,
  twice,
  indented,
  added,
  block,
  withoutBlock,
  body,
  cut,
  character,
  lineEnds,
];

const EXTREMES = [
  '-1',
  '0',
  '-0',
  '0.1',
  '1.5',
  '99',
  '1000',
  '1e9',
  '1e400',
  '-1e400',
  '.inf',
  '.nan',
  '0x1F',
  '0o17',
  '012',
  '1_000',
  '1:30',
  '1,5',
  '"5"',
  '5 kg',
  '+5',
  '5.',
  '.5',
  '9007199254740993',
  '0.30000000000000004',
  '٣',
];
const NO_DATES = [
  '2026-02-30',
  '2026-13-01',
  '0000-01-01',
  '0001-01-01',
  '9999-12-31',
  '10000-01-01',
  '2036-11-24',
  '1926-11-24',
  '24.11.2026',
  '2026-11-24T00:00:00Z',
  '2026-W48',
  '"2026-11-24 "',
  '20261124',
];
const STRUCTURES: readonly ((value: string) => string)[] = [
  () => '',
  () => '~',
  () => '[]',
  () => '{}',
  (value) => `[${value}]`,
  (value) => `[[[${value}]]]`,
  (value) => `{ a: ${value} }`,
  (value) => `"${value}"`,
  (value) => `|\n  ${value}`,
  (value) => `>-\n  ${value}`,
  (value) => `&a ${value}`,
  () => '*a',
  (value) => `!!str ${value}`,
  (value) => `!!binary ${value}`,
  (value) => `!x ${value}`,
  (value) => `${value} # more`,
  (value) => `${value}: ${value}`,
];
const LINES = [
  'x: 1',
  '__proto__: { a: 1 }',
  'constructor: 1',
  '<<: { a: 1 }',
  '? [a, b]\n: c',
  '---',
  '...',
  '%YAML 1.2',
  '- a',
  '"": ""',
  ': a',
  '1: 2',
  'confirmed: [{ path: massKg, value: 3, reason: as measured }]',
  '\tkey: 1',
];
const CHARACTERS = [
  '\u0000',
  '\u001b',
  '\u202e',
  '\ufeff',
  '\u200b',
  '\ud800',
  '\u2028',
  '"',
  "'",
  ':',
  '{',
  '}',
  '[',
  ']',
  '#',
  '\t',
  '&',
  '*',
  '\\',
  '😀',
];

function frontLines(text: string): string[] {
  const end = text.indexOf('\n---', 3);
  return text.slice(4, end === -1 ? undefined : end).split('\n');
}

function withFront(text: string, front: string): string {
  const end = text.indexOf('\n---', 3);
  return `---\n${front}${end === -1 ? '' : text.slice(end)}`;
}

/** Keys of the first level with what stands under them. */
function blocksOf(text: string): string[] {
  return frontLines(text)
    .join('\n')
    .split(/\n(?=\S)/);
}

function keyOf(block: string): string {
  return /^[^:\n]*/.exec(block)?.[0] ?? '';
}

function onLine(text: string, chance: Chance, change: (line: string) => readonly string[]): string {
  const lines = frontLines(text);
  const at = chance.below(lines.length);
  return withFront(text, lines.toSpliced(at, 1, ...change(lines[at] ?? '')).join('\n'));
}

/** `change` returns null where the line is not of its kind; another is taken then, a few times. */
function onKeyLine(
  text: string,
  chance: Chance,
  change: (lead: string, key: string, value: string) => string | null,
): string {
  const lines = frontLines(text);
  for (let tries = 0; tries < 20; tries += 1) {
    const at = chance.below(lines.length);
    const [, lead, key, value = ''] = KEY_LINE.exec(lines[at] ?? '') ?? [];
    const changed = lead === undefined || key === undefined ? null : change(lead, key, value);
    if (changed !== null) return withFront(text, lines.toSpliced(at, 1, changed).join('\n'));
  }
  return text;
}

function onValue(text: string, chance: Chance, pattern: RegExp, change: (value: string) => string): string {
  return onKeyLine(text, chance, (lead, key, value) =>
    pattern.test(value) ? `${lead}${key}: ${change(value)}` : null,
  );
}

function onNumber(text: string, chance: Chance, change: (value: number) => string): string {
  return onValue(text, chance, /^-?\d+(\.\d+)?$/, (value) => change(Number(value)));
}

function nearValue(value: number, chance: Chance): string {
  const changed = chance.of([value + 1, value - 1, value + 3, value * 2, value / 2, value * 1.1, value * 10]);
  return String(Number(changed.toFixed(Number.isInteger(value) && !chance.onceIn(5) ? 0 : 2)));
}

function shifted(value: string, chance: Chance): string {
  const days = chance.of([1, -1, 2, 3, -3, 7, -7, 14, 28, -28, 84, 365, -365]);
  const then = new Date(Date.parse(`${value}T00:00:00Z`) + 86_400_000 * days);
  return Number.isNaN(then.getTime()) ? value : then.toISOString().slice(0, 10);
}

function slip(word: string, chance: Chance): string {
  const at = chance.below(word.length + 1);
  return chance.of([
    word.slice(0, at) + word.slice(at + 1),
    `${word.slice(0, at)}x${word.slice(at)}`,
    word.toUpperCase(),
    ` ${word}`,
    word.repeat(2),
  ]);
}
