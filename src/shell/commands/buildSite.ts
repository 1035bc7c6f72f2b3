/** The work of a build, from reading to the last file; what is said of it is said in build.ts and serve.ts. */
import { setImmediate } from 'node:timers/promises';
import type { Consult } from '../../content/library.ts';
import { sortProblems, type Problem } from '../../content/problem.ts';
import type { PageAssets } from '../../outputs/html/assets.ts';
import { LOGO_FILE } from '../../outputs/html/public/frame.ts';
import type { PaperAssets } from '../../outputs/pdf/leaflet.ts';
import type { Workshop } from '../../programme/assemble.ts';
import type { Models } from '../../decisions/person/model.ts';
import type { BuildAsk, Chosen, Haste } from './buildAsk.ts';
import { libraryView } from '../../catalogue/libraryView.ts';
import type { LibraryView } from '../../catalogue/view.ts';
import type { Programme } from '../../programme/programme.ts';
import { EXIT } from '../exit.ts';
import { Stop } from '../io/stop.ts';
import type { Folders } from '../io/folders.ts';
import { logOfName } from '../../content/log/readLog.ts';
import { nameOf } from '../../content/fileName.ts';
import { readLedger, type Finished, type FinishedLibrary, type Ledger } from '../io/ledger.ts';
import {
  consultsRead,
  finishedLibrary,
  finishedSet,
  keepFinished,
  keptProgrammes,
  NotAsLeft,
  without,
  writeNext,
} from './kept.ts';
import { deskFiles } from './deskFiles.ts';
import { libraryFaults } from './libraryFaults.ts';
import { libraryReading } from '../io/libraryReading.ts';
import { orTakenAway } from '../io/lastResort.ts';
import { locked } from '../io/lock.ts';
import { logoOf } from '../io/logo.ts';
import { setsOfCrew, threadsFor } from './crew.ts';
import type { Outfit } from './crewHand.ts';
import { libraryFiles, ownPages, sitePages } from './make.ts';
import { chosenOf, oneProgramme, orderOf, problemsOf, setOf, type Against } from './oneSet.ts';
import { dressFor } from '../io/dress.ts';
import { nearestOf } from '../nearest.ts';
import { leafletPhotosOf } from '../io/leafletPhotos.ts';
import { photosOf, type PhotoWork } from '../io/photos.ts';
import type { PersonSet } from '../io/personSet.ts';
import { reuseOf, type Reuse } from '../io/reuse.ts';
import { openSite, type Manner, type Outcome, type OutFile, type Site } from '../io/site.ts';
import { version } from '../io/assets.ts';
import { closePrivate, openPrivate } from '../io/privacy.ts';
import { checkPrivatePlace } from '../io/privatePlace.ts';
import { readSealedList, sealedListFile, type SealedPlace } from '../io/sealedList.ts';
import type { Sealed, Sealing } from '../../post/sealedFiles.ts';
import { isWithdrawn, sealedPlace, withdrawnSealed } from './sealing.ts';
import { orWithdrawn, peopleWithout, withdrawAll, withdrawBlocked, withdrawGone } from './withdraw.ts';
import { toBeSeen } from './toBeSeen.ts';
import { isStill, lookAt, ofPart, type Sources } from '../io/sources.ts';
import { readWorkspace, type Workspace } from '../io/workspace.ts';

const NO_PHOTOS: PhotoWork = { photos: new Map(), files: [], refusals: [] };

const NOTICE_FILE: OutFile = {
  path: 'private/PRIVATE.txt',
  bytes: [
    'Everything in this folder belongs to single persons. Do not publish it, and do not commit it.',
    'Only the folder public/ beside it is meant for the web.',
    '',
  ].join('\n'),
};

/** Bodies already asked about, for a server that builds again and again. */
const models: Models = new Map();

export interface Built {
  readonly workspace: Pick<Workspace, 'files' | 'counts' | 'blocked' | 'unreadable' | 'stopped' | 'toBeSeen'>;
  readonly programmes: readonly Chosen[];
  /** Aliases that were asked for and have no programme, sorted. */
  readonly failed: readonly string[];
  /** Of the aliases that were asked for, and of the library; sorted by place. */
  readonly problems: readonly Problem[];
  /** Null when the library has an error: then nothing was touched but what a red flag takes away. */
  readonly outcome: Outcome | null;
  /** Whether the disk keeps private files to this user. */
  readonly isClosed: boolean;
  /** Aliases whose files were put aside. */
  readonly setAside: readonly string[];
  /** Leaflets that were sealed by this build, with the words that open them. */
  readonly sealed: readonly { readonly alias: string; readonly words: string | null }[];
}

