/** The leaflet as another program sees it: pdf.js reads its tree and texts and draws its pages. */
import { getDocument, type PDFDocumentProxy, type PDFPageProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** Opens a file; close it with `destroy`. */
export function openPdf(bytes: Uint8Array): Promise<PDFDocumentProxy> {
  // pdf.js keeps what it is given.
  return getDocument({ data: bytes.slice(), verbosity: 0, useSystemFonts: false }).promise;
}

/** A node of the tree pdf.js gives, its text joined from the marked content it names. */
export interface ViewedElement {
  readonly role: string;
  readonly kids: readonly ViewedElement[];
  readonly text: string;
}

interface TreeNode {
  role?: string;
  type?: string;
  id?: string;
  children?: TreeNode[];
}

interface MarkedText {
  type?: string;
  id?: string;
  str?: string;
  hasEOL?: boolean;
}

/** The tree of one page. */
export async function viewedTree(page: PDFPageProxy): Promise<ViewedElement> {
  const content = await page.getTextContent({ includeMarkedContent: true, disableNormalization: true });
  const texts = new Map<string, string>();
  const open: (string | undefined)[] = [];
  for (const item of content.items as MarkedText[]) {
    if (item.type?.startsWith('beginMarkedContent')) open.push(item.id ?? open.at(-1));
    else if (item.type === 'endMarkedContent') open.pop();
    else {
      const id = open.at(-1);
      // pdf.js gives the space at the end of a line as the end of the line.
      if (id !== undefined)
        texts.set(id, (texts.get(id) ?? '') + (item.str ?? '') + (item.hasEOL ? ' ' : ''));
    }
  }
  const read = (node: TreeNode): ViewedElement => {
    const kids = (node.children ?? []).map(read);
    const text =
      node.type === 'content' ? (texts.get(node.id ?? '') ?? '') : kids.map((kid) => kid.text).join('');
    return {
      role: node.role ?? '',
      kids: kids.filter((kid) => kid.role !== ''),
      text: text.replace(/ +/g, ' '),
    };
  };
  return read(((await page.getStructTree()) ?? {}) as TreeNode);
}

/** Elements of a role under an element, in reading order. */
export function viewed(element: ViewedElement, role: string): readonly ViewedElement[] {
  return [...(element.role === role ? [element] : []), ...element.kids.flatMap((kid) => viewed(kid, role))];
}

/** Where a text stands, points from the upper left corner. */
export interface TextBox {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The boxes of all texts of a page, between the heads of its capitals and its baseline. */
export async function textBoxes(page: PDFPageProxy): Promise<readonly TextBox[]> {
  const { height } = page.getViewport({ scale: 1 });
  const content = await page.getTextContent({ disableNormalization: true });
  return content.items.flatMap((item) => {
    if (!('str' in item) || item.str.trim() === '') return [];
    const [, , , sizePt = 0, x = 0, y = 0] = item.transform as number[];
    return [
      { text: item.str, left: x, right: x + item.width, top: height - y - sizePt * 0.68, bottom: height - y },
    ];
  });
}

/** A page as pixels: brightness 0 to 255 by row. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly scale: number;
  brightness(x: number, y: number): number;
}

interface CanvasFactory {
  create(width: number, height: number): { context: Parameters<PDFPageProxy['render']>[0]['canvasContext'] };
}

/** Draws a page, `scale` pixels a point. */
export async function pictureOf(pdf: PDFDocumentProxy, page: PDFPageProxy, scale: number): Promise<Picture> {
  const viewport = page.getViewport({ scale });
  const [width, height] = [Math.ceil(viewport.width), Math.ceil(viewport.height)];
  const { context } = (pdf.canvasFactory as CanvasFactory).create(width, height);
  await page.render({ canvasContext: context, viewport }).promise;
  const { data } = context.getImageData(0, 0, width, height);
  const brightness = (x: number, y: number) => {
    const at = 4 * (y * width + x);
    return 0.299 * (data[at] ?? 255) + 0.587 * (data[at + 1] ?? 255) + 0.114 * (data[at + 2] ?? 255);
  };
  return { width, height, scale, brightness };
}

/** Difference between the darkest and the brightest pixel in a box: 0 on a blank. */
export function inkIn(picture: Picture, { left, top, right, bottom }: TextBox): number {
  const [x1, x2] = [left, right].map((x) => Math.round(x * picture.scale)) as [number, number];
  const [y1, y2] = [top, bottom].map((y) => Math.round(y * picture.scale)) as [number, number];
  let [darkest, brightest] = [255, 0];
  for (let y = Math.max(0, y1); y <= Math.min(picture.height - 1, y2); y++)
    for (let x = Math.max(0, x1); x <= Math.min(picture.width - 1, x2); x++) {
      const value = picture.brightness(x, y);
      darkest = Math.min(darkest, value);
      brightest = Math.max(brightest, value);
    }
  return Math.max(0, brightest - darkest);
}
