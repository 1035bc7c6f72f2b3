/** A build that has something to make: reads, holds what was read against the library, then writes with the site held. */
import type { Problem } from '../../content/problem.ts';
import type { Models } from '../../decisions/person/model.ts';
import { version } from '../io/assets.ts';
import { dressFor } from '../io/dress.ts';
import { orTakenAway } from '../io/lastResort.ts';
import { leafletPhotosOf } from '../io/leafletPhotos.ts';
import { libraryReading } from '../io/libraryReading.ts';
import { locked } from '../io/lock.ts';
import { logoOf } from '../io/logo.ts';
import { photosOf, type PhotoWork } from '../io/photos.ts';
import { closePrivate, openPrivate } from '../io/privacy.ts';
import { checkPrivatePlace } from '../io/privatePlace.ts';
import type { Reuse } from '../io/reuse.ts';
import { readSealedList, sealedListFile } from '../io/sealedList.ts';
import { openSite } from '../io/site.ts';
import { readWorkspace, type Workspace } from '../io/workspace.ts';
import { askedIn } from './asked.ts';
import type { BuildAsk } from './buildAsk.ts';
import type { Built } from './built.ts';
import { checkAliases } from './checkAliases.ts';
import { untilSettled } from './haste.ts';
import { without, writeNext } from './kept.ts';
import { libraryFaults } from './libraryFaults.ts';
import { nothingBuilt } from './nothingBuilt.ts';
import { sealedPlaces, withdrawnSealed } from './sealing.ts';
import { toBeSeen } from './toBeSeen.ts';
import { orWithdrawn, peopleWithout, withdrawAll, withdrawGone } from './withdraw.ts';
import { mannerOf, stopUnlessStill, type Work } from './work.ts';
import { writeAll } from './writeAll.ts';
import { writingOf } from './writing.ts';

const NO_PHOTOS: PhotoWork = { photos: new Map(), files: [], refusals: [] };

/** Bodies already asked about, for a server that builds again and again. */
const models: Models = new Map();

export async function buildRest(work: Work): Promise<Built> {
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
    const people = aliases.length === 0 ? withConsult(workspace, reuse) : null;
    const asked = { aliases, problems, withConsult: people };
    const built = await nothingBuilt(folders.out, workspace, asked, manner);
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
      const built = await writeAll(writingOf(site, workspace, shop, work), toGo);
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

// A red flag waits for nobody to ask for it.
function toWithdraw(aliases: readonly string[], { stopped, blocked }: Workspace): string[] {
  return [...new Set([...stopped.filter(askedIn(aliases)), ...blocked])];
}

/** Whoever has a consult, be it one that cannot be built. */
function withConsult({ current, stopped }: Workspace, { finished }: Reuse): string[] {
  return [...finished.keys(), ...current.map(({ alias }) => alias), ...stopped];
}
