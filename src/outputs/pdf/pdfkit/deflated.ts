/** Bytes as a Flate stream holds them (ISO 32000-1 7.4.4). */
import { constants, deflateSync } from 'node:zlib';

/** The same bytes on any machine for the same text: fixed level, window and strategy. */
const AS_SMALL_AS_CAN_BE = { level: constants.Z_BEST_COMPRESSION };

/** Operators or objects, whose characters are bytes. */
export function deflated(text: string): Uint8Array {
  return deflateSync(Buffer.from(text, 'latin1'), AS_SMALL_AS_CAN_BE);
}
