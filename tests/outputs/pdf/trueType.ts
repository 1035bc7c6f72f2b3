/** As much of an embedded TrueType program as the font rules need. ISO/IEC 14496-22, 5. */

export interface TrueType {
  readonly glyphs: number;
  /** Advance widths by glyph, thousandths of an em. */
  widthOf(glyph: number): number;
}

/** Reads glyph count and widths; null when the bytes are no TrueType program. */
export function readTrueType(data: string): TrueType | null {
  const bytes = Buffer.from(data, 'latin1');
  if (bytes.length < 12 || !['\u0000\u0001\u0000\u0000', 'true'].includes(data.slice(0, 4))) return null;
  const tables = new Map<string, number>();
  for (let at = 0; at < bytes.readUInt16BE(4); at++)
    tables.set(bytes.toString('latin1', 12 + 16 * at, 16 + 16 * at), bytes.readUInt32BE(20 + 16 * at));
  const [head, maxp, hhea, hmtx] = ['head', 'maxp', 'hhea', 'hmtx'].map((name) => tables.get(name));
  if (
    head === undefined ||
    maxp === undefined ||
    hhea === undefined ||
    hmtx === undefined ||
    !tables.has('glyf')
  )
    return null;
  const unitsPerEm = bytes.readUInt16BE(head + 18);
  const metrics = bytes.readUInt16BE(hhea + 34);
  return {
    glyphs: bytes.readUInt16BE(maxp + 4),
    widthOf: (glyph) => (bytes.readUInt16BE(hmtx + 4 * Math.min(glyph, metrics - 1)) * 1000) / unitsPerEm,
  };
}
