/** The files of one make, each the bytes that `build` writes. */
import type { PageAssets } from '../../outputs/html/assets.ts';
import { leafletHtml } from '../../outputs/html/leaflet.ts';
import { recordHtml } from '../../outputs/html/record.ts';
import { letterText } from '../../outputs/text/letterText.ts';
import { noteText } from '../../outputs/text/noteText.ts';
import { recordJson } from '../../outputs/text/recordJson.ts';
import type { PostFile } from '../../post/postFiles.ts';
import type { Sealed, Sealing } from '../../post/sealedFiles.ts';
import { sentOf } from '../../post/sent.ts';
import type { Programme } from '../../programme/programme.ts';
import type { MadeName, SealedLink } from '../talk.ts';
import type { Bench } from './bench.ts';
import { named } from './named.ts';
import type { PostScript } from './post.ts';

/** Makes what is printed; comes with a script of its own when it is first asked for. */
export interface Paper {
  leaflet(programme: Programme, bench: Bench): Promise<Uint8Array>;
  /** Null where it goes on no page. */
  fridge(programme: Programme, bench: Bench): Promise<Uint8Array | null>;
}

/** What came when it was asked for; `sealing` while a secret is chosen. */
export interface Makers {
  readonly bench: Bench;
  /** Null until a page is to be made. */
  readonly assets: PageAssets | null;
  readonly paper: Paper | null;
  readonly post: PostScript | null;
  readonly sealing: Sealing | null;
}

export interface Output {
  /** Null for what there is not, as a letter before the end. */
  readonly bytes: Uint8Array | string | null;
  readonly link?: SealedLink;
}

/** `firstName`: stands on what is given to the patient, and there alone. */
export async function outputOf(
  name: MadeName,
  programme: Programme,
  firstName: string,
  makers: Makers,
): Promise<Output> {
  const given = named(programme, name, firstName);
  const { bench, assets, paper } = makers;
  switch (name) {
    case 'leaflet.html':
      return { bytes: leafletHtml(given, there(assets)) };
    case 'record.html':
      return { bytes: recordHtml(programme, there(assets)) };
    case 'record.json':
      return { bytes: recordJson(programme) };
    case 'note.txt':
      return { bytes: await noteOf(programme, makers) };
    case 'letter.txt':
      return { bytes: programme.letter === null ? null : letterText(programme.letter, programme) };
    case 'leaflet.pdf':
      return { bytes: await there(paper).leaflet(given, bench) };
    case 'fridge.pdf':
      return { bytes: await fridgeOf(programme, makers) };
    case 'message.eml':
    case 'message.txt':
    case 'sessions.ics':
      return { bytes: await postOf(name, programme, given, makers) };
    case 'sealed':
      return archiveOf(programme, makers);
  }
}

/** It tells what a build makes of this consult, and what is made here is that. */
async function noteOf(programme: Programme, makers: Makers): Promise<string> {
  const sealed = makers.sealing === null ? null : { hasWords: programme.post.words };
  return noteText(programme, {
    ...sentOf(programme, true, sealed),
    pdf: true,
    fridge: (await fridgeOf(programme, makers)) !== null,
    letter: programme.letter !== null,
  });
}

async function fridgeOf(programme: Programme, { paper, bench }: Makers): Promise<Uint8Array | null> {
  return programme.post.fridge ? there(paper).fridge(programme, bench) : null;
}

/** `given`: the programme as the patient reads it. The link is that of the programme. */
async function postOf(
  name: PostFile['name'],
  programme: Programme,
  given: Programme,
  makers: Makers,
): Promise<PostFile['bytes'] | null> {
  const { bench, assets, paper, post } = makers;
  const isPdfNeeded = name === 'message.eml' && given.post.attach.pdf;
  const pdf = isPdfNeeded ? await there(paper).leaflet(given, bench) : new Uint8Array();
  const link = makers.sealing === null ? null : (await sealed(programme, makers)).link;
  const { files } = there(post).postFiles(given, pdf, leafletHtml(given, there(assets)), link);
  return files.find((file) => file.name === name)?.bytes ?? null;
}

/** As it is unpacked where the site lies. */
async function archiveOf(programme: Programme, makers: Makers): Promise<Output> {
  const { files, link, words } = await sealed(programme, makers);
  const below = files.map(({ path, bytes }) => ({ path: path.replace(/^public\//, ''), bytes }));
  return { bytes: there(makers.post).archived(below), link: { address: link.address, words } };
}

function sealed(programme: Programme, { assets, post, sealing }: Makers): Promise<Sealed> {
  return there(post).sealedOf(programme, leafletHtml(programme, there(assets)), there(sealing));
}

function there<T>(one: T | null): T {
  if (one === null) throw new Error('what makes it was not fetched');
  return one;
}
