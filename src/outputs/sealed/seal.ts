/** A leaflet as one sealed text (`units/sealedFormat.ts` tells the form). */
import { gzipSync } from 'fflate';
import type { SealedPayload } from '../../units/sealedFormat.ts';
import { sealedByWords, sealedDirectly } from './jwe.ts';
import type { SealingKeys } from './keys.ts';

/** A JWE; with `hasWords` it opens only with the five words too. Same payload, same bytes, on every machine. */
export async function seal(payload: SealedPayload, keys: SealingKeys, hasWords: boolean): Promise<string> {
  const zipped = gzipSync(new TextEncoder().encode(JSON.stringify(payload)), { level: 9, mtime: 0 });
  const plaintext = new Uint8Array(zipped);
  if (!hasWords) return sealedDirectly(plaintext, 'plain', keys);
  const inner = new TextEncoder().encode(await sealedByWords(plaintext, keys));
  return sealedDirectly(inner, 'words', keys);
}
