/** The public part of a site: pictures, desk and pages of the library. */
import { libraryView } from '../../catalogue/libraryView.ts';
import type { LibraryView } from '../../catalogue/view.ts';
import { LOGO_FILE } from '../../outputs/html/public/frame.ts';
import { deskFiles } from './deskFiles.ts';
import { libraryFiles } from './make.ts';
import type { Writing } from './writing.ts';

/**
 * Writes the library where it does not stand already; returns what its pages show where they are left to go with the
 * first leaflet, else null. For somebody who waits at a screen the pages come first.
 */
export async function writeLibrary(writing: Writing): Promise<LibraryView | null> {
  const { shop, put, work } = writing;
  const { ask, reuse } = work;
  if (ask.aliases.length > 0 || reuse.library !== null) return null;
  const view = await besidePages(writing);
  if (ask.haste === undefined) return view;
  const pages = await libraryFiles(view, shop.pages);
  if (pages.filter(put).length > 0) ask.haste.libraryWritten();
  return null;
}

/** Writes the library's pictures and the desk, and gives what its pages show. */
async function besidePages({ shop, workspace, put }: Writing): Promise<LibraryView> {
  const { workshop, pages, paper, photos } = shop;
  const { logo } = pages;
  photos.files.forEach(put);
  (await deskFiles(workshop.library, workspace.layers, paper.logo, pages, paper)).forEach(put);
  if (logo !== null) put({ path: `public/${LOGO_FILE}`, bytes: logo.png });
  return libraryView(workshop.library, photos.photos, workshop.models);
}
