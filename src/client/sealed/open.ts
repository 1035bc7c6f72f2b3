/** Opens a sealed leaflet with WebCrypto. Whatever is wrong, there is one answer: null. Never a part of the text. */
import { fromBase64url } from '../../units/base64url.ts';
import { PBES2_ALG, wordsKey } from '../../units/pbes2.ts';
import {
  INFLATED_OCTETS_MOST,
  KEY_OCTETS,
  OUTER_HEADERS,
  PBES2_ROUNDS,
  PBES2_ROUNDS_MOST,
  wordsAsKey,
  type SealedPayload,
} from '../../units/sealedFormat.ts';

type Octets = Uint8Array<ArrayBuffer>;

/** `CryptoKey`, by a name that browsers' and Node's types both know. */
export type Key = Awaited<ReturnType<typeof crypto.subtle.importKey>>;

/** The keys that have opened it, which do not leave the browser; `inner` where words were asked for. */
export interface OpeningKeys {
  readonly outer: Key;
  readonly inner: Key | null;
}

export interface Opened {
  readonly payload: SealedPayload;
  readonly keys: OpeningKeys;
}

/** The key as the link's fragment gives it; null for anything else. */
export async function keyOfFragment(fragment: string): Promise<Key | null> {
  const bytes = fromBase64url(fragment.replace(/^#/, ''));
  if (bytes === null || bytes.length !== KEY_OCTETS) return null;
  return crypto.subtle.importKey('raw', bytes, 'AES-GCM', false, ['decrypt']);
}

/** Whether words are asked for, by the header alone. */
export function asksWords(jwe: string): boolean {
  return headerOf(jwe) === OUTER_HEADERS.words;
}

/** Whether this is the key of the outer JWE. */
export async function fits(jwe: string, outer: Key): Promise<boolean> {
  return decrypted(jwe, outer).then(
    () => true,
    () => false,
  );
}

/** `words`: as they were typed; null where `keys` holds the inner key already, or none is asked for. */
export async function openSealed(
  jwe: string,
  keys: OpeningKeys,
  words: string | null,
): Promise<Opened | null> {
  try {
    const header = headerOf(jwe);
    const outer = await decrypted(jwe, keys.outer);
    if (header === OUTER_HEADERS.plain)
      return { payload: await payloadOf(outer), keys: { outer: keys.outer, inner: null } };
    if (header !== OUTER_HEADERS.words) return null;
    const nested = new TextDecoder('utf-8', { fatal: true }).decode(outer);
    const inner = words === null ? keys.inner : await unwrapped(nested, wordsAsKey(words));
    if (inner === null) return null;
    return { payload: await payloadOf(await decrypted(nested, inner)), keys: { outer: keys.outer, inner } };
  } catch {
    return null;
  }
}

function headerOf(jwe: string): string {
  const bytes = fromBase64url(jwe.split('.')[0] ?? '');
  return bytes === null ? '' : new TextDecoder().decode(bytes);
}

/** The five parts of a JWE (RFC 7516, 7.1), decoded but for the header. */
function partsOf(jwe: string): { header: string; wrapped: Octets; iv: Octets; sealed: Octets } {
  const parts = jwe.split('.');
  const [header = '', ...rest] = parts;
  const [wrapped, iv, text, tag] = rest.map(fromBase64url);
  if (parts.length !== 5 || !wrapped || iv?.length !== 12 || !text || tag?.length !== 16)
    throw new Error('no JWE');
  const sealed = new Uint8Array(text.length + tag.length);
  sealed.set(text);
  sealed.set(tag, text.length);
  return { header, wrapped, iv, sealed };
}

async function decrypted(jwe: string, key: Key): Promise<Octets> {
  const { header, iv, sealed } = partsOf(jwe);
  const additionalData = new TextEncoder().encode(header);
  return new Uint8Array(await crypto.subtle.decrypt({ name: 'AES-GCM', iv, additionalData }, key, sealed));
}

/** The content key of the inner JWE, by the words. */
async function unwrapped(jwe: string, words: string): Promise<Key> {
  const { wrapped } = partsOf(jwe);
  const { alg, enc, p2s, p2c } = JSON.parse(headerOf(jwe)) as Readonly<Record<string, unknown>>;
  const salt = typeof p2s === 'string' ? fromBase64url(p2s) : null;
  if (alg !== PBES2_ALG || enc !== 'A256GCM' || salt === null || salt.length < 8)
    throw new Error('no such way');
  if (typeof p2c !== 'number' || p2c < PBES2_ROUNDS || p2c > PBES2_ROUNDS_MOST)
    throw new Error('no such rounds');
  const wrapping = await wordsKey(words, salt, p2c, 'unwrapKey');
  return crypto.subtle.unwrapKey('raw', wrapped, wrapping, 'AES-KW', 'AES-GCM', false, ['decrypt']);
}

async function payloadOf(zipped: Octets): Promise<SealedPayload> {
  const text = new TextDecoder('utf-8', { fatal: true }).decode(await inflated(zipped));
  const payload = JSON.parse(text) as SealedPayload;
  if (payload.loadleaf !== 1 || typeof payload.html !== 'string') throw new Error('no leaflet');
  return payload;
}

/** At most so many octets: what was sealed by somebody else could swell without end. */
async function inflated(zipped: Octets): Promise<Octets> {
  const reader = new Blob([zipped]).stream().pipeThrough(new DecompressionStream('gzip')).getReader();
  const chunks: Uint8Array[] = [];
  let length = 0;
  for (let read = await reader.read(); !read.done; read = await reader.read()) {
    length += read.value.length;
    if (length > INFLATED_OCTETS_MOST) throw new Error('too long');
    chunks.push(read.value);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}
