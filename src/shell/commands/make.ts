/** From consults to the files of their leaflets, in memory; nothing here touches the disk. */
import type { PageAssets } from '../../outputs/html/assets.ts';
import type { Link } from '../../outputs/mail/messageText.ts';
import type { PaperAssets } from '../../outputs/pdf/leaflet.ts';
import type { LibraryView } from '../../catalogue/view.ts';
import type { Programme } from '../../programme/programme.ts';
import { TEMPLATES } from '../io/assets.ts';
import type { OutFile } from '../io/site.ts';

/** What one person's papers depend on besides the programme. */
export interface Beside {
  /** The leaflet among the pages, which come with those of the others; null where none was made. */
  readonly page: OutFile['bytes'] | null;
  /** Null where nothing is sealed. */
  readonly link: Link | null;
  /** Whether the sheet for the fridge is asked for, whatever the clinic's setting. */
  readonly fridge: boolean;
}

/** PDF, JSON, note, letter and post of one programme. */
export async function papersOf(
  programme: Programme,
  paper: PaperAssets,
  { page, link, fridge: isAsked }: Beside,
): Promise<OutFile[]> {
  const [{ leafletPdf }, { forgetWords }, { recordJson }, { noteText }, { letterText }, { postFiles }] =
    await Promise.all([
      import('../../outputs/pdf/leaflet.ts'),
      import('../../outputs/pdf/fonts.ts'),
      import('../../outputs/text/recordJson.ts'),
      import('../../outputs/text/noteText.ts'),
      import('../../outputs/text/letterText.ts'),
      import('../../post/postFiles.ts'),
    ]);
  const folder = `private/${programme.alias}`;
  const pdf = await leafletPdf(programme, paper);
  const fridge = programme.post.fridge || isAsked ? await fridgeOf(programme, paper) : null;
  // A server lives on; what was read of this person must not.
  forgetWords(paper.fonts);
  const { files, made } = postFiles(programme, pdf, page, link);
  const letter = programme.letter;
  const told = { ...made, pdf: true, fridge: fridge !== null, letter: letter !== null };
  return [
    { path: `${folder}/leaflet.pdf`, bytes: pdf },
    ...(fridge === null ? [] : [{ path: `${folder}/fridge.pdf`, bytes: fridge }]),
    { path: `${folder}/record.json`, bytes: recordJson(programme) },
    { path: `${folder}/note.txt`, bytes: noteText(programme, told) },
    ...(letter === null ? [] : [{ path: `${folder}/letter.txt`, bytes: letterText(letter, programme) }]),
    ...files.map(({ name, bytes }) => ({ path: `${folder}/${name}`, bytes })),
  ];
}

async function fridgeOf(programme: Programme, paper: PaperAssets): Promise<Uint8Array | null> {
  const { fridgePdf } = await import('../../outputs/pdf/fridge.ts');
  return fridgePdf(programme, paper);
}

/** Pages of the programmes, and of the library unless it is null, by Eleventy. */
export async function sitePages(
  programmes: readonly Programme[],
  view: LibraryView | null,
  assets: PageAssets,
): Promise<OutFile[]> {
  const { renderPages } = await import('../../outputs/html/site.ts');
  return asFiles(await renderPages(programmes, view, assets, TEMPLATES));
}

/** Pages of these programmes alone, without Eleventy: it takes half a second to start, and they are the same bytes. */
export async function ownPages(programmes: readonly Programme[], assets: PageAssets): Promise<OutFile[]> {
  const { programmePages } = await import('../../outputs/html/site.ts');
  return asFiles(programmes.flatMap((one) => programmePages(one, assets)));
}

/** The library's pages and what they fetch, without Eleventy. */
export async function libraryFiles(view: LibraryView, assets: PageAssets): Promise<OutFile[]> {
  // A clinic's own layout is Eleventy's to fill.
  if (view.dress.layout !== null) return sitePages([], view, assets);
  const { libraryPages } = await import('../../outputs/html/site.ts');
  return asFiles(libraryPages(view, assets));
}

function asFiles(pages: readonly { readonly path: string; readonly content: string }[]): OutFile[] {
  return pages.map(({ path, content }) => ({ path, bytes: content }));
}
