/** Bytes as text, where a file stands inside another. */

/** RFC 4648, section 4. The same in Node and in a browser, neither of which has the other's own way. */
export function base64(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary);
}

/** Throws where the text is none. */
export function fromBase64(text: string): Uint8Array {
  return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
}
