/** The work of a build, from reading to the last file; what is said of it is said in build.ts and serve.ts. */
import { setImmediate } from 'node:timers/promises';
import type { Consult } from '../content/library.ts';
import { sortProblems, type Problem } from '../content/problem.ts';
import type { PageAssets } from '../page/assets.ts';
import { LOGO_FILE } from '../page/public/frame.ts';
import type { PaperAssets } from '../paper/leaflet.ts';
import type { Workshop } from '../programme/assemble.ts';
import type { Models } from '../programme/model.ts';
import { libraryView } from '../programme/library/libraryView.ts';
import type { LibraryView } from '../programme/library/view.ts';
import type { Programme } from '../programme/programme.ts';
import { putFile, putSoon } from './disk.ts';
import { EXIT } from './exit.ts';
import { Stop } from './stop.ts';
import type { Folders } from './folders.ts';
import { libraryFaults } from './libraryFaults.ts';
import { locked } from './lock.ts';
import { logoOf } from './logo.ts';
import { libraryFiles, makeProgrammes, ownPages, papersOf, printable, sitePages } from './make.ts';
import { nearestOf } from './nearest.ts';
import { photosOf, type PhotoWork } from './photos.ts';
import { openSite, type Outcome, type OutFile, type Site } from './site.ts';
import { pageShelf, paperShelf, version } from './shelf.ts';
import { readWorkspace, type Workspace } from './workspace.ts';

const NOTICE_FILE: OutFile = {
  path: 'private/PRIVATE.txt',
  bytes: [
    'Everything in this folder belongs to single persons. Do not publish it, and do not commit it.',
    'Only the folder public/ beside it is meant for the web.',
    '',
  ].join('\n'),
};

// Leaflets in the making at one time: enough for Eleventy to pay, few enough for memory to stay as it is.
const AT_ONCE = 32;

/** Bodies already asked about, for a server that builds again and again. */
const models: Models = new Map();

export interface Built {
  readonly workspace: Workspace;
  readonly programmes: readonly Pick<Programme, 'alias' | 'revision' | 'stage' | 'step'>[];
  /** Aliases that were asked for and have no programme, sorted. */
  readonly failed: readonly string[];
  /** Of the aliases that were asked for, and of the library; sorted by place. */
  readonly problems: readonly Problem[];
  /** Null when the library has an error: then nothing was touched. */
  readonly outcome: Outcome | null;
}

/** For somebody who waits at a screen: the library's pages come first, and older work makes way for newer. */
export interface Haste {
  /** Pages of the library were written anew, and are on the disk. */
  readonly libraryWritten: () => void;
  /** Whether a file was saved since; the build then stops with 75, and the next one goes on from there. */
  readonly isStale: () => boolean;
}

/** Builds everything, or with aliases only theirs; an alias there is no consult of stops with 66. */
export async function buildSite(
  folders: Folders,
  aliases: readonly string[],
  haste: Haste | null = null,
): Promise<Built> {
  const workspace = readWorkspace(folders);
  const { library, libraryProblems } = workspace;
  if (library === null)
    return nothingBuilt(workspace, [...libraryProblems, ...problemsOfAsked(aliases, workspace)]);
  const logo = await logoOf(library.clinic, folders.content);
  const png = 'png' in logo ? logo.png : null;
  const paper = await paperShelf(png);
  const photos = await photosOf(library, workspace);
  const faults = [
    ...(await libraryFaults(library, logo, paper, workspace)),
    ...photos.refusals.map(workspace.asProblem),
  ];
  if (faults.length > 0) return nothingBuilt(workspace, [...faults, ...problemsOfAsked(aliases, workspace)]);
  checkAliases(aliases, workspace);
  const shop = {
    workshop: { library, models, loadleaf: version() },
    pages: await pageShelf(png),
    paper,
    photos,
  };
  return locked(folders.out, () => {
    if (!workspace.isStill())
      throw new Stop(EXIT.busy, 'files were saved while the build began; build again');
    const site = openSite(folders.out, haste === null ? putFile : putSoon);
    return writeAll(site, workspace, shop, aliases, haste);
  });
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
): Promise<Built> {
  const isAsked = askedIn(aliases);
  const stopped = workspace.stopped.filter(isAsked);
  for (const alias of stopped) site.drop(folderOf(alias));

  const programmes: Built['programmes'][number][] = [];
  const failed = [...stopped];
  const problems = problemsOfAsked(aliases, workspace);
  const isWhole = aliases.length === 0;
  let view = isWhole ? writeLibrary(site, shop) : null;
  if (view !== null && haste !== null) {
    const pages = await libraryFiles(view, shop.pages);
    if (pages.filter(site.write).length > 0) haste.libraryWritten();
    view = null;
  }
  for (const consults of batches(
    workspace.current.filter(({ alias }) => isAsked(alias)),
    haste === null ? AT_ONCE : 1,
    isWhole && haste === null,
  )) {
    await makeWay(haste);
    const made = await printable(makeProgrammes(consults, workspace, shop.workshop), workspace, shop.paper);
    const without = consults
      .map(({ alias }) => alias)
      .filter((alias) => !made.programmes.some((one) => one.alias === alias));
    for (const alias of without) site.drop(folderOf(alias));
    const pages =
      isWhole && haste === null
        ? await sitePages(made.programmes, view, shop.pages)
        : await ownPages(made.programmes, shop.pages);
    pages.forEach(site.write);
    // The library's pages go with the first leaflets: one start of Eleventy makes both.
    view = null;
    for (const programme of made.programmes) (await papersOf(programme, shop.paper)).forEach(site.write);
    programmes.push(
      ...made.programmes.map(({ alias, revision, stage, step }) => ({ alias, revision, stage, step })),
    );
    problems.push(...made.problems);
    failed.push(...without);
  }
  site.write(NOTICE_FILE);
  const outcome = site.finish(
    (path) => !isWhole && !aliases.some((alias) => path.startsWith(`${folderOf(alias)}/`)),
  );
  return { workspace, programmes, failed: failed.sort(), problems: sortProblems(problems), outcome };
}

/** Writes the library's pictures, and gives what its pages show. */
function writeLibrary(site: Site, { workshop, pages: { logo }, photos }: Shop): LibraryView {
  photos.files.forEach(site.write);
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

function nothingBuilt(workspace: Workspace, problems: readonly Problem[]): Built {
  return { workspace, programmes: [], failed: [], problems: sortProblems(problems), outcome: null };
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

/** The site has pages even without a consult: then there is one empty batch where its pages go with the leaflets. */
function batches(consults: readonly Consult[], size: number, isNeeded: boolean): (readonly Consult[])[] {
  if (consults.length === 0) return isNeeded ? [[]] : [];
  const starts = Array.from({ length: Math.ceil(consults.length / size) }, (_, index) => index * size);
  return starts.map((start) => consults.slice(start, start + size));
}

function folderOf(alias: string): string {
  return `private/${alias}`;
}