/**
 * Builds everything, or with aliases only theirs; an alias there is no consult of stops with 66. What stands already by
 * the hash of all it comes from is kept.
 */
export async function buildSite(
  folders: Folders,
  ask: BuildAsk,
  distrusted: ReadonlySet<string> = new Set(),
): Promise<Built> {
  const looked = lookAt(folders);
  const ledger = readLedger(folders.out);
  const sources = ofPart(looked, ask.flags.part, ledger);
  const reuse = reuseOf(folders.out, sources, ledger, {
    ...ask,
    distrusted: new Set([...distrusted, ...alwaysMade(folders.out, looked, ledger, ask)]),
  });
  const work = { folders, ask, looked, sources, ledger, reuse };
  if (Object.keys(ledger.people).some((alias) => !reuse.keys.has(alias))) await untilSettled(ask);
  try {
    const { library } = reuse;
    return await (library !== null && readsNothing(work) ? keepAll(work, library) : buildRest(work));
  } catch (error) {
    if (!(error instanceof NotAsLeft)) throw error;
    const again = await buildSite(folders, ask, new Set([...distrusted, ...error.whose]));
    return withSetAside(again, error.setAside);
  }
}

/**
 * Persons whose files are made again whatever the ledger says: of a log what was written may stop a leaflet, and a sealed
 * page follows from the day and from the secret besides.
 */
function alwaysMade(out: string, { consults }: Sources, { people }: Ledger, { sealing }: BuildAsk): string[] {
  const isSealed = (sealing ?? null) !== null || readSealedList(out).length > 0;
  return isSealed
    ? Object.keys(people)
    : consults.flatMap(({ file }) => logOfName(nameOf(file))?.alias ?? []);
}

/** Also those whose sets were put aside before the build began anew. */
function withSetAside(built: Built, before: readonly string[]): Built {
  const setAside = [...new Set([...before, ...built.setAside])].sort();
  return { ...built, setAside, outcome: built.outcome === null ? null : { ...built.outcome, setAside } };
}

interface Work {
  readonly folders: Folders;
  readonly ask: BuildAsk;
  /** All that lies there. */
  readonly looked: Sources;
  /** What is to be built of it. */
  readonly sources: Sources;
  readonly ledger: Ledger;
  readonly reuse: Reuse;
}

function mannerOf({ on, haste }: BuildAsk): Manner {
  return { on, loadleaf: version(), isHasty: haste !== undefined };
}

/** Whether no file beside the library has to be looked into. */
function readsNothing({ ask, sources, reuse: { finished, leftOut } }: Work): boolean {
  return (
    ask.aliases.every((alias) => finished.has(alias)) &&
    sources.consults.every(({ file }) => leftOut.has(file))
  );
}

/** Everything asked for was made from what lies there now; what has no consult any more goes all the same. */
async function keepAll(
  { folders, ask, looked, sources, ledger, reuse }: Work,
  library: FinishedLibrary,
): Promise<Built> {
  const counts = { ...library.counts, consults: reuse.reads.size };
  if (counts.consults > 0) checkPrivatePlace(folders);
  const gone = ask.aliases.length === 0 ? peopleWithout(folders.out, [...reuse.finished.keys()]) : [];
  return orTakenAway(folders.out, gone, () =>
    locked(folders.out, async (hold) => {
      stopUnlessStill(looked, folders);
      const site = openSite(folders.out, { ...mannerOf(ask), hold });
      withdrawGone(site, gone);
      openPrivate(folders.out);
      const kept = keepFinished(site, folders.out, reuse, ask);
      site.write(NOTICE_FILE);
      const outcome = site.finish(othersThan(ask.aliases));
      writeNext(folders.out, ledger, {
        library: kept.library,
        consults: consultsRead(sources, reuse),
        people: { ...(ask.aliases.length === 0 ? {} : ledger.people), ...kept.people },
      });
      return {
        workspace: { files: [], counts, blocked: [], unreadable: [], stopped: [], toBeSeen: [] },
        programmes: keptProgrammes(reuse),
        failed: [],
        problems: [],
        outcome,
        setAside: outcome.setAside,
        isClosed: closePrivate(folders.out),
        sealed: [],
      };
    }),
  );
}

