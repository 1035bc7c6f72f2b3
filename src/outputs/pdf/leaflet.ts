/** The patient's leaflet on paper: what the finished programme says, set in pages to hold in the hand. */
import { drawScene } from '../../drawing/scene.ts';
import { labelsOf } from '../../messages/en/labels.ts';
import type { Programme } from '../../programme/programme.ts';
import { bytesOf, openPen } from './document.ts';
import type { Fonts } from './fonts.ts';
import { bodyBottomPt, drawRunningLines } from './runningLines.ts';
import { drawLater } from './later.ts';
import { letterRefusals } from './letters.ts';
import { firstPage } from './pages.ts';
import { lookOf, type PaperTokens } from './sheet.ts';
import { drawStart } from './start.ts';
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
  const look = lookOf(programme.paper, programme.bodyTypePt, assets.tokens);
  const labels = labelsOf(language).leaflet;
  const pen = openPen({ title, author: clinic.name, language, on: startOn, mark }, assets.fonts, look);
  const root = looseTag('Document');
  const pages = firstPage(pen, bodyBottomPt(pen, programme));
  const pictured = exercises.map((exercise) => ({
    exercise,
    drawings: exercise.figures ? drawScene(exercise.figures.scene) : [],
  }));
  drawStart(pages, root, { programme, exercises: pictured, logo: assets.logo, labels });
  drawLater(pages, root, { programme, exercises: pictured, labels });
  drawRunningLines(pen, programme);
  return bytesOf(pen, root);
}
