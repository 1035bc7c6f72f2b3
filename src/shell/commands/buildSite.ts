/** The work of a build, from reading to the last file; what is said of it is said in build.ts and serve.ts. */
import { setImmediate } from 'node:timers/promises';
import type { Consult } from '../../content/library.ts';
import { sortProblems, type Problem } from '../../content/problem.ts';
import type { PageAssets } from '../../outputs/html/assets.ts';
import { LOGO_FILE } from '../../outputs/html/public/frame.ts';
import type { PaperAssets } from '../../outputs/pdf/leaflet.ts';
import type { Workshop } from '../../programme/assemble.ts';
import type { Models } from '../../decisions/person/model.ts';
import { libraryView } from '../../catalogue/libraryView.ts';
import type { LibraryView } from '../../catalogue/view.ts';
import type { Programme } from '../../programme/programme.ts';
import { marked } from '../../outputs/text/mark.ts';
import type { IsoDate } from '../../units/date.ts';
import { EXIT } from '../exit.ts';
import { Stop } from '../io/stop.ts';
import type { Folders } from '../io/folders.ts';
import { deskFiles } from './deskFiles.ts';
import { libraryFaults } from './libraryFaults.ts';
import { orTakenAway } from '../io/lastResort.ts';
import { locked } from '../io/lock.ts';
import { logoOf } from '../io/logo.ts';
import { libraryFiles, makeProgrammes, ownPages, papersOf, printable, sitePages } from './make.ts';
import { nearestOf } from '../nearest.ts';
import { photosOf, type PhotoWork } from '../io/photos.ts';
import type { PersonSet } from '../io/personSet.ts';
import { openSite, type Manner, type Outcome, type OutFile, type Site } from '../io/site.ts';
import { pageShelf, paperShelf, version } from '../io/shelf.ts';
import { closePrivate, openPrivate } from '../io/privacy.ts';
import { checkPrivatePlace } from '../io/privatePlace.ts';
import { orWithdrawn, withdrawAll, withdrawBlocked, withdrawGone } from './withdraw.ts';
import { readWorkspace, type Workspace } from '../io/workspace.ts';

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
  readonly workspace: Workspace;
  readonly programmes: readonly Pick<Programme, 'alias' | 'revision' | 'stage' | 'step'>[];
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
}

/** For somebody who waits at a screen: the library's pages come first, and older work makes way for newer. */
export interface Haste {
  /** Pages of the library were written anew, and are on the disk. */
  readonly libraryWritten: () => void;
  /** Whether a file was saved since; the build then stops with 75, and the next one goes on from there. */
  readonly isStale: () => boolean;
}

/**
 * Builds everything, or with aliases only theirs; an alias there is no consult of stops with 66. `on`: the day that
 * `issued.jsonl` is told.
 */
export async function buildSite(
  folders: Folders,
  aliases: readonly string[],
  on: IsoDate,
  haste: Haste | null = null,
): Promise<Built> {
  const workspace = readWorkspace(folders);
  const { library, libraryProblems } = workspace;
  const manner = { on, loadleaf: version(), isHasty: haste !== null };
  const nothing = (problems: readonly Problem[]) =>
    nothingBuilt(folders.out, workspace, aliases, problems, manner);
  if (library === null) return nothing(libraryProblems);
  const logo = await logoOf(library.clinic, folders.content);
  const png = 'png' in logo ? logo.png : null;
  const paper = await paperShelf(png);
  const photos = await photosOf(library, workspace);
  const faults = [
    ...(await libraryFaults(library, logo, paper, workspace)),
    ...photos.refusals.map(workspace.asProblem),
  ];
  if (faults.length > 0) return nothing(faults);
  await orWithdrawn(folders.out, workspace, manner, () => {
    checkAliases(aliases, workspace);
    if (workspace.counts.consults > 0) checkPrivatePlace(folders);
  });
  const shop = {
    workshop: { library, models, loadleaf: manner.loadleaf },
    pages: await pageShelf(png),
    paper,
    photos,
  };
  const toGo = toWithdraw(aliases, workspace);
  return orTakenAway(folders.out, toGo, () =>
    locked(folders.out, async (hold) => {
      if (!workspace.isStill())
        throw new Stop(EXIT.busy, 'files were saved while the build began; build again');
      const site = openSite(folders.out, { ...manner, hold });
      // Before anything can go wrong: what must not be followed goes first.
      withdrawAll(site, toGo, [...workspace.consultProblems, ...workspace.screenProblems], workspace);
      openPrivate(folders.out);
      const built = await writeAll(site, workspace, shop, aliases, haste);
      return { ...built, isClosed: closePrivate(folders.out) };
    }),
  );
}

