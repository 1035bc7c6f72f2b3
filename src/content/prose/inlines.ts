/** The marked text of a paragraph or list entry. */
import type { Token } from 'markdown-it';
import { BAD_CHARACTER_WORDS, badCharacters } from '../badCharacter.ts';
import { placeAt } from '../sourceText.ts';
import type { Inline } from './block.ts';
import { offsetInFile, reportInline, type Body } from './body.ts';
import { linkedFile, linkFault } from './link.ts';
import { inlineBranches, offsetOf, type Branch } from './markdown.ts';
import { PROSE_WORDS } from './words.ts';

/** The text of a block as marked text; whatever it may not hold is noted in `body` and left out. */
export function inlinesOf(body: Body, block: Token): Inline[] {
  const inlines = (branches: readonly Branch[]): Inline[] => joined(branches.flatMap(inline));

  const inline = ({ token, children }: Branch): Inline[] => {
    switch (token.type) {
      case 'text':
        checkForHtml(body, block, token);
        return [{ kind: 'text', text: token.content }];
      case 'text_special':
        checkCharacter(body, block, token);
        return [{ kind: 'text', text: token.content }];
      case 'softbreak':
        return [{ kind: 'text', text: ' ' }];
      case 'strong_open':
        return [{ kind: 'strong', children: inlines(children) }];
      case 'em_open':
        return [{ kind: 'emphasis', children: inlines(children) }];
      case 'link_open':
        checkLink(body, block, token, children);
        return [{ kind: 'link', href: targetOf(body, token), children: inlines(children) }];
      default:
        reportInline(body, block, offsetOf(token), 'prose', refusal(token.type));
        return [];
    }
  };

  return inlines(inlineBranches(block));
}

const REFUSED: Readonly<Record<string, { readonly found: string; readonly fix: string }>> = {
  code_inline: { found: 'code', fix: 'take the backticks out' },
  image: {
    found: 'an image',
    fix: 'take it out; figures are drawn from the pose, and a card names its photos under photos',
  },
  s_open: { found: 'text struck through', fix: 'take the text out' },
  hardbreak: {
    found: 'a forced line break',
    fix: 'take out the backslash or the two spaces at the end of the line',
  },
};

function refusal(type: string): { found: string; fix: string; expected: string } {
  return { found: type, fix: 'write it in words', ...REFUSED[type], expected: PROSE_WORDS };
}

// HTML is off, so a tag would be printed letter by letter; nobody means that.
function checkForHtml(body: Body, block: Token, token: Token): void {
  const at = token.content.search(/<[a-z/!?]/i);
  if (at === -1) return;
  reportInline(body, block, offsetOf(token) + at, 'prose', {
    found: 'HTML',
    expected: PROSE_WORDS,
    fix: 'write it without tags; for a plain < put a space after it',
  });
}

// An entity such as &#x202E; brings in what was refused in the file's own text.
function checkCharacter(body: Body, block: Token, token: Token): void {
  const [bad] = badCharacters(token.content);
  if (bad === undefined) return;
  reportInline(body, block, offsetOf(token), 'bad-character', { found: bad.name, ...BAD_CHARACTER_WORDS });
}

function checkLink(body: Body, block: Token, token: Token, children: readonly Branch[]): void {
  const href = hrefOf(token);
  const expected = linkExpectation(token, href, children, body.source.file);
  if (expected === null) return noteLink(body, block, token);
  const fix = `write ${expected}, or take the link out and leave its words`;
  reportInline(body, block, offsetOf(token), 'link', {
    found: `a link to ${href || 'nothing'}`,
    expected,
    fix,
  });
}

function linkExpectation(
  token: Token,
  href: string,
  children: readonly Branch[],
  file: string,
): string | null {
  if (token.attrGet('title') !== null) return 'a link without a title in quotes';
  if (children.length === 0) return 'a link with words to press on';
  return linkFault(href, file);
}

// Which files there are is known when all are read.
function noteLink(body: Body, block: Token, token: Token): void {
  const to = linkedFile(hrefOf(token), body.source.file);
  if (to === null) return;
  const place = placeAt(body.source, offsetInFile(body, block, offsetOf(token)));
  body.links.push({ to, written: hrefOf(token), place });
}

function targetOf({ source }: Body, token: Token): string {
  return linkedFile(hrefOf(token), source.file) ?? hrefOf(token);
}

function hrefOf(token: Token): string {
  return String(token.attrGet('href') ?? '');
}

function joined(inlines: readonly Inline[]): Inline[] {
  const result: Inline[] = [];
  for (const inline of inlines) {
    const last = result.at(-1);
    if (inline.kind === 'text' && last?.kind === 'text') {
      result[result.length - 1] = { kind: 'text', text: last.text + inline.text };
    } else result.push(inline);
  }
  return result.filter((inline) => inline.kind !== 'text' || inline.text !== '');
}
