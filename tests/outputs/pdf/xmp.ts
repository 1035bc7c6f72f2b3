/** An XMP packet as XML: well formed or not, and the properties the rules ask for. */

export interface Xmp {
  /** What is wrong with it as XML; empty when nothing is. */
  readonly faults: readonly string[];
  /** Text of the first element of a name, entities undone; null without one. */
  text(name: string): string | null;
  namespaceOf(prefix: string): string | null;
}

const ENTITIES: Readonly<Record<string, string>> = { lt: '<', gt: '>', amp: '&', quot: '"', apos: "'" };

/** Reads a packet: XML 1.0 tags, attributes, text and the five entities; no comments, no document type. */
export function readXmp(data: string): Xmp {
  const xml = Buffer.from(data, 'latin1').toString('utf8');
  return {
    faults: xmlFaults(xml),
    text: (name) => {
      const found = new RegExp(`<${name}(?:\\s[^>]*)?>([^]*?)</${name}>`).exec(xml)?.[1];
      return found === undefined ? null : decoded(found.replace(/<[^>]*>/g, '').trim());
    },
    namespaceOf: (prefix) => new RegExp(`xmlns:${prefix}="([^"]*)"`).exec(xml)?.[1] ?? null,
  };
}

function xmlFaults(xml: string): readonly string[] {
  const faults: string[] = [];
  const open: string[] = [];
  const tokens = /<\?[^]*?\?>|<(\/?)([A-Za-z_][\w.:-]*)((?:\s+[\w.:-]+="[^"<]*")*)\s*(\/?)>|[^<]+|</g;
  for (const [token, closing, name = '', , empty] of xml.matchAll(tokens)) {
    if (token === '<') faults.push('a < that begins no tag');
    else if (token.startsWith('<?')) continue;
    else if (!token.startsWith('<')) faults.push(...textFaults(token));
    else if (closing) {
      if (open.pop() !== name) faults.push(`</${name}> closes another element`);
    } else if (!empty) open.push(name);
  }
  return [...faults, ...open.map((name) => `<${name}> has no end`)];
}

function textFaults(text: string): readonly string[] {
  const bare = /&(?!(?:lt|gt|amp|quot|apos|#\d+|#x[0-9a-fA-F]+);)/.test(text);
  const control = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/.test(text);
  return [...(bare ? ['a bare &'] : []), ...(control ? ['a letter XML cannot hold'] : [])];
}

function decoded(text: string): string {
  return text.replace(/&(\w+);/g, (whole, name: string) => ENTITIES[name] ?? whole);
}
