/** Bytes as a Flate stream holds them (ISO 32000-1 7.4.4). */
import { constants, deflateSync } from 'node:zlib';

/** Exponents of two between which zlib's window may lie, and how far its hash stays behind it. */
const WINDOW = { least: 9, most: 15 };
const HASH_BEHIND = 6;

/**
 * Operators or objects, whose characters are bytes, as small as can be; the same bytes on any machine for the same text.
 * A window no longer than the text finds the same and takes a fraction of the memory: a leaflet has some forty streams,
 * mostly short.
 */
export function deflated(text: string): Uint8Array {
  const needed = Math.ceil(Math.log2(text.length + 1));
  const windowBits = Math.max(WINDOW.least, Math.min(needed, WINDOW.most));
  const memLevel = Math.max(1, Math.min(windowBits - HASH_BEHIND, constants.Z_MAX_MEMLEVEL));
  return deflateSync(Buffer.from(text, 'latin1'), {
    level: constants.Z_BEST_COMPRESSION,
    windowBits,
    memLevel,
  });
}
