/** What a line is made from before it is one. */
import type { TextStyle } from './sheet.ts';
import type { Tag } from './tag.ts';

/** A stretch of text in one style, perhaps a link, perhaps an element of its own within its paragraph. */
export interface Run {
  readonly text: string;
  readonly style: TextStyle;
  readonly href?: string;
  readonly tag?: Tag;
}
