interface Parts {
  readonly gone?: readonly string[];
  readonly formats?: readonly string[];
  readonly kept?: Readonly<Record<string, readonly string[]>>;
  readonly instead?: Readonly<Record<string, string>>;
}
export const FONTKIT: Parts;
export const PDFKIT: Parts;
export function withoutParts(text: string, parts: Parts): string;
