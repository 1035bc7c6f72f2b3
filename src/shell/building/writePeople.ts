/** The sets of everybody who is asked for, each written before the next is made; or by a crew, where they are many. */
import type { LibraryView } from '../../catalogue/view.ts';
import type { Link } from '../../outputs/mail/messageText.ts';
import type { InUse } from '../io/person.ts';
import type { OutFile } from '../io/site.ts';
import { askedIn, folderOf } from './asked.ts';
import { setsOfCrew, threadsFor } from './crew.ts';
import { makeWay } from './haste.ts';
import { libraryFiles, ownPages, sitePages } from './make.ts';
import { chosenOf, oneProgramme, oneSet, orderOf, setOf, type Marked } from './oneSet.ts';
import { isWithdrawn } from './sealing.ts';
import { outfitOf } from './work.ts';
import type { Writing } from './writing.ts';

/** `view`: what the library's pages show, where they are still to be written. */
export async function writePeople(writing: Writing, view: LibraryView | null): Promise<void> {
  const { workspace, shop, work } = writing;
  const { aliases, haste } = work.ask;
  const asked = workspace.current.filter(({ alias }) => askedIn(aliases)(alias));
  const threads = haste === undefined && shop.sealing === null ? threadsFor(asked.length) : 0;
  if (threads > 0) await byCrew(writing, asked, view, threads);
  else await oneByOne(writing, asked, view);
}

async function byCrew(
  { workspace, shop, put, issue, refuse }: Writing,
  asked: readonly InUse[],
  view: LibraryView | null,
  threads: number,
): Promise<void> {
  const orders = asked.map((consult) => () => orderOf(consult, workspace));
  const sets = setsOfCrew(orders, outfitOf(shop), threads, (order) => oneSet(order, shop));
  // While they begin.
  if (view !== null) (await libraryFiles(view, shop.pages)).forEach(put);
  let at = 0;
  for await (const made of sets) {
    const { alias } = asked[at++] as InUse;
    if ('set' in made) issue(made.set, made.chosen);
    else refuse(alias, made);
  }
}

/** Memory is the same for three and for three hundred. */
async function oneByOne(writing: Writing, asked: readonly InUse[], view: LibraryView | null): Promise<void> {
  const { workspace, shop, put, refuse } = writing;
  let unwritten = view;
  for (const consult of asked) {
    await makeWay(writing.work.ask.haste);
    const made = await oneProgramme(orderOf(consult, workspace), shop);
    if (!('programme' in made)) {
      refuse(consult.alias, made);
      continue;
    }
    await writeSet(writing, made.programme, unwritten);
    unwritten = null;
  }
  if (unwritten !== null) (await sitePages([], unwritten, shop.pages)).forEach(put);
}

/** `view`: the library's pages go with this leaflet, for Eleventy is started for them, and no second time. */
async function writeSet(writing: Writing, programme: Marked, view: LibraryView | null): Promise<void> {
  const { shop, put, issue } = writing;
  const pages = await (view === null
    ? ownPages(programme, { ...shop, link: null })
    : sitePages([programme], view, shop.pages));
  pages.filter(({ path }) => path.startsWith('public/')).forEach(put);
  const link = await writeSealed(writing, programme, pages);
  issue(await setOf(programme, pages, shop, link), chosenOf(programme));
}

/** Where its sealed page opens; null for a leaflet that is not sealed. */
async function writeSealed(
  { site, workspace, shop: { sealing }, work: { ask }, written }: Writing,
  programme: Marked,
  pages: readonly OutFile[],
): Promise<Link | null> {
  const { alias } = programme;
  const page = pages.find(({ path }) => path === `${folderOf(alias)}/leaflet.html`);
  const isNone =
    sealing === null || page === undefined || isWithdrawn(alias, workspace, ask.on, ask.aliases.length === 0);
  if (isNone) return null;
  const { sealedOf } = await import('../../post/sealedFiles.ts');
  const sealed = await sealedOf(programme, page.bytes, sealing);
  sealed.files.forEach(site.write);
  written.sealed.push(sealed);
  return sealed.link;
}
