/** One file of an author: text, front matter, body, and every Problem in it. */
import type { z } from 'zod';
import { splitFile, type FrontMatter } from './frontMatter.ts';
import { issueWords, problemsOf } from './issue.ts';
import { SCHEMAS, type Kind } from './kind.ts';
import { errorAt, sortProblems, type Problem } from './problem.ts';
import type { ProseSection } from './prose/block.ts';
import type { FileLink } from './prose/body.ts';
import { HEADINGS, type HeadingRules } from './prose/headings.ts';
import { readProse, type ProseReading } from './prose/readProse.ts';
import { decode, type SourceFile } from './source.ts';
import { placeAt, type SourceText } from './sourceText.ts';
import { starterProblems } from './starterWords.ts';

export type FrontValue<K extends Kind> = z.output<(typeof SCHEMAS)[K]>;

export interface FileReading<K extends Kind> {
  readonly file: string;
  /** Null when the front matter is not what the kind asks for; `problems` then says why. */
  readonly value: FrontValue<K> | null;
  readonly body: readonly ProseSection[];
  /** Null when there is no text or no head. */
  readonly front: FrontMatter | null;
  readonly problems: readonly Problem[];
  /** Links of the body to files of the content folder. */
  readonly links: readonly FileLink[];
}

// A file that is not what it seems would print for ever; the first hundred tell enough.
const MOST_PROBLEMS = 100;

/** The file's front matter and body as its kind asks for them. Never throws, whatever the bytes. */
export function readFile<K extends Kind>(file: SourceFile, kind: K): FileReading<K> {
  const { source, problems } = decode(file);
  const nothing = { file: file.file, value: null, body: [], front: null, links: [] };
  if (source === null) return { ...nothing, problems };
  const split = splitFile(source);
  if (split.front === null) return { ...nothing, problems: split.problems };
  const head = valueOf(split.front, kind);
  const body = bodyOf(source, split.front.bodyOffset, HEADINGS[kind]);
  const samples = starterProblems(split.front, kind);
  const all = sortProblems([...split.problems, ...head.problems, ...body.problems, ...samples]);
  return {
    file: file.file,
    value: split.problems.length === 0 ? head.value : null,
    body: body.sections,
    front: split.front,
    problems: all.slice(0, MOST_PROBLEMS),
    links: body.links,
  };
}

// The longest body shipped has 1,000 characters; the parser of Markdown takes its time for each mark with each other.
const MOST_BODY_CHARACTERS = 32_768;

/** The text under the front matter, by its headings. */
export function bodyOf(source: SourceText, offset: number, rules: HeadingRules): ProseReading {
  const length = source.text.length - offset;
  if (length <= MOST_BODY_CHARACTERS) return readProse(source, offset, rules);
  const problem = errorAt(placeAt(source, offset), 'too-large', {
    found: `a text of ${length} characters under the front matter`,
    expected: `at most ${MOST_BODY_CHARACTERS}`,
    fix: 'shorten the text; it is read by one person',
  });
  return { sections: [], problems: [problem], links: [] };
}

function valueOf<K extends Kind>(
  front: FrontMatter,
  kind: K,
): { value: FrontValue<K> | null; problems: readonly Problem[] } {
  if (front.value === undefined) return { value: null, problems: [] };
  const schema = SCHEMAS[kind];
  const parsed = schema.safeParse(front.value, { error: issueWords });
  if (parsed.success) return { value: parsed.data as FrontValue<K>, problems: [] };
  return { value: null, problems: problemsOf(front, schema, parsed.error.issues) };
}
