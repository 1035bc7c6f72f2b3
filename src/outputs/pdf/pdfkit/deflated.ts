/** Bytes as a Flate stream holds them (ISO 32000-1 7.4.4). */
import { deflate } from 'pako';
import { latin1 } from './bytes.ts';

/** Exponents of two between which zlib's window may lie, and how far its hash stays behind it. */
const WINDOW = { least: 9, most: 15 };
const HASH_BEHIND = 6;
const MEMORY = { least: 1, most: 9 };

/** Of zlib's nine. The last two take twice as long for a leaflet of the demo and save 0.4 KB of 82. */
const LEVEL = 7;

/**
 * Operators or objects, whose characters are bytes, well packed; the same bytes on any machine for the same text,
 * and in a browser, for it is done in JavaScript. A window no longer than the text finds the same and takes a fraction of
 * the memory: a leaflet has some forty streams, mostly short.
 */
export function deflated(text: string | Uint8Array): Uint8Array {
  const needed = Math.ceil(Math.log2(text.length + 1));
  const windowBits = Math.max(WINDOW.least, Math.min(needed, WINDOW.most));
  const memLevel = Math.max(MEMORY.least, Math.min(windowBits - HASH_BEHIND, MEMORY.most));
  const bytes = typeof text === 'string' ? latin1(text) : text;
  return deflate(bytes, { level: LEVEL, windowBits, memLevel });
}
