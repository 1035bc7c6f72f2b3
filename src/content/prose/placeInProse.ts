/** Where in the file a character of a body's plain text stands. */
import type { Token } from 'markdown-it';
import type { Path } from '../path.ts';
import type { Place } from '../problem.ts';
import { placeAt, type SourceText } from '../sourceText.ts';
import { isList } from './blocks.ts';
import { offsetInFile } from './body.ts';
import { inlineBranches, offsetOf, parseMarkdown, type Branch } from './markdown.ts';
import { partsOf } from './readProse.ts';

/**
 * The place of the character at `offset` of the text at a path of `proseTexts`, in the body that begins at `bodyOffset`
 * in the file; of the body's beginning when nothing stands at the path.
 */
export function placeInProse(source: SourceText, bodyOffset: number, path: Path, offset: number): Place {
  const text = textAt(parseMarkdown(source.text.slice(bodyOffset)), path);
  if (text === null) return placeAt(source, bodyOffset);
  const firstLine = placeAt(source, bodyOffset).line - 1;
  return placeAt(source, offsetInFile({ source, firstLine }, text, writtenOffset(text, offset)));
}

/** The token that carries the text of a paragraph or list entry. */
function textAt(body: readonly Branch[], path: Path): Token | null {
  const [section = 0, block = 0, ...entries] = path.filter((step) => typeof step === 'number');
  const { parts } = partsOf(body);
  // Without a heading the whole is one section.
  const under = (parts.length === 0 ? body : parts[section]?.under)?.[block];
  const branch = entries.reduce<Branch | undefined>((at, entry) => listOf(at)?.children[entry], under);
  const paragraph = branch?.token.type === 'list_item_open' ? branch.children[0] : branch;
  return paragraph?.children[0]?.token ?? null;
}

// A list itself, or the one under an entry.
function listOf(branch: Branch | undefined): Branch | undefined {
  return branch === undefined || isList(branch) ? branch : branch.children.find(isList);
}

/** The offset with the marks between. */
function writtenOffset(block: Token, offset: number): number {
  let left = offset;
  for (const token of leaves(inlineBranches(block))) {
    const length = token.type === 'softbreak' ? 1 : token.content.length;
    if (left < length) return offsetOf(token) + (token.type === 'text' ? left : 0);
    left -= length;
  }
  return block.content.length;
}

function leaves(branches: readonly Branch[]): Token[] {
  return branches.flatMap(({ token, children }) => (token.nesting === 1 ? leaves(children) : [token]));
}
