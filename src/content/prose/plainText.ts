/** What a reader reads of a body, without its marks, and where in the body it stands. */
import type { Path } from '../path.ts';
import type { Block, Inline, ProseSection } from './block.ts';

export interface ProseText {
  /** From the body down: section, `blocks`, block, then for a list `entries` and entry, twice for the second level. */
  readonly path: Path;
  readonly text: string;
}

/** Every paragraph and list entry of a body, in order; headings are left out. */
export function proseTexts(sections: readonly ProseSection[]): readonly ProseText[] {
  return sections.flatMap(({ blocks }, section) =>
    blocks.flatMap((block, index) => textsOf(block, [section, 'blocks', index])),
  );
}

/** Marked text without its marks. */
export function plainText(inlines: readonly Inline[]): string {
  return inlines
    .map((inline) => (inline.kind === 'text' ? inline.text : plainText(inline.children)))
    .join('');
}

function textsOf(block: Block, path: Path): ProseText[] {
  if (block.kind === 'paragraph') return [{ path, text: plainText(block.text) }];
  return block.entries.flatMap(({ text, entries }, index) => {
    const own = [...path, 'entries', index];
    const below = entries.map((entry, second) => ({
      path: [...own, 'entries', second],
      text: plainText(entry.text),
    }));
    return [{ path: own, text: plainText(text) }, ...below];
  });
}
