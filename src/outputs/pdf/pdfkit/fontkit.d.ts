/** What this room uses of fontkit 2.0.4, which ships no types. */
declare module 'fontkit' {
  export interface GlyphRun {
    readonly advanceWidth: number;
    readonly glyphs: readonly Glyph[];
    readonly positions: readonly GlyphPosition[];
  }

  /** How far a glyph moves on, and how far it is moved aside itself. */
  export interface GlyphPosition {
    readonly xAdvance: number;
    readonly xOffset: number;
    readonly yOffset: number;
    readonly yAdvance: number;
  }

  export interface Glyph {
    readonly id: number;
    readonly advanceWidth: number;
    readonly codePoints: readonly number[];
  }

  export interface Font {
    readonly postscriptName: string;
    readonly unitsPerEm: number;
    readonly xHeight: number;
    readonly capHeight: number;
    readonly availableFeatures: readonly string[];
    layout(text: string, features?: readonly string[]): GlyphRun;
    /** Code points it has. */
    readonly characterSet: readonly number[];
    hasGlyphForCodePoint(codePoint: number): boolean;
    /** Kept by its number; `letters`: the code points it stands for here. */
    getGlyph(id: number, letters?: readonly number[]): Glyph;
  }

  export function create(bytes: Uint8Array): Font;
}
