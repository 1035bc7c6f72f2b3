/**
 * YAML 1.2 core without what makes it dangerous: no anchors and aliases, no tags, no merge keys, no key twice, one
 * document. Everything doubtful is a Problem; nothing is converted.
 */
import {
  isAlias,
  isMap,
  isScalar,
  isSeq,
  parseDocument,
  type Document,
  type Node,
  type Pair,
  type YAMLError,
} from 'yaml';
import { BAD_CHARACTER_WORDS, badCharacters } from './badCharacter.ts';
import { pathText, type Path } from './path.ts';
import { errorAt, type Problem, type ProblemCode, type ProblemWords } from './problem.ts';
import { placeAt, type SourceText } from './sourceText.ts';
import { tooDeepAt } from './yamlDepth.ts';
import { yamlWords } from './yamlWords.ts';

export interface YamlReading {
  readonly contents: Node | null;
  /** Undefined when the text cannot be read as YAML, or holds aliases. */
  readonly value: unknown;
  readonly problems: readonly Problem[];
}

/** The head's values; `offset` is where it stands in the file. */
export function readYaml(source: SourceText, head: string, offset: number): YamlReading {
  const problems: Problem[] = [];
  const report: Report = (at, code, words) => {
    problems.push(errorAt(placeAt(source, offset + at), code, words));
  };
  const deepAt = tooDeepAt(head);
  if (deepAt !== null) {
    report(deepAt, 'yaml', TOO_DEEP);
    return { contents: null, value: undefined, problems };
  }
  const document = parse(head);
  for (const error of firstOfEachLine(document, source, offset)) report(error.pos[0], 'yaml', wordsOf(error));
  if (problems.length > 0) return { contents: document.contents, value: undefined, problems };
  const value = plainValue(document.contents, [], report);
  const readable = !problems.some(({ code }) => code === 'alias');
  return { contents: document.contents, value: readable ? value : undefined, problems };
}

type Report = (at: number, code: ProblemCode, words: ProblemWords) => void;

const TOO_DEEP = {
  found: 'keys or lists nested very deeply',
  expected: 'at most a few levels deep',
  fix: 'look for brackets that do not close, or for a line indented far too much',
} as const;

// Keys are compared below: the parser's own comparison of each key with each takes 20 s for 40,000 of them, and lets
// 1 and "1" stand side by side. Without `silent`, a second document is an error.
function parse(head: string): Document {
  return parseDocument(head, {
    schema: 'core',
    version: '1.2',
    merge: false,
    uniqueKeys: false,
    strict: true,
    prettyErrors: false,
    logLevel: 'error',
  });
}

// One slip often brings a row of complaints in its line, and a tab one in every line after it. Tags are refused below,
// known or not.
function firstOfEachLine(document: Document, source: SourceText, offset: number): YAMLError[] {
  const lines = new Set<number>();
  const all = [...document.errors, ...document.warnings].filter(({ code }) => code !== 'TAG_RESOLVE_FAILED');
  const tabs = all.filter(({ code }) => code === 'TAB_AS_INDENT');
  return (tabs.length > 0 ? tabs : all).filter(({ pos }) => {
    const { line } = placeAt(source, offset + pos[0]);
    return lines.size < lines.add(line).size;
  });
}

function wordsOf({ code, message }: YAMLError): ProblemWords {
  return { expected: 'keys and values that YAML can read', ...yamlWords(code, message) };
}

function plainValue(node: unknown, path: Path, report: Report): unknown {
  if (isAlias(node))
    report(startOf(node), 'alias', { path: pathText(path), found: `*${node.source}`, ...NO_ALIAS });
  else refuseMarks(node as Node | null, path, report);
  if (isMap(node)) return plainObject(node.items as Pair[], path, report);
  if (isSeq(node)) return node.items.map((entry, index) => plainValue(entry, [...path, index], report));
  if (!isScalar(node)) return null;
  refuseBadText(node.value, startOf(node), path, report);
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
