/**
 * `issued.jsonl` of one person: what was made for the first time, what was withdrawn and what came back, and when. Lines
 * are only ever added; each carries its own hash and the hash of the line before it, so that a change shows. It stands
 * outside the law of equal bytes: two folders with one set in them may have come to it by different ways.
 */
import { createHash } from 'node:crypto';
import type { IsoDate } from '../../units/date.ts';

export const ISSUED = 'issued.jsonl';

/** One file of a set. */
export interface Listed {
  /** Within the set. */
  readonly path: string;
  readonly sha256: string;
}

/** What a line says, before it is bound to the others. */
export interface Happening {
  /** Of `--on`, else of the machine's clock. */
  readonly on: IsoDate;
  readonly event: 'issued' | 'withdrawn' | 'returned';
  readonly alias: string;
  readonly revision: number;
  readonly mark: string | null;
  readonly files: readonly Listed[];
  readonly loadleaf: string;
  readonly library: string | null;
  /** Codes of what stood against it; only of what was withdrawn. */
  readonly because?: readonly string[];
}

export interface Line extends Happening {
  /** From 1. */
  readonly number: number;
  /** Hash of the line before; null in the first. */
  readonly before: string | null;
  /** SHA-256 of this line as JSON without this key. */
  readonly hash: string;
}

/** The lines that can be read, in their order. */
export function linesOf(text: string): readonly Line[] {
  return rows(text).flatMap((row) => parsed(row) ?? []);
}

/** The text with one line more. */
export function withLine(text: string, happening: Happening): string {
  const written = rows(text);
  const last = written.at(-1);
  const line = {
    number: written.length + 1,
    ...happening,
    before: last === undefined ? null : (parsed(last)?.hash ?? hashOf(last)),
  };
  return `${written.map((row) => `${row}\n`).join('')}${JSON.stringify({ ...line, hash: hashOf(JSON.stringify(line)) })}\n`;
}

/** The number of the first line (from 1) that is not as it was written or does not follow the one before; null when all do. */
export function brokenAt(text: string): number | null {
  let before: string | null = null;
  for (const [index, row] of rows(text).entries()) {
    const line = parsed(row);
    if (line === null || line.number !== index + 1 || line.before !== before || !isAsWritten(line, row))
      return index + 1;
    before = line.hash;
  }
  return null;
}

function isAsWritten(line: Line, row: string): boolean {
  const { hash, ...rest } = line;
  return hash === hashOf(JSON.stringify(rest)) && row === JSON.stringify(line);
}

function rows(text: string): string[] {
  return text.split('\n').filter((row) => row !== '');
}

function parsed(row: string): Line | null {
  try {
    const line = JSON.parse(row) as Partial<Line> | null;
    return typeof line?.hash === 'string' && typeof line.event === 'string' && Array.isArray(line.files)
      ? (line as Line)
      : null;
  } catch {
    return null;
  }
}

export function hashOf(bytes: Uint8Array | string): string {
  return createHash('sha256').update(bytes).digest('hex');
}
