/** Plain values from YAML nodes: objects, lists, texts, numbers, true, false and null, and nothing that stands for another. */
import { isAlias, isMap, isScalar, isSeq, type Node, type Pair } from 'yaml';
import { BAD_CHARACTER_WORDS, badCharacters } from './badCharacter.ts';
import { pathText, type Path } from './path.ts';
import type { ProblemCode, ProblemWords } from './problem.ts';

/** Notes a Problem at an offset of the head. */
export type Report = (at: number, code: ProblemCode, words: ProblemWords) => void;

/** The node's value; anchors, aliases, tags, keys written twice and misleading characters are reported. */
export function plainValue(node: unknown, path: Path, report: Report): unknown {
  if (isAlias(node))
    report(startOf(node), 'alias', { path: pathText(path), found: `*${node.source}`, ...NO_ALIAS });
  else refuseMarks(node as Node | null, path, report);
  if (isMap(node)) return plainObject(node.items as Pair[], path, report);
  if (isSeq(node)) return node.items.map((entry, index) => plainValue(entry, [...path, index], report));
  if (!isScalar(node)) return null;
  refuseBadText(node.value, startOf(node), path, report);
  refuseOtherNumbers(node.value, node.source, startOf(node), path, report);
  return node.value;
}

const NO_ALIAS = {
  expected: 'written out; anchors (&) and aliases (*) are not read',
  fix: 'write the value itself in each place; a text that begins with & or * needs quotes',
} as const;

function refuseMarks(node: Node | null, path: Path, report: Report): void {
  if (node === null) return;
  if ('anchor' in node && node.anchor !== undefined) {
    report(startOf(node), 'alias', { path: pathText(path), found: `marked &${node.anchor}`, ...NO_ALIAS });
  }
  if (node.tag === undefined) return;
  report(startOf(node), 'yaml', {
    path: pathText(path),
    found: `marked with the tag ${node.tag.replace('tag:yaml.org,2002:', '!!')}`,
    expected: 'without a tag',
    fix: 'take the tag out; a text that begins with ! needs quotes',
  });
}

function refuseBadText(value: unknown, at: number, path: Path, report: Report): void {
  const [bad] = typeof value === 'string' ? badCharacters(value) : [];
  if (bad === undefined) return;
  report(at, 'bad-character', {
    path: pathText(path),
    found: `text with ${bad.name}`,
    ...BAD_CHARACTER_WORDS,
  });
}

const OTHER_BASE = /^[-+]?0[xob]/i;

// YAML also reads 0x3D and 0o75 as 61: nobody writes a weight so, but a slip may.
function refuseOtherNumbers(
  value: unknown,
  written: string | undefined,
  at: number,
  path: Path,
  report: Report,
): void {
  if (typeof value !== 'number' || written === undefined || !OTHER_BASE.test(written.trim())) return;
  report(at, 'wrong-type', {
    path: pathText(path),
    found: written.trim(),
    expected: 'a number in decimal digits, such as 61 or 2.5',
    fix: 'write the number in the digits 0 to 9; put a text that looks like a number into quotes',
  });
}

function plainObject(pairs: readonly Pair[], path: Path, report: Report): Record<string, unknown> {
  const first = new Map<string, number>();
  const entries: [string, unknown][] = [];
  for (const { key, value } of pairs) {
    const name = keyName(key, path, report);
    if (name === null) continue;
    const at = [...path, name];
    if (first.has(name)) report(startOf(key), 'duplicate-key', twice(at));
    first.set(name, startOf(key));
    entries.push([name, plainValue(value, at, report)]);
  }
  return Object.fromEntries(entries);
}

// `__proto__` is kept from the values altogether: an object made with it would not be the object it looks like.
function keyName(key: unknown, path: Path, report: Report): string | null {
  if (isAlias(key) || !isScalar(key)) {
    report(startOf(key), 'yaml', {
      path: pathText(path),
      found: 'a key that is not a word',
      expected: 'a word before the colon',
      fix: 'write a plain key; a text that begins with [, {, ? or * needs quotes',
    });
    return null;
  }
  refuseMarks(key, path, report);
  const name = typeof key.value === 'string' ? key.value : (key.source ?? String(key.value));
  if (name !== '__proto__') return name;
  report(startOf(key), 'unknown-key', {
    path: pathText([...path, name]),
    found: 'an unknown key',
    expected: 'a key of this kind of file',
    fix: 'take the line out',
  });
  return null;
}

function twice(path: Path): ProblemWords {
  return {
    path: pathText(path),
    found: 'written a second time',
    expected: 'written once',
    fix: 'keep one of the two and take the other out',
  };
}

function startOf(node: unknown): number {
  return (node as Node | null)?.range?.[0] ?? 0;
}
