/**
 * YAML 1.2 core without what makes it dangerous: no anchors and aliases, no tags, no merge keys, no key twice, one
 * document. Everything doubtful is a Problem; nothing is converted.
 */
import { parseDocument, type Document, type Node, type YAMLError } from 'yaml';
import { errorAt, type Problem, type ProblemWords } from './problem.ts';
import { placeAt, type SourceText } from './sourceText.ts';
import { tooDeepAt } from './yamlDepth.ts';
import { TOO_MUCH, tooMuchAt } from './yamlSize.ts';
import { plainValue, type Report } from './yamlValue.ts';
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
  const muchAt = tooMuchAt(head);
  if (muchAt !== null) {
    report(muchAt, 'too-large', TOO_MUCH);
    return { contents: null, value: undefined, problems };
  }
  const document = parse(head);
  for (const error of firstOfEachLine(document, source, offset)) report(error.pos[0], 'yaml', wordsOf(error));
  if (problems.length > 0) return { contents: document.contents, value: undefined, problems };
  const value = plainValue(document.contents, [], report);
  const readable = !problems.some(({ code }) => code === 'alias');
  return { contents: document.contents, value: readable ? value : undefined, problems };
}

const TOO_DEEP = {
  found: 'keys or lists nested very deeply',
  expected: 'at most a few levels deep',
  fix: 'look for brackets that do not close, or for a line indented far too much',
} as const;

// Keys are compared in yamlValue.ts: the parser's own comparison of each key with each takes 20 s for 40,000 of them, and lets
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

// One slip often brings a row of complaints in its line, and a tab one in every line after it. Tags are refused in
// yamlValue.ts, known or not.
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
