/** A PDF from its first byte to its last: opened with what PDF/UA-1 asks of a file, closed with its bookmarks. */
import type { Fonts } from './fonts.ts';
import { measurerOf } from './measurer.ts';
import { ended, openDocument } from './pdfkit/document.ts';
import type { Pen } from './pen.ts';
import type { Look } from './sheet.ts';
import { walkTags, type Tag } from './tag.ts';

/** What a file says of itself. */
export interface About {
  readonly title: string;
  readonly author: string;
  /** Language tag (RFC 3066), for example `en`. */
  readonly language: string;
  /** Stands for the time of making: the same programme gives the same bytes on any day. */
  readonly on: string;
  /** What tells this make from another of the same title; left out where it has none. */
  readonly mark?: string | undefined;
}

/** An open document without a page, and the pen that draws in it. */
export function openPen(about: About, fonts: Fonts, look: Look): Pen {
  const opened = openDocument({
    size: [look.sheet.widthPt, look.sheet.heightPt],
    margin: 0,
    font: null,
    // Words are kept across documents by the faces themselves.
    fontLayoutCache: false,
    tagged: true,
    subset: 'PDF/UA',
    pdfVersion: '1.7',
    lang: about.language,
    displayTitle: true,
    bufferPages: true,
    autoFirstPage: false,
    info: {
      Title: about.title,
      Author: about.author,
      Creator: 'Loadleaf',
      ...(about.mark === undefined ? {} : { Keywords: `mark ${about.mark}` }),
      CreationDate: new Date(`${about.on}T00:00:00Z`),
    },
  });
  for (const { name, font } of [fonts.regular, fonts.bold]) opened.doc.registerFont(name, font, name);
  return { ...opened, fonts, measurer: measurerOf(fonts), look, forms: new Map() };
}

/** Deeper headings, such as "How", tell nothing in a list of bookmarks. */
const BOOKMARKED = 3;

/** The finished file. Its headings become bookmarks in reading order, those of level 3 under the last of level 2. */
export function bytesOf({ doc, bytes, look }: Pen, root: Tag): Promise<Uint8Array> {
  let above = doc.outline;
  for (const { bookmark } of walkTags(root)) {
    if (!bookmark?.at || bookmark.level > BOOKMARKED) continue;
    const { title, level, at } = bookmark;
    const parent = level <= 2 ? doc.outline : above;
    // pdfkit counts `left` from the right edge.
    const place = { pageNumber: at.page, top: at.yPt, left: look.sheet.widthPt, zoom: 0, fit: false };
    const item = parent.addItem(title, place);
    if (level <= 2) above = item;
  }
  return ended({ doc, bytes });
}
