/** The clinic secret as the text of a file. */
import { base64url, fromBase64url } from '../../units/base64url.ts';

/** Chance in it, octets. */
export const SECRET_OCTETS = 32;

const FORM = /^loadleaf-secret-1 ([A-Za-z0-9_-]{43})\r?\n?$/;

export function secretText(secret: Uint8Array): string {
  return `loadleaf-secret-1 ${base64url(secret)}\n`;
}

/** Null for a text that is no secret of ours. */
export function secretOf(text: string): Uint8Array<ArrayBuffer> | null {
  const [, encoded = ''] = FORM.exec(text) ?? [];
  const secret = fromBase64url(encoded);
  return secret?.length === SECRET_OCTETS ? secret : null;
}
