/** Names that tell what is in a file: a browser keeps one for good, and what changed has another. */
import { hashOf } from './issued.ts';

/** Hexadecimal digits of a SHA-256: enough that no two of our files ever meet [choice]. */
const DIGITS = 10;

/** @example hashedName('worker', 'js', '') // => 'worker-e3b0c44298.js' */
export function hashedName(stem: string, ending: string, bytes: Uint8Array | string): string {
  return `${stem}-${hashOf(bytes).slice(0, DIGITS)}.${ending}`;
}

/** Whether a file is still what its name says, so that it is known without a list; one changed by hand is not. */
export function isByItsName(name: string, bytes: Uint8Array): boolean {
  const [, stem, ending] = /^([a-z]+)-[0-9a-f]+\.([a-z]+)$/.exec(name) ?? [];
  return stem !== undefined && ending !== undefined && name === hashedName(stem, ending, bytes);
}
