/** A Markdown body under the fixed headings of its kind. */
import type { Token } from 'markdown-it';
import { listed } from '../inWords.ts';
import { nearest } from '../nearest.ts';
import type { Problem } from '../problem.ts';
import { placeAt, type SourceText } from '../sourceText.ts';
import type { ProseSection } from './block.ts';
import { blocksOf } from './blocks.ts';
import { report, reportBlock, type Body, type FileLink } from './body.ts';
import type { HeadingRules } from './headings.ts';
import { parseMarkdown, type Branch } from './markdown.ts';

export interface ProseReading {
  readonly sections: readonly ProseSection[];
  readonly problems: readonly Problem[];
  readonly links: readonly FileLink[];
}

/** The sections of the body that begins at `offset` in the file, as they stand; all that is wrong with it as Problems. */
export function readProse(source: SourceText, offset: number, rules: HeadingRules): ProseReading {
  const body: Body = { source, firstLine: placeAt(source, offset).line - 1, problems: [], links: [] };
  const branches = parseMarkdown(source.text.slice(offset));
  const { before, parts } = partsOf(branches);
  if (before !== undefined && parts.length === 0 && rules.mayBePlain) {
    const blocks = branches.flatMap((block) => blocksOf(body, block));
    return { sections: [{ heading: rules.headings[0] ?? '', blocks }], ...found(body) };
  }
  if (before !== undefined) reportBlock(body, before.token, 'heading', textBefore(rules));
  const sections = parts.flatMap((part) => sectionOf(body, part, rules));
  checkOrder(body, sections, rules);
  if (rules.required) checkAllThere(body, sections, rules);
  return { sections: sections.map(({ heading, blocks }) => ({ heading, blocks })), ...found(body) };
}

function found({ problems, links }: Body): Pick<ProseReading, 'problems' | 'links'> {
  return { problems, links };
}

/** A heading with what stands under it. */
export interface Part {
  readonly heading: Branch;
  readonly under: readonly Branch[];
}

/** The blocks of a body by its headings; `before`: what stands before the first of them. */
export function partsOf(branches: readonly Branch[]): {
  readonly before: Branch | undefined;
  readonly parts: readonly Part[];
} {
  const parts: { heading: Branch; under: Branch[] }[] = [];
  for (const branch of branches) {
    if (branch.token.type === 'heading_open') parts.push({ heading: branch, under: [] });
    else parts.at(-1)?.under.push(branch);
  }
  const [first] = branches;
  return { before: first?.token.type === 'heading_open' ? undefined : first, parts };
}

function textBefore({ headings }: HeadingRules): { found: string; expected: string; fix: string } {
  return {
    found: 'text before the first heading',
    expected: `text under ${headingList(headings)}`,
    fix:
      headings.length === 0
        ? 'put a heading before it, as ## Where we are'
        : `put ## ${headings[0]} before it`,
  };
}

function headingList(headings: readonly string[]): string {
  if (headings.length === 0) return 'a heading';
  return `${headings.length === 1 ? 'the heading' : 'one of the headings'} ${listed(headings, 'or')}`;
}

interface PlacedSection extends ProseSection {
  readonly token: Token;
}

// A misspelt heading is taken for the one that was meant, so that it does not count as missing too.
function sectionOf(
  body: Body,
  { heading: branch, under }: Part,
  { headings }: HeadingRules,
): PlacedSection[] {
  const { token, children } = branch;
  const written = children[0]?.token.content ?? '';
  const meant = headings.length === 0 ? written : nearest(written, headings);
  const blocks = under.flatMap((block) => blocksOf(body, block));
  if (meant !== written || token.tag !== 'h2') reportHeading(body, token, written, meant, headings);
  else if (under.length === 0) reportEmpty(body, token, written);
  return meant === null ? [] : [{ heading: meant, blocks, token }];
}

function reportHeading(
  body: Body,
  token: Token,
  written: string,
  meant: string | null,
  headings: readonly string[],
): void {
  const level = token.tag === 'h2' ? '' : ` of level ${token.tag.slice(1)}`;
  reportBlock(body, token, 'heading', {
    found: `the heading “${written}”${level}`,
    expected: `${headingList(headings)}, of level 2`,
    fix: meant === null ? `move the text under ${headingList(headings)}` : `write ## ${meant}`,
  });
}

function reportEmpty(body: Body, token: Token, heading: string): void {
  reportBlock(body, token, 'heading', {
    found: `the heading “${heading}” with nothing under it`,
    expected: 'a heading with text under it',
    fix: 'write a few sentences under it',
  });
}

function checkOrder(body: Body, sections: readonly PlacedSection[], { headings }: HeadingRules): void {
  if (headings.length === 0) return;
  let last = -1;
  for (const { heading, token } of sections) {
    const rank = headings.indexOf(heading);
    if (rank <= last) reportOrder(body, token, heading, sections, headings);
    last = Math.max(last, rank);
  }
}

function reportOrder(
  body: Body,
  token: Token,
  heading: string,
  sections: readonly PlacedSection[],
  headings: readonly string[],
): void {
  const first = sections.find((section) => section.heading === heading);
  const again = first?.token !== token;
  reportBlock(body, token, 'heading', {
    found: again ? `the heading “${heading}” a second time` : `the heading “${heading}” too late`,
    expected: headings.length === 1 ? 'there once' : `in the order ${listed(headings, 'and')}, each once`,
    fix: again ? 'put the text under the first of the two' : 'move it up with its text',
  });
}

function checkAllThere(body: Body, sections: readonly PlacedSection[], { headings }: HeadingRules): void {
  for (const [rank, heading] of headings.entries()) {
    if (sections.some((section) => section.heading === heading)) continue;
    const next = sections.find((section) => headings.indexOf(section.heading) > rank);
    const words = {
      found: `no heading “${heading}”`,
      expected: `text under ${listed(headings, 'and')}, in this order`,
      fix: `add ## ${heading} with a few sentences under it`,
    };
    if (next === undefined) report(body, body.source.text.trimEnd().length, 'heading', words);
    else reportBlock(body, next.token, 'heading', words);
  }
}
