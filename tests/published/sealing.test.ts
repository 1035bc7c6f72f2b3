/**
 * What seals and opens a leaflet, against the worked examples of its standards: RFC 7516 appendix A.1 and RFC 7517
 * appendix C (both from memory; no other octets would fit), and against the validation vectors of NIST for AES-GCM [read].
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { fits, openSealed } from '../../src/client/sealed/open.ts';
import { base64url, fromBase64url } from '../../src/units/base64url.ts';
import { wordsKey } from '../../src/units/pbes2.ts';

/** RFC 7516, A.1: A256GCM over "The true sign of intelligence is not knowledge but imagination." */
const A1 = {
  contentKey: [
    177, 161, 244, 128, 84, 143, 225, 115, 63, 180, 3, 255, 107, 154, 212, 246, 138, 7, 110, 91, 112, 46, 34,
    105, 47, 130, 203, 46, 122, 234, 64, 252,
  ],
  header: 'eyJhbGciOiJSU0EtT0FFUCIsImVuYyI6IkEyNTZHQ00ifQ',
  iv: '48V1_ALb6US04U3b',
  text: '5eym8TW_c8SuK0ltJ3rpYIzOeDQz7TALvtu6UG9oMo4vpzs9tX_EFShS8iB7j6jiSdiwkIr3ajwQzaBtQD_A',
  tag: 'XFBoMYUZodetZdvTiFvSkQ',
};

/** RFC 7517, C: a content key wrapped by words, PBES2-HS256+A128KW. */
const C = {
  words: 'Thus from my lips, by yours, my sin is purged.',
  p2s: '2WCTcJZ1Rvd_CJuJripQ1w',
  p2c: 4096,
  contentKey: [
    111, 27, 25, 52, 66, 29, 20, 78, 92, 176, 56, 240, 65, 208, 82, 112, 161, 131, 36, 55, 202, 236, 185, 172,
    129, 23, 153, 194, 195, 48, 253, 182,
  ],
  wrapped: 'TrqXOwuNUfDV9VPTNbyGvEJ9JMjefAVn-TR1uIxR9p6hsRQh9Tk7BA',
};

const octets = (list: readonly number[]) => new Uint8Array(list);
const contentKey = (raw: Uint8Array<ArrayBuffer>) =>
  crypto.subtle.importKey('raw', raw, 'AES-GCM', true, ['decrypt']);

describe('RFC 7516, appendix A.1', () => {
  const jwe = [A1.header, '', A1.iv, A1.text, A1.tag].join('.');

  it('its text is authentic to the page, and no leaflet', async () => {
    const outer = await contentKey(octets(A1.contentKey));
    expect(await fits(jwe, outer)).toBe(true);
    expect(await openSealed(jwe, { outer, inner: null }, null)).toBeNull();
  });

  it.each(['header', 'iv', 'text', 'tag'] as const)('with another %s it is not', async (part) => {
    const outer = await contentKey(octets(A1.contentKey));
    const spoilt = { ...A1, [part]: `B${A1[part].slice(1)}` };
    expect(await fits([spoilt.header, '', spoilt.iv, spoilt.text, spoilt.tag].join('.'), outer)).toBe(false);
  });
});

describe('RFC 7517, appendix C', () => {
  const p2s = fromBase64url(C.p2s)!;

  it('its content key is unwrapped by the words', async () => {
    const wrapping = await wordsKey(C.words, p2s, C.p2c, 'unwrapKey');
    const wrapped = fromBase64url(C.wrapped)!;
    const key = await crypto.subtle.unwrapKey('raw', wrapped, wrapping, 'AES-KW', 'AES-GCM', true, [
      'decrypt',
    ]);
    expect([...new Uint8Array(await crypto.subtle.exportKey('raw', key))]).toEqual(C.contentKey);
  });

  it('and wrapped to the same octets', async () => {
    const wrapping = await wordsKey(C.words, p2s, C.p2c, 'wrapKey');
    const wrapped = await crypto.subtle.wrapKey(
      'raw',
      await contentKey(octets(C.contentKey)),
      wrapping,
      'AES-KW',
    );
    expect(base64url(new Uint8Array(wrapped))).toBe(C.wrapped);
  });
});

interface Validated {
  readonly source: string;
  /** All of 256-bit keys, 96-bit IV and 128-bit tag without additional data, in hexadecimal digits. */
  readonly cases: readonly Readonly<Record<'key' | 'iv' | 'text' | 'tag', string> & { fits: boolean }>[];
}
const nist = JSON.parse(readFileSync('tests/published/sealing-nist.json', 'utf8')) as Validated;

describe(`NIST, validation of AES-GCM: ${nist.source}`, () => {
  const hex = (digits: string) => new Uint8Array(Buffer.from(digits, 'hex'));

  it.each(nist.cases.map((one, at) => [at, one.fits, one] as const))(
    'case %i is authentic: %s',
    async (_, isAuthentic, { key, iv, text, tag }) => {
      const jwe = ['', '', ...[iv, text, tag].map((one) => base64url(hex(one)))].join('.');
      expect(await fits(jwe, await contentKey(hex(key)))).toBe(isAuthentic);
    },
  );

  it('some are and some are not', () => {
    expect(nist.cases.filter((one) => one.fits)).toHaveLength(42);
    expect(nist.cases).toHaveLength(75);
  });
});
