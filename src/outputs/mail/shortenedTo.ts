/** Text that fits where only so much may stand. */

/** As many whole words as fit into the octets of UTF-8, or as many characters of the first. */
export function shortenedTo(octets: number, text: string): string {
  if (octetsOf(text) <= octets) return text;
  const kept = characters(octets, text);
  const end = kept.lastIndexOf(' ');
  return end > 0 ? kept.slice(0, end) : kept;
}

function characters(octets: number, text: string): string {
  let kept = '';
  for (const character of text) {
    if (octetsOf(kept + character) > octets) break;
    kept += character;
  }
  return kept;
}

function octetsOf(text: string): number {
  return new TextEncoder().encode(text).length;
}
