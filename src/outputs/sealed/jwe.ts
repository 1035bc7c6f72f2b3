/** JSON Web Encryption in compact form (RFC 7516), A256GCM, for texts that must be the same bytes each time. */
import { base64url } from '../../units/base64url.ts';
import { PBES2_ALG, wordsKey } from '../../units/pbes2.ts';
import { OUTER_HEADERS, PBES2_ROUNDS } from '../../units/sealedFormat.ts';
import type { SealingKeys } from './keys.ts';

type Octets = Uint8Array<ArrayBuffer>;

const IV_OCTETS = 12;
const TAG_OCTETS = 16;

/** With the key itself (`dir`, RFC 7518, 4.5). */
export function sealedDirectly(plaintext: Octets, header: keyof typeof OUTER_HEADERS, keys: SealingKeys) {
  return sealedWith(OUTER_HEADERS[header], '', plaintext, keys);
}

/** With a key that is wrapped by words (PBES2, RFC 7518, 4.8). */
export async function sealedByWords(plaintext: Octets, { inner, words }: SealingKeys): Promise<string> {
  const header = `{"alg":"${PBES2_ALG}","enc":"A256GCM","p2s":"${base64url(inner.salt)}","p2c":${PBES2_ROUNDS}}`;
  return sealedWith(header, base64url(await wrapped(inner, words)), plaintext, inner);
}

async function sealedWith(
  header: string,
  wrappedKey: string,
  plaintext: Octets,
  { key, ivKey }: Pick<SealingKeys, 'key' | 'ivKey'>,
): Promise<string> {
  const encoded = base64url(new TextEncoder().encode(header));
  const additionalData = new TextEncoder().encode(encoded);
  const iv = await ivOf(additionalData, plaintext, ivKey);
  const gcm = await crypto.subtle.importKey('raw', key, 'AES-GCM', false, ['encrypt']);
  const sealed = new Uint8Array(
    await crypto.subtle.encrypt({ name: 'AES-GCM', iv, additionalData }, gcm, plaintext),
  );
  const text = sealed.subarray(0, -TAG_OCTETS);
  const tag = sealed.subarray(-TAG_OCTETS);
  return [encoded, wrappedKey, base64url(iv), base64url(text), base64url(tag)].join('.');
}

/**
 * The first 96 bits of HMAC-SHA-256 over header and plaintext: other texts have another IV under one key, but for a
 * chance of one in 2 to the 96 for each two of them; the same text is the same bytes.
 */
async function ivOf(header: Octets, plaintext: Octets, ivKey: Octets): Promise<Octets> {
  const hmac = await crypto.subtle.importKey('raw', ivKey, { name: 'HMAC', hash: 'SHA-256' }, false, [
    'sign',
  ]);
  const said = new Uint8Array(header.length + 1 + plaintext.length);
  said.set(header);
  // A zero stands in no header.
  said.set(plaintext, header.length + 1);
  return new Uint8Array(await crypto.subtle.sign('HMAC', hmac, said)).slice(0, IV_OCTETS);
}

async function wrapped({ key, salt }: SealingKeys['inner'], words: string): Promise<Octets> {
  const wrapping = await wordsKey(words, salt, PBES2_ROUNDS, 'wrapKey');
  const content = await crypto.subtle.importKey('raw', key, 'AES-GCM', true, ['encrypt']);
  return new Uint8Array(await crypto.subtle.wrapKey('raw', content, wrapping, 'AES-KW'));
}
