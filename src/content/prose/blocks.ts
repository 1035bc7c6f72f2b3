/** Paragraphs and two-level lists. */
import type { Token } from 'markdown-it';
import type { Block, Inline, ListEntry } from './block.ts';
import { reportBlock, type Body } from './body.ts';
import { inlinesOf } from './inlines.ts';
import type { Branch } from './markdown.ts';
import { PROSE_WORDS } from './words.ts';

/** The block as ours; empty, with a note in `body`, when it is of another kind. */
export function blocksOf(body: Body, branch: Branch): Block[] {
  if (branch.token.type === 'paragraph_open') return [{ kind: 'paragraph', text: textOf(body, branch) }];
  if (!isList(branch)) {
    refuse(body, branch.token, blockName(branch.token.type));
    return [];
  }
  checkNumbers(body, branch.token);
  const entries = branch.children.map((entry) => entryOf(body, entry));
  return [{ kind: 'list', ordered: isOrdered(branch), entries }];
}

const NAMES: Readonly<Record<string, readonly [found: string, fix: string]>> = {
  fence: ['a block of code', 'write it as a paragraph'],
  code_block: [
    'a line indented by four spaces or more',
    'begin the line at the margin, or two spaces in for a second-level list',
  ],
  blockquote_open: ['a quotation', 'take out the > at the beginning of the line'],
  hr: ['a rule across the page', 'take it out'],
  table_open: ['a table', 'write it as a list'],
  reference_definition: [
    'a link target on a line of its own',
    'put the target behind the words: [words](https://…)',
  ],
  heading_open: ['a heading inside a list', 'write it as a paragraph, **strong** if need be'],
};

type Name = readonly [found: string, fix: string];

function blockName(type: string): Name {
  return NAMES[type] ?? [type, 'write it as a paragraph'];
}

function refuse(body: Body, token: Token, [found, fix]: Name): void {
  reportBlock(body, token, 'prose', { found, expected: PROSE_WORDS, fix });
}

function textOf(body: Body, paragraph: Branch): Inline[] {
  return paragraph.children.flatMap(({ token }) => inlinesOf(body, token));
}

export function isList({ token }: Branch): boolean {
  return token.type === 'bullet_list_open' || token.type === 'ordered_list_open';
}

function isOrdered({ token }: Branch): boolean {
  return token.type === 'ordered_list_open';
}

// Only where a list begins is its number kept; ours all begin with 1.
function checkNumbers(body: Body, list: Token): void {
  const start = list.attrGet('start');
  if (start !== null) refuse(body, list, [`a list that begins with ${start}`, 'begin it with 1.']);
}

function entryOf(body: Body, item: Branch): ListEntry {
  const [text, list] = partsOf(body, item);
  if (list === null) return { text, entries: [], ordered: false };
  checkNumbers(body, list.token);
  const entries = list.children.map((entry) => ({ text: lastLevel(body, entry) }));
  return { text, entries, ordered: isOrdered(list) };
}

function lastLevel(body: Body, item: Branch): Inline[] {
  const [text, list] = partsOf(body, item);
  if (list !== null) refuse(body, list.token, ['a list of a third level', 'make it a list of two levels']);
  return text;
}

/** An entry is one paragraph, and a list under it or not. */
function partsOf(body: Body, item: Branch): [Inline[], Branch | null] {
  const [first, second, third] = item.children;
  if (first?.token.type !== 'paragraph_open') {
    refuse(body, first?.token ?? item.token, emptyOr(first));
    return [[], null];
  }
  const list = second !== undefined && isList(second) ? second : null;
  const tooMany = list === null ? second : third;
  if (tooMany !== undefined) refuse(body, tooMany.token, tooManyName(tooMany));
  return [textOf(body, first), list];
}

function emptyOr(first: Branch | undefined): Name {
  if (first === undefined) return ['a list entry without words', 'write the words, or take the entry out'];
  if (isList(first)) return ['a list in the line of another', 'write the words of the entry first'];
  return blockName(first.token.type);
}

function tooManyName(branch: Branch): Name {
  if (branch.token.type === 'paragraph_open') {
    return ['a second paragraph in a list entry', 'join the two, or make it an entry of its own'];
  }
  return isList(branch)
    ? ['a second list in a list entry', 'join the two lists']
    : blockName(branch.token.type);
}
