/** The patient's leaflet on paper: what the finished programme says, set in pages to hold in the hand. */
import { drawScene } from '../../drawing/scene.ts';
import { labelsOf } from '../../messages/en/labels.ts';
import type { Programme } from '../../programme/programme.ts';
import { bytesOf, openPen } from './document.ts';
import type { Fonts } from './fonts.ts';
import { bodyBottomPt, drawFurnitures } from './furniture.ts';
import { drawLater } from './later.ts';
import { letterRefusals } from './letters.ts';
import { firstPage, flow, roomPt, turnPage, type Pages } from './pages.ts';
import { drawRows, fitRows, rowsOf } from './rows.ts';
import { lookOf, type PaperTokens } from './sheet.ts';
import { drawStart, type Overleaf } from './start.ts';
import { looseTag } from './tag.ts';

/** What the shell reads from disk for this room. */
export interface PaperAssets {
  readonly fonts: Fonts;
  /** `shared/tokens.json`. */
  readonly tokens: PaperTokens;
  /** The clinic's logo: a JPEG, or a PNG without transparency. */
  readonly logo: Uint8Array | null;
}

/**
 * The leaflet as the bytes of a tagged PDF (PDF/UA-1), the same for the same programme on any day and machine. Page
 * one is enough to start. Throws when a text has a letter the typeface lacks: ask `letterRefusals` first.
 */
export async function leafletPdf(programme: Programme, assets: PaperAssets): Promise<Uint8Array> {
  const [missing] = letterRefusals(programme, assets.fonts);
  if (missing) throw new Error(`${missing.code}: ${missing.found}`);
  const { title, clinic, language, startOn, exercises, mark } = programme;
  const look = lookOf(programme.paper, assets.tokens);
  const labels = labelsOf(language).leaflet;
  const pen = openPen({ title, author: clinic.name, language, on: startOn, mark }, assets.fonts, look);
  const root = looseTag('Document');
  const pages = firstPage(pen, bodyBottomPt(pen, programme));
  const pictured = exercises.map((exercise) => ({
    exercise,
    drawings: exercise.figures ? drawScene(exercise.figures.scene) : [],
  }));
  const overleaf = drawStart(pages, root, { programme, exercises: pictured, logo: assets.logo, labels });
  drawOverleaf(pages, overleaf);
  drawLater(pages, root, { programme, exercises: pictured, labels, detail: overleaf.detail });
  drawFurnitures(pen, programme);
  return bytesOf(pen, root);
}

/** Exercises and safety texts that page one could not hold come before everything else; then a page is open. */
function drawOverleaf(pages: Pages, { cells, blocks, detail }: Overleaf): void {
  const { mediumPt, largePt } = pages.pen.look.space;
  let rows = rowsOf(cells, detail.abreast);
  turnPage(pages);
  while (rows.length > 0) {
    const { drawingPt, count } = fitRows(rows, roomPt(pages), mediumPt);
    if (count === 0) throw new Error('an exercise is higher than a page');
    drawRows(pages, rows.slice(0, count), detail.abreast, drawingPt, mediumPt);
    rows = rows.slice(count);
    if (rows.length > 0) turnPage(pages);
  }
  flow(pages, blocks, 3, largePt);
}
