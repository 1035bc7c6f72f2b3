/** PBES2-HS256+A128KW (RFC 7518, 4.8): a key that wraps another, from words. The same where it is wrapped and unwrapped. */

type Octets = Uint8Array<ArrayBuffer>;

export const PBES2_ALG = 'PBES2-HS256+A128KW';

/** The salt is the name of the way, a zero and `p2s` (4.8.1.1); `rounds` is `p2c`. */
export async function wordsKey(
  words: string,
  p2s: Octets,
  rounds: number,
  use: 'wrapKey' | 'unwrapKey',
): ReturnType<typeof crypto.subtle.importKey> {
  const encoder = new TextEncoder();
  const password = await crypto.subtle.importKey('raw', encoder.encode(words), 'PBKDF2', false, [
    'deriveKey',
  ]);
  return crypto.subtle.deriveKey(
    {
      name: 'PBKDF2',
      hash: 'SHA-256',
      salt: new Uint8Array([...encoder.encode(PBES2_ALG), 0, ...p2s]),
      iterations: rounds,
    },
    password,
    { name: 'AES-KW', length: 128 },
    false,
    [use],
  );
}
