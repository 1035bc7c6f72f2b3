/** A Markdown body within its file: says where in the file a token stands, and collects what is wrong with it. */
import type { Token } from 'markdown-it';
import { errorAt, type Place, type Problem, type ProblemCode, type ProblemWords } from '../problem.ts';
import { placeAt, type SourceText } from '../sourceText.ts';

export interface Body {
  readonly source: SourceText;
  /** Index of the body's first line among the file's. */
  readonly firstLine: number;
  /** Grow while the body is read. */
  readonly problems: Problem[];
  readonly links: FileLink[];
}

/** A link to a file of the content folder, that may be there or not. */
export interface FileLink {
  /** From the top of the content folder. */
  readonly to: string;
  readonly written: string;
  readonly place: Place;
}

/** Notes a Problem at the first sign of a block. */
export function reportBlock(body: Body, block: Token, code: ProblemCode, words: ProblemWords): void {
  const line = body.firstLine + (block.map?.[0] ?? 0);
  const indent = /^\s*/.exec(lineText(body.source, line))?.[0].length ?? 0;
  report(body, startOfLine(body.source, line) + indent, code, words);
}

/** Notes a Problem at an offset in the text of a block. */
export function reportInline(
  body: Body,
  block: Token,
  offset: number,
  code: ProblemCode,
  words: ProblemWords,
): void {
  report(body, offsetInFile(body, block, offset), code, words);
}

/** Notes a Problem at an offset in the file. */
export function report(body: Body, offset: number, code: ProblemCode, words: ProblemWords): void {
  body.problems.push(errorAt(placeAt(body.source, offset), code, words));
}

/**
 * Offset in the file of an offset in a block's text. That text is the file's lines without their indents and list
 * marks; each is looked up in its line.
 */
export function offsetInFile(body: Pick<Body, 'source' | 'firstLine'>, block: Token, offset: number): number {
  const rows = block.content.slice(0, offset).split('\n');
  const row = rows.length - 1;
  const line = body.firstLine + (block.map?.[0] ?? 0) + row;
  const indent = lineText(body.source, line).indexOf(block.content.split('\n')[row] ?? '');
  return startOfLine(body.source, line) + Math.max(0, indent) + (rows[row]?.length ?? 0);
}

function startOfLine(source: SourceText, line: number): number {
  return source.lineStarts[line] ?? source.text.length;
}

function lineText(source: SourceText, line: number): string {
  return source.text.slice(startOfLine(source, line), startOfLine(source, line + 1)).replace('\n', '');
}
