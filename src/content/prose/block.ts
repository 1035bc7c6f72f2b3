/** The small tree a Markdown body becomes: paragraphs and two-level lists of marked text. Everything else is a Problem. */

export type Inline =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'strong' | 'emphasis'; readonly children: readonly Inline[] }
  /** `href`: a web page, mail or telephone, or a file by its way from the top of the content folder. */
  | { readonly kind: 'link'; readonly href: string; readonly children: readonly Inline[] };

export interface ListEntry {
  readonly text: readonly Inline[];
  /** The second level; never deeper. */
  readonly entries: readonly { readonly text: readonly Inline[] }[];
  /** Whether the second level is numbered. */
  readonly ordered: boolean;
}

export type Block =
  | { readonly kind: 'paragraph'; readonly text: readonly Inline[] }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly entries: readonly ListEntry[] };

/** What stands under one of the fixed headings. */
export interface ProseSection {
  readonly heading: string;
  readonly blocks: readonly Block[];
}
