/**
 * The form of a sealed leaflet, by which it is written and opened. Format 1:
 *
 * A JWE in compact form (RFC 7516), `dir` with A256GCM; its protected header is one of the two texts below, to the letter.
 * Its plaintext is gzip (RFC 1952) of a JSON object (`SealedPayload`); or, where words are asked for, a second JWE whose
 * key is wrapped with the words by PBES2-HS256+A128KW (RFC 7518, 4.8), and whose plaintext that gzip is.
 */

export const OUTER_HEADERS = {
  plain: '{"alg":"dir","enc":"A256GCM","cty":"application/gzip"}',
  words: '{"alg":"dir","enc":"A256GCM","cty":"JWE"}',
} as const;

/** Rounds of PBKDF2 with SHA-256: OWASP Password Storage Cheat Sheet (read, commit 6b8819d). More than `MOST` only wears out a phone. */
export const PBES2_ROUNDS = 600_000;
export const PBES2_ROUNDS_MOST = 2_000_000;

/** Octets a leaflet may have when it is inflated [choice: photos and all, a hundred times what one has without]. */
export const INFLATED_OCTETS_MOST = 16 * 1024 * 1024;

export const KEY_OCTETS = 32;

export interface SealedPayload {
  readonly loadleaf: 1;
  readonly revision: number;
  /** The day from which it is in use no longer, `YYYY-MM-DD`; null where none is set. */
  readonly withdrawOn: string | null;
  /** The whole page. */
  readonly html: string;
}

/** How words are spelt when they are a key: small letters, one space between. */
export function wordsAsKey(words: string): string {
  return words
    .toLowerCase()
    .split(/[^a-z-]+/)
    .filter((word) => word !== '')
    .join(' ');
}