async function buildRest(work: Work): Promise<Built> {
  const { folders, ask, looked, sources, ledger, reuse } = work;
  const { aliases } = ask;
  const workspace = lookedBack(
    readWorkspace(folders, sources, reuse.leftOut, libraryReading(folders.out, sources, reuse.libraryKey)),
    folders.out,
    ask,
  );
  const { library, libraryProblems } = workspace;
  if (library === null || workspace.stopped.length + workspace.blocked.length > 0) await untilSettled(ask);
  const manner = mannerOf(ask);
  const nothing = async (problems: readonly Problem[]) => {
    const built = await nothingBuilt(folders.out, workspace, aliases, problems, manner);
    writeNext(folders.out, ledger, { ...ledger, people: without(ledger.people, built.setAside) });
    return built;
  };
  if (library === null) return nothing(libraryProblems);
  const logo = await logoOf(library.clinic, folders.content);
  const png = 'png' in logo ? logo.png : null;
  const { paper, pages } = await dressFor(png);
  // A library whose pages stand had no fault when they were made.
  const photos = reuse.library === null ? await photosOf(library, workspace) : NO_PHOTOS;
  const onLeaflets = await leafletPhotosOf(library, workspace);
  const faults =
    reuse.library === null
      ? [
          ...(await libraryFaults(library, logo, paper, workspace)),
          ...[...photos.refusals, ...onLeaflets.refusals].map(workspace.asProblem),
        ]
      : [];
  if (faults.length > 0) return nothing(faults);
  await orWithdrawn(folders.out, workspace, manner, () => {
    checkAliases(aliases, workspace, reuse);
    if (workspace.counts.consults > 0) checkPrivatePlace(folders);
  });
  const shop = {
    workshop: { library, models, loadleaf: manner.loadleaf },
    pages: { ...pages, photos: onLeaflets.photos },
    paper,
    photos,
    sealing: ask.sealing ?? null,
    fridge: ask.flags.fridge,
  };
  const toGo = toWithdraw(aliases, workspace);
  const gone = aliases.length === 0 ? peopleWithout(folders.out, withConsult(workspace, reuse)) : [];
  return orTakenAway(folders.out, [...toGo, ...gone], () =>
    locked(folders.out, async (hold) => {
      stopUnlessStill(looked, folders);
      const site = openSite(folders.out, { ...manner, hold });
      // Before anything can go wrong: what must not be followed goes first.
      withdrawAll(site, toGo, [...workspace.consultProblems, ...workspace.screenProblems], workspace);
      withdrawGone(site, gone);
      const list = await sealedPlaces(folders.out, workspace, aliases, shop.sealing);
      // Before the pages themselves: a place that this machine does not know could not be withdrawn.
      if (list.length > 0) site.write(sealedListFile(list));
      const withdrawn = await withdrawnSealed(folders.out, workspace, ask.on, aliases.length === 0);
      withdrawn.forEach(site.write);
      openPrivate(folders.out);
      const built = await writeAll(site, workspace, shop, work, toGo);
      return { ...built, isClosed: closePrivate(folders.out) };
    }),
  );
}

/** With those whose log leads to "stop and be seen", of all that are or will be sealed: it may withdraw their page. */
function lookedBack(workspace: Workspace, out: string, { flags, sealing }: BuildAsk): Workspace {
  const { library, current } = workspace;
  if (library === null) return workspace;
  const sealed = [...readSealedList(out), ...((sealing ?? null) === null ? [] : current)];
  const workshop = { library, models, loadleaf: version() };
  const aliases = sealed.map(({ alias }) => alias);
  return { ...workspace, toBeSeen: toBeSeen(aliases, workspace, workshop, flags) };
}

function stopUnlessStill(sources: Sources, folders: Folders): void {
  if (!isStill(sources, folders))
    throw new Stop(EXIT.busy, 'files were saved while the build began; build again');
}

// A red flag waits for nobody to ask for it.
function toWithdraw(aliases: readonly string[], { stopped, blocked }: Workspace): string[] {
  return [...new Set([...stopped.filter(askedIn(aliases)), ...blocked])];
}

/** Whoever has a consult, be it one that cannot be built. */
function withConsult({ current, stopped }: Workspace, { finished }: Reuse): string[] {
  return [...finished.keys(), ...current.map(({ alias }) => alias), ...stopped];
}

interface Shop {
  readonly workshop: Workshop;
  readonly pages: PageAssets;
  readonly paper: PaperAssets;
  readonly photos: PhotoWork;
  /** Null where nothing is sealed. */
  readonly sealing: Sealing | null;
  /** Whether everybody gets the sheet for the fridge. */
  readonly fridge: boolean;
}

