/** What mutants are made from: the shipped library, and every consult that is shipped or stands in a whole case. */
import { join } from 'node:path';
import { CASES } from '../tests/programme/outcome.ts';
import { filesBelow } from '../tests/programme/shipped.ts';

export interface TextFile {
  readonly file: string;
  readonly text: string;
}

/** The files of one person, named as content names them. */
export type PersonFiles = readonly TextFile[];

const decoder = new TextDecoder();

function textsBelow(folder: string, except?: string): TextFile[] {
  return filesBelow(folder, except).map(({ file, bytes }) => ({ file, text: decoder.decode(bytes) }));
}

export const LIBRARY: readonly TextFile[] = textsBelow('content', 'consults/');

export const PEOPLE: readonly PersonFiles[] = [
  ...textsBelow('content/consults').map((one) => [one]),
  ...CASES.map((name) => textsBelow(join('tests/cases', name, 'in'))),
].map((files) => files.map(({ file, text }) => ({ file: `consults/${file}`, text })));
