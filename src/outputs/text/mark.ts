/** The mark by which the files of one make are known: page, paper, record and note of it carry the same one. */
import { createHash } from 'node:crypto';
import type { Programme } from '../../programme/programme.ts';
import { recordJson } from './recordJson.ts';

/** Hexadecimal digits: few enough to be read out over the telephone; one in four thousand million is the same by chance. */
const DIGITS = 8;

/**
 * The programme with its mark, the first digits of the SHA-256 (FIPS 180-4) of `record.json` as it reads without one.
 * So nothing goes round in a circle: whoever takes the key `mark` out of `record.json` can work the mark out again.
 */
export function marked(programme: Programme): Programme & { readonly mark: string } {
  // A key without a value does not stand in JSON.
  return { ...programme, mark: markOf(recordJson({ ...programme, mark: undefined })) };
}

/** Of a `record.json` without a mark. */
function markOf(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, DIGITS);
}
