/**
 * The Markdown parser as we use it: CommonMark to tokens, nothing rendered. HTML and automatic links are off; what we do
 * not take (tables, images, code) is still recognised, so that it can be refused by name instead of slipping through as
 * text. Inline tokens carry their offset, which the parser itself does not give.
 */
import createMarkdownIt, { type MarkdownIt, type StateInline, type Token } from 'markdown-it';

/** A token with what stands between it and its closing one. */
export interface Branch {
  readonly token: Token;
  readonly children: readonly Branch[];
}

const parser = configured();

/** The block tokens of a body as a tree; lines in `token.map` count from 0 in the body. */
export function parseMarkdown(body: string): readonly Branch[] {
  return nested(parser.parse(body, {}));
}

/** The inline tokens of a text block as a tree. */
export function inlineBranches(inline: Token): readonly Branch[] {
  return nested(inline.children ?? []);
}

/** Offset of an inline token in the text of its block. */
export function offsetOf(token: Token): number {
  const meta = token.meta as { offset?: number } | null;
  return meta?.offset ?? 0;
}

function configured(): MarkdownIt {
  const markdown = createMarkdownIt({ html: false, linkify: false, typographer: false });
  // Every target becomes a link here; link.ts refuses the wrong ones with their place.
  markdown.validateLink = () => true;
  // These two would hide from us what stands in the file: definitions, and where one text ends and the next begins.
  markdown.core.ruler.disable(['strip_references', 'text_join']);
  markdown.inline.ruler2.disable('fragments_join');
  markdown.inline.tokenize = (state) => tokenizeWithOffsets(markdown, state);
  return markdown;
}

// The parser's own loop over its rules, noting at each new token where it begins.
function tokenizeWithOffsets(markdown: MarkdownIt, state: StateInline): void {
  const rules = markdown.inline.ruler.getRules('');
  let textFrom = state.pos;
  while (state.pos < state.posMax) {
    const [from, before, text] = [state.pos, state.tokens.length, state.pending];
    if (text === '') textFrom = from;
    const taken = state.level < markdown.options.maxNesting && rules.some((rule) => rule(state, false));
    if (!taken) state.pending += state.src[state.pos++];
    if (text !== '') note(state.tokens.slice(before, before + 1), textFrom);
    note(state.tokens.slice(before), from);
  }
  if (state.pending !== '') note([state.pushPending()], textFrom);
}

// Tokens inside a link have been noted when the link's own are.
function note(tokens: readonly Token[], offset: number): void {
  for (const token of tokens) token.meta ??= { offset };
}

function nested(tokens: readonly Token[]): readonly Branch[] {
  const root: Branch[] = [];
  const open: Branch[][] = [root];
  for (const token of tokens) {
    if (token.nesting === -1) open.pop();
    else {
      const children: Branch[] = [];
      open.at(-1)?.push({ token, children });
      if (token.nesting === 1) open.push(children);
    }
  }
  return root;
}