// A red flag waits for nobody to ask for it.
function toWithdraw(aliases: readonly string[], { stopped, blocked }: Workspace): string[] {
  return [...new Set([...stopped.filter(askedIn(aliases)), ...blocked])];
}

interface Shop {
  readonly workshop: Workshop;
  readonly pages: PageAssets;
  readonly paper: PaperAssets;
  readonly photos: PhotoWork;
}

async function writeAll(
  site: Site,
  workspace: Workspace,
  shop: Shop,
  aliases: readonly string[],
  haste: Haste | null,
): Promise<Omit<Built, 'isClosed'>> {
  const isAsked = askedIn(aliases);
  const problems = problemsOfAsked(aliases, workspace);
  const stopped = workspace.stopped.filter(isAsked);
  const programmes: Built['programmes'][number][] = [];
  const failed = [...stopped];
  const isWhole = aliases.length === 0;
  let view = isWhole ? await writeLibrary(site, shop, workspace) : null;
  if (view !== null && haste !== null) {
    const pages = await libraryFiles(view, shop.pages);
    if (pages.filter(site.write).length > 0) haste.libraryWritten();
    view = null;
  }
  for (const consults of oneByOne(
    workspace.current.filter(({ alias }) => isAsked(alias)),
    view !== null,
  )) {
    await makeWay(haste);
    const made = await printable(makeProgrammes(consults, workspace, shop.workshop), workspace, shop.paper);
    const without = consults
      .map(({ alias }) => alias)
      .filter((alias) => !made.programmes.some((one) => one.alias === alias));
    withdrawAll(site, without, made.problems, workspace);
    const finished = made.programmes.map(marked);
    const pages =
      view === null ? await ownPages(finished, shop.pages) : await sitePages(finished, view, shop.pages);
    pages.filter(({ path }) => path.startsWith('public/')).forEach(site.write);
    // The library's pages go with the first leaflet: Eleventy is started for them, and no second time.
    view = null;
    for (const programme of finished) site.issue(await setOf(programme, pages, shop));
    programmes.push(
      ...made.programmes.map(({ alias, revision, stage, step }) => ({ alias, revision, stage, step })),
    );
    problems.push(...made.problems);
    failed.push(...without);
  }
  site.write(NOTICE_FILE);
  if (isWhole) withdrawGone(site, workspace);
  const outcome = site.finish(
    isWhole ? undefined : (path) => !aliases.some((alias) => path.startsWith(`${folderOf(alias)}/`)),
  );
  return {
    workspace,
    programmes,
    failed: failed.sort(),
    problems: sortProblems(problems),
    outcome,
    setAside: outcome.setAside,
  };
}

/** Everything of one make: the pages that are there, and what goes with them. */
async function setOf(
  programme: Programme & { readonly mark: string },
  pages: readonly OutFile[],
  { paper, workshop }: Shop,
): Promise<PersonSet> {
  const { alias, revision, mark } = programme;
  const before = `${folderOf(alias)}/`;
  const own = pages.filter(({ path }) => path.startsWith(before));
  const files = [...own, ...(await papersOf(programme, paper))];
  return {
    alias,
    revision,
    mark,
    files: files.map(({ path, bytes }) => ({ name: path.slice(before.length), bytes })),
    loadleaf: workshop.loadleaf,
    library: workshop.library.version,
  };
}

/** Writes the library's pictures, and gives what its pages show. */
async function writeLibrary(
  site: Site,
  { workshop, pages, paper, photos }: Shop,
  { layers }: Workspace,
): Promise<LibraryView> {
  const { logo } = pages;
  photos.files.forEach(site.write);
  (await deskFiles(workshop.library, layers, paper.logo, pages, paper)).forEach(site.write);
  if (logo !== null) site.write({ path: `public/${LOGO_FILE}`, bytes: logo.png });
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
  return { workspace, programmes: [], failed: [], problems, outcome: null, setAside, isClosed: true };
}

function checkAliases(aliases: readonly string[], { current, stopped, drafts }: Workspace): void {
  const known = [...current.map(({ alias }) => alias), ...stopped];
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
function oneByOne(consults: readonly Consult[], isNeeded: boolean): (readonly Consult[])[] {
  return consults.length === 0 && isNeeded ? [[]] : consults.map((consult) => [consult]);
}

function folderOf(alias: string): string {
  return `private/${alias}`;
}
