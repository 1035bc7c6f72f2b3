/** The libraries the public pages are tried on: the shipped one, and the small sample with some of its texts changed. */
import { readFolder } from '../../../src/shell/io/folder.ts';
import { readLibrary } from '../../../src/content/readLibrary.ts';
import type { Library } from '../../../src/content/library.ts';
import type { SourceFile } from '../../../src/content/source.ts';
import { libraryView } from '../../../src/catalogue/libraryView.ts';
import type { LibraryView } from '../../../src/catalogue/view.ts';
import { filesWith } from '../../content/sample.ts';

/** Throws with the first Problems when there is no library. */
export function libraryOf(...folders: readonly (readonly SourceFile[])[]): Library {
  const { library, problems } = readLibrary(...folders);
  if (library === null) throw new Error(JSON.stringify(problems.slice(0, 3)));
  return library;
}

export const shippedLibrary = libraryOf(readFolder('content', (file) => !file.startsWith('consults/')));
export const shipped: LibraryView = libraryView(shippedLibrary, new Map(), new Map());

/** The sample with the texts of some files replaced. */
export function sampleView(changes: Readonly<Record<string, string>> = {}): LibraryView {
  return libraryView(libraryOf(filesWith(changes)), new Map(), new Map());
}
