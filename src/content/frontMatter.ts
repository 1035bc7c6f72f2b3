/** Splits a file into its YAML head and its Markdown body, and reads the head as plain values that know their places. */
import type { Node } from 'yaml';
import type { Path } from './path.ts';
import { errorAt, type Problem } from './problem.ts';
import { topOf, type SourceText } from './sourceText.ts';
import { readYaml } from './yaml.ts';

export interface FrontMatter {
  readonly source: SourceText;
  /** Offset of the head in the file; the nodes count from it. */
  readonly offset: number;
  /** Offset of the body in the file: the start of the line after the closing `---`. */
  readonly bodyOffset: number;
  readonly contents: Node | null;
  /** Plain objects, lists, texts, numbers; undefined when the YAML is too broken to be read. */
  readonly value: unknown;
  /** Paths of values that stand in another file, or at another path. */
  readonly elsewhere?: readonly { readonly path: Path; readonly front: FrontMatter; readonly at: Path }[];
}

export interface SplitFile {
  readonly front: FrontMatter;
  readonly problems: readonly Problem[];
}

const OPENING = /^---[ \t]*\n/;
const CLOSING = /^---[ \t]*(?:\n|$)/m;

/** The file's head and where its body begins; null with the reason when there is no head. */
export function splitFile(
  source: SourceText,
): SplitFile | { readonly front: null; readonly problems: Problem[] } {
  const opening = OPENING.exec(source.text);
  if (opening === null) return { front: null, problems: [noHead(source, 'no front matter')] };
  const offset = opening[0].length;
  const closing = CLOSING.exec(source.text.slice(offset));
  if (closing === null) return { front: null, problems: [noHead(source, 'front matter that does not end')] };
  const head = source.text.slice(offset, offset + closing.index);
  const { contents, value, problems } = readYaml(source, head, offset);
  const bodyOffset = offset + closing.index + closing[0].length;
  return { front: { source, offset, bodyOffset, contents, value }, problems };
}

function noHead(source: SourceText, found: string): Problem {
  return errorAt(topOf(source.file), 'no-front-matter', {
    found,
    expected: 'a first line ---, the keys, and a closing line ---',
    fix: 'put the keys between two lines of three hyphens at the top of the file',
  });
}
