/** What this room uses of pdfkit 0.20.2, which ships no types. Names with an underscore are its own, for this folder alone. */
declare module 'pdfkit' {
  import type { Font } from 'fontkit';

  export interface StructElement {
    add(child: StructElement | AnnotationReference | (() => void)): this;
    end(): void;
    readonly dictionary: Reference;
  }

  export interface Reference {
    readonly id: number;
    readonly data: Record<string, unknown>;
    end(bytes?: Uint8Array): void;
    /** As another object names it, such as `12 0 R`. */
    toString(): string;
  }

  export interface AnnotationReference {
    readonly annotationRef: Reference;
  }

  export interface Page {
    readonly width: number;
    readonly height: number;
    readonly dictionary: Reference;
    readonly fonts: Record<string, Reference>;
    readonly xobjects: Record<string, Reference>;
    readonly content: Stream;
  }

  export interface Stream extends Reference {
    buffer: Uint8Array[];
    compress: boolean;
    finalize(): void;
  }

  export interface OutlineItem {
    addItem(
      title: string,
      place: { pageNumber: number; top: number; left: number; zoom: number; fit: boolean },
    ): OutlineItem;
  }

  export interface EmbeddedFont {
    /** Resource name, such as `F1`. */
    readonly id: string;
    ref(): Reference;
    /** Gives the code of a glyph in the embedded subset. */
    readonly subset: { includeGlyph(glyphId: number): number };
    /** Thousandths of an em by code. */
    readonly widths: (number | undefined)[];
    /** Code points by code; code 0 is `.notdef`. */
    readonly unicode: (readonly number[] | undefined)[];
  }

  export interface DocumentOptions {
    readonly size: readonly [number, number];
    readonly margin: number;
    readonly font: null;
    readonly fontLayoutCache: boolean;
    readonly tagged: boolean;
    readonly subset: 'PDF/UA';
    readonly pdfVersion: '1.7';
    readonly lang: string;
    readonly displayTitle: boolean;
    readonly bufferPages: boolean;
    readonly autoFirstPage: boolean;
    readonly info: Readonly<Record<string, string | Date>>;
  }

  export default class PDFDocument {
    constructor(options: DocumentOptions);

    readonly version: number;

    page: Page;
    info: Record<string, string | Date>;
    readonly outline: OutlineItem;
    readonly _fontFamilies: Readonly<Record<string, EmbeddedFont>>;
    endMetadata(): void;
    getStructParentTree(): { limits: boolean };

    registerFont(name: string, font: Font, family: string): this;
    font(name: string): this;
    readonly _font: EmbeddedFont;
    image(bytes: Uint8Array, x: number, y: number, options: { fit: [number, number]; align: 'right' }): this;
    link(x: number, y: number, width: number, height: number, url: string, options: LinkOptions): this;

    addPage(): this;
    switchToPage(at: number): this;
    bufferedPageRange(): { start: number; count: number };
    addContent(operators: string): this;
    ref(data?: Record<string, unknown>): Stream;

    struct(type: string, options?: StructOptions): StructElement;
    addStructure(element: StructElement): this;
    markContent(tag: string, options?: { type?: string; attached?: string[]; actual?: string }): this;
    endMarkedContent(): this;

    end(): void;
    flushPages(): void;
    ref(data: Record<string, unknown>): Reference;
    _write(written: string | Uint8Array): void;
    /** Called when an object is written whole. */
    _refEnd(ref: Reference): void;
    /** Called once, when all objects are. */
    _finalize(): void;
    /** Of a stream of Node. */
    once(event: 'close', listener: () => void): this;
    destroy(): this;
    readonly _root: Reference;
    readonly _info: Reference;
    readonly _id: Uint8Array;
  }

  interface LinkOptions {
    structParent: StructElement;
    // pdfkit writes primitive strings as names; only boxed ones become text.
    Contents: string;
  }

  export interface StructOptions {
    alt?: string;
    actual?: string;
    /** Language tag of what it holds. */
    lang?: string;
    /** Left, top, right, bottom in points from the upper left corner. */
    bbox?: readonly [number, number, number, number];
    scope?: 'Column' | 'Row';
  }
}