async function writeAll(
  site: Site,
  workspace: Workspace,
  shop: Shop,
  { folders, ask, sources, ledger, reuse }: Work,
  withdrawn: readonly string[],
): Promise<Omit<Built, 'isClosed'>> {
  const { aliases, haste = null } = ask;
  const isAsked = askedIn(aliases);
  const problems = problemsOfAsked(aliases, workspace);
  const stopped = workspace.stopped.filter(isAsked);
  const programmes = [...keptProgrammes(reuse)];
  const failed = [...stopped];
  const sealed: Sealed[] = [];
  const isWhole = aliases.length === 0;
  const ofLibrary: OutFile[] = [];
  const issued: (readonly [string, Finished])[] = [];
  const put = (file: OutFile): boolean => {
    ofLibrary.push(file);
    return site.write(file);
  };
  let view = isWhole && reuse.library === null ? await writeLibrary(put, shop, workspace) : null;
  if (view !== null && haste !== null) {
    const pages = await libraryFiles(view, shop.pages);
    if (pages.filter(put).length > 0) haste.libraryWritten();
    view = null;
  }
  const issue = (set: PersonSet, chosen: Chosen): void => {
    const { left } = site.issue(set);
    const key = reuse.keys.get(set.alias);
    if (left.length === 0 && key !== undefined) issued.push(...finishedSet(folders.out, set, key, chosen));
    programmes.push(chosen);
  };
  const refuse = (alias: string, against: Against): void => {
    const why = problemsOf(against, workspace);
    withdrawAll(site, [alias], why, workspace);
    problems.push(...why);
    failed.push(alias);
  };
  const asked = workspace.current.filter(({ alias }) => isAsked(alias));
  const threads = haste === null && shop.sealing === null ? threadsFor(asked.length) : 0;
  if (threads > 0) {
    const orders = asked.map((consult) => orderOf(consult, workspace));
    const sets = setsOfCrew(orders, outfitOf(shop), threads);
    // While they begin.
    if (view !== null) (await sitePages([], view, shop.pages)).forEach(put);
    let at = 0;
    for await (const made of sets) {
      const { alias } = asked[at++] as Consult;
      if ('set' in made) issue(made.set, made.chosen);
      else refuse(alias, made);
    }
  } else
    for (const consult of oneByOne(asked, view !== null)) {
      await makeWay(haste);
      const made = consult === null ? null : await oneProgramme(orderOf(consult, workspace), shop);
      if (consult !== null && made !== null && !('programme' in made)) refuse(consult.alias, made);
      const finished = made !== null && 'programme' in made ? made.programme : null;
      const these = finished === null ? [] : [finished];
      const pages = await (view === null
        ? Promise.all(these.map((one) => ownPages(one, { ...shop, link: null }))).then((all) => all.flat())
        : sitePages(these, view, shop.pages));
      pages.filter(({ path }) => path.startsWith('public/')).forEach(put);
      // The library's pages go with the first leaflet: Eleventy is started for them, and no second time.
      view = null;
      if (finished === null) continue;
      const one = isWithdrawn(finished.alias, workspace, ask.on, isWhole)
        ? null
        : await sealedIn(finished, pages, shop);
      if (one !== null) {
        sealed.push(one);
        one.files.forEach(site.write);
      }
      issue(await setOf(finished, pages, shop, one?.link ?? null), chosenOf(finished));
    }
  const kept = keepFinished(site, folders.out, reuse, ask);
  site.write(NOTICE_FILE);
  const outcome = site.finish(othersThan(aliases));
  const others = isWhole ? {} : without(ledger.people, [...withdrawn, ...failed, ...outcome.setAside]);
  writeNext(folders.out, ledger, {
    library: !isWhole
      ? ledger.library
      : (kept.library ?? finishedLibrary(folders.out, reuse, workspace, ofLibrary)),
    consults: { ...(isWhole ? {} : ledger.consults), ...consultsRead(sources, reuse) },
    people: { ...others, ...kept.people, ...Object.fromEntries(issued) },
  });
  return {
    workspace,
    programmes: programmes.sort((a, b) => (a.alias < b.alias ? -1 : 1)),
    failed: failed.sort(),
    problems: sortProblems([...workspace.asked, ...problems]),
    outcome,
    setAside: outcome.setAside,
    sealed: sealed.map(({ alias, words }) => ({ alias, words })),
  };
}

function outfitOf({ workshop: { library, loadleaf }, paper, pages, fridge }: Shop): Outfit {
  return { library, loadleaf, logo: paper.logo, photos: pages.photos, fridge };
}

/** Null where this build seals nothing. */
async function sealedIn(
  programme: Programme,
  pages: readonly OutFile[],
  { sealing }: Shop,
): Promise<Sealed | null> {
  const page = pages.find(({ path }) => path === `${folderOf(programme.alias)}/leaflet.html`);
  if (sealing === null || page === undefined) return null;
  const { sealedOf } = await import('../../post/sealedFiles.ts');
  return sealedOf(programme, page.bytes, sealing);
}

