/** Base64 for mail. */

// RFC 2045, 6.8: lines of 76 characters at most; 57 octets give that many.
const OCTETS_PER_LINE = 57;

/** Lines of 76 characters, CR and LF between them. */
export function base64Lines(bytes: Uint8Array): string {
  const lines: string[] = [];
  for (let from = 0; from < bytes.length; from += OCTETS_PER_LINE)
    lines.push(btoa(String.fromCharCode(...bytes.subarray(from, from + OCTETS_PER_LINE))));
  return lines.join('\r\n');
}
