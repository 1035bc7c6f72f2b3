/** From consults to the files of their leaflets, in memory; nothing here touches the disk. */
import type { PageAssets } from '../../outputs/html/assets.ts';
import type { Link } from '../../outputs/mail/messageText.ts';
import type { PaperAssets } from '../../outputs/pdf/leaflet.ts';
import type { LibraryView } from '../../catalogue/view.ts';
import type { Programme } from '../../programme/programme.ts';
import { madeFiles, makingOf, type MadeFile } from '../../set/making.ts';
import { OUTPUTS } from '../../set/outputs.ts';
import type { Making, Rooms } from '../../set/output.ts';
import { TEMPLATES } from '../io/assets.ts';
import type { OutFile } from '../io/site.ts';

/** What one person's set depends on besides the programme. */
export interface Beside {
  readonly pages: PageAssets;
  readonly paper: PaperAssets;
  /** Whether the sheet for the fridge is asked for, whatever the clinic's setting. */
  readonly fridge: boolean;
  /** Null where nothing is sealed. */
  readonly link: Link | null;
}

async function rooms(): Promise<Rooms> {
  const [html, pdf, text, calendar, mail] = await Promise.all([
    import('../../outputs/html/index.ts'),
    import('../../outputs/pdf/index.ts'),
    import('../../outputs/text/index.ts'),
    import('../../outputs/calendar/index.ts'),
    import('../../outputs/mail/index.ts'),
  ]);
  return { html, pdf, text, calendar, mail };
}

/** Every file of one programme's set. `pages`: those that came with the pages of others. */
export async function setFiles(
  programme: Programme,
  beside: Beside,
  pages: readonly MadeFile[],
): Promise<MadeFile[]> {
  const ready = new Map(pages.map(({ name, bytes }) => [name, bytes]));
  const files = await madeFiles(OUTPUTS, await making(programme, beside, ready));
  const { forgetWords } = await import('../../outputs/pdf/fonts.ts');
  // A server lives on; what was read of this person must not.
  forgetWords(beside.paper.fonts);
  return files;
}

/** The pages of one programme alone, without Eleventy: it takes half a second to start, and they are the same bytes. */
export async function ownPages(programme: Programme, beside: Beside): Promise<OutFile[]> {
  const pages = OUTPUTS.filter(({ room }) => room === 'html');
  const files = await madeFiles(pages, await making(programme, beside));
  return files.map(({ name, bytes }) => ({ path: `private/${programme.alias}/${name}`, bytes }));
}

async function making(
  programme: Programme,
  { pages, paper, fridge, link }: Beside,
  ready?: ReadonlyMap<string, MadeFile['bytes']>,
): Promise<Making> {
  const means = {
    rooms: await rooms(),
    assets: { pages, paper },
    link: () => Promise.resolve(link),
    isFridgeAsked: fridge,
    isSealed: link !== null,
  };
  return makingOf(programme, means, ready);
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
