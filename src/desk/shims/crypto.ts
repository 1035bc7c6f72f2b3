/** What `node:crypto` does for the rooms, in a browser: SHA-256 alone, and at once. */
import { sha256 } from '@noble/hashes/sha2';
import { bytesToHex } from '@noble/hashes/utils';
import { base64 } from '../../units/base64.ts';

interface Hash {
  update(part: string | Uint8Array): Hash;
  digest(as: 'hex' | 'base64'): string;
}

/** Throws for any other algorithm. */
export function createHash(name: string): Hash {
  if (name !== 'sha256') throw new Error(`${name}: only sha256 is there`);
  const state = sha256.create();
  const hash: Hash = {
    update: (part) => {
      state.update(typeof part === 'string' ? new TextEncoder().encode(part) : part);
      return hash;
    },
    digest: (as) => (as === 'hex' ? bytesToHex : base64)(state.digest()),
  };
  return hash;
}
