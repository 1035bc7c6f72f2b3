/** The files of one make, each the bytes that `build` writes. */
import * as html from '../../outputs/html/index.ts';
import type { PageAssets } from '../../outputs/html/assets.ts';
import type { PaperAssets } from '../../outputs/pdf/leaflet.ts';
import * as text from '../../outputs/text/index.ts';
import type { Sealed, Sealing } from '../../post/sealedFiles.ts';
import type { Programme } from '../../programme/programme.ts';
import { makingOf } from '../../set/making.ts';
import type { Bytes, Means } from '../../set/output.ts';
import type { MadeName, SealedLink } from '../talk.ts';
import { named } from './named.ts';
import type { PaperScript } from './paper.ts';
import type { PostScript } from './post.ts';

/** What came when it was asked for; `sealing` while a secret is chosen. */
export interface Makers {
  /** Null until a page is to be made. */
  readonly assets: PageAssets | null;
  readonly paper: (Pick<PaperScript, 'pdf'> & { readonly assets: PaperAssets }) | null;
  readonly post: PostScript | null;
  readonly sealing: Sealing | null;
}

export interface MadeOutput {
  /** Null for what there is not, as a letter before the end. */
  readonly bytes: Bytes | null;
  readonly link?: SealedLink;
}

/** `firstName`: stands on what is given to the patient, and there alone. */
export async function outputOf(
  name: MadeName,
  programme: Programme,
  firstName: string,
  makers: Makers,
): Promise<MadeOutput> {
  if (name === 'sealed') return archiveOf(programme, makers);
  const making = makingOf(named(programme, name, firstName), meansOf(programme, makers));
  return { bytes: await making.part(name) };
}

/** The link is that of the programme, whoever is named. */
function meansOf(programme: Programme, makers: Makers): Means {
  const { assets, paper, post, sealing } = makers;
  return {
    rooms: {
      html,
      text,
      get pdf() {
        return there(paper).pdf;
      },
      get calendar() {
        return there(post).calendar;
      },
      get mail() {
        return there(post).mail;
      },
    },
    assets: {
      get pages() {
        return there(assets);
      },
      get paper() {
        return there(paper).assets;
      },
    },
    link: async () => (sealing === null ? null : (await sealed(programme, makers)).link),
    isFridgeAsked: false,
    isSealed: sealing !== null,
  };
}

/** As it is unpacked where the site lies. */
async function archiveOf(programme: Programme, makers: Makers): Promise<MadeOutput> {
  const { files, link, words } = await sealed(programme, makers);
  const below = files.map(({ path, bytes }) => ({ path: path.replace(/^public\//, ''), bytes }));
  return { bytes: there(makers.post).archived(below), link: { address: link.address, words } };
}

function sealed(programme: Programme, { assets, post, sealing }: Makers): Promise<Sealed> {
  return there(post).sealedOf(programme, html.leafletHtml(programme, there(assets)), there(sealing));
}

function there<T>(one: T | null): T {
  if (one === null) throw new Error('what makes it was not fetched');
  return one;
}