/** What stands sealed already, and what this build may seal. */
async function sealedPlaces(
  out: string,
  { current }: Workspace,
  aliases: readonly string[],
  sealing: Sealing | null,
): Promise<SealedPlace[]> {
  const list = readSealedList(out);
  if (sealing === null) return list;
  const asked = current.map(({ alias }) => alias).filter(askedIn(aliases));
  const now = await Promise.all(asked.map((alias) => sealedPlace(alias, sealing)));
  return [...list.filter(({ id }) => now.every((place) => place.id !== id)), ...now];
}

/** Writes the library's pictures, and gives what its pages show. */
async function writeLibrary(
  put: Site['write'],
  { workshop, pages, paper, photos }: Shop,
  { layers }: Workspace,
): Promise<LibraryView> {
  const { logo } = pages;
  photos.files.forEach(put);
  (await deskFiles(workshop.library, layers, paper.logo, pages, paper)).forEach(put);
  if (logo !== null) put({ path: `public/${LOGO_FILE}`, bytes: logo.png });
  return libraryView(workshop.library, photos.photos, workshop.models);
}

function askedIn(aliases: readonly string[]): (alias: string) => boolean {
  return (alias) => aliases.length === 0 || aliases.includes(alias);
}

function problemsOfAsked(aliases: readonly string[], workspace: Workspace): Problem[] {
  const isAsked = askedIn(aliases);
  return workspace.consultProblems.filter(({ file }) => isAsked(workspace.aliases.get(file) ?? ''));
}

/** The library has an error. A red flag takes its leaflet away all the same; nothing else is touched. */
async function nothingBuilt(
  out: string,
  workspace: Workspace,
  aliases: readonly string[],
  faults: readonly Problem[],
  manner: Manner,
): Promise<Built> {
  const isAsked = askedIn(aliases);
  // Programmes, which are not made, would say so of their screens.
  const screens = workspace.library === null ? [] : workspace.screenProblems;
  const problems = sortProblems([
    ...faults,
    ...problemsOfAsked(aliases, workspace),
    ...screens.filter(({ file }) => isAsked(workspace.aliases.get(file) ?? '')),
  ]);
  const setAside = await withdrawBlocked(out, workspace, manner);
  return {
    workspace,
    programmes: [],
    failed: [],
    problems,
    outcome: null,
    setAside,
    isClosed: true,
    sealed: [],
  };
}

function checkAliases(
  aliases: readonly string[],
  { current, stopped, drafts }: Workspace,
  { finished, reads, leftOut }: Reuse,
): void {
  const aside = [...leftOut].flatMap((file) => reads.get(file)?.alias ?? []);
  const known = [...finished.keys(), ...current.map(({ alias }) => alias), ...stopped, ...aside];
  const wrong = aliases.find((alias) => !known.includes(alias));
  if (wrong === undefined) return;
  const draft = drafts.find(({ alias }) => alias === wrong);
  if (draft !== undefined)
    throw new Stop(
      EXIT.noSuchFile,
      `${draft.file} is a draft, which is never built; finish it, and take draft: yes out`,
    );
  throw new Stop(EXIT.noSuchFile, `there is no consult of ${wrong}`, nearestOf(wrong, known));
}

// Half a file is no reason to take a leaflet out of force, nor is one that is away while it is saved.
async function untilSettled({ haste }: BuildAsk): Promise<void> {
  await haste?.settled();
  await makeWay(haste ?? null);
}

/** Waits for what has happened meanwhile to be noticed, and stops where it makes this build an old one. */
async function makeWay(haste: Haste | null): Promise<void> {
  if (haste === null) return;
  await setImmediate();
  if (haste.isStale()) throw new Stop(EXIT.busy, 'files were saved while the build was at work');
}

/**
 * One person after the other, so that memory is the same for three and for three hundred. The library's pages are made
 * even without a consult: `isNeeded` gives one empty turn for them.
 */
function oneByOne(consults: readonly Consult[], isNeeded: boolean): readonly (Consult | null)[] {
  return consults.length === 0 && isNeeded ? [null] : consults;
}

/** What a build of single persons leaves as it is; undefined for a build of the whole site. */
function othersThan(aliases: readonly string[]): ((path: string) => boolean) | undefined {
  if (aliases.length === 0) return undefined;
  return (path) => !aliases.some((alias) => path.startsWith(`${folderOf(alias)}/`));
}

function folderOf(alias: string): string {
  return `private/${alias}`;
}
