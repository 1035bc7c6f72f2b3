/**
 * The command that reads every file, makes every programme in memory, holds what was given out against its list, and prints
 * what is wrong. Writes nothing.
 */
import { resolve } from 'node:path';
import { sortProblems, type Problem } from '../../content/problem.ts';
import type { Consult, Library } from '../../content/library.ts';
import { seenIn } from '../../drawing/seen.ts';
import { checkLibrary, checkShelves } from '../../lint/library.ts';
import { againstPictures } from '../../lint/pictures.ts';
import { checkIssued } from './checkIssued.ts';
import { counted, libraryText } from '../io/counted.ts';
import { EXIT } from '../exit.ts';
import type { Flags } from '../flags.ts';
import { sourceFolders } from '../io/folders.ts';
import { printFaults } from '../building/libraryFaults.ts';
import { logoOf } from '../io/logo.ts';
import { oneProgramme, orderOf, problemsOf } from '../building/oneSet.ts';
import { leafletPhotosOf } from '../io/leafletPhotos.ts';
import { photosOf } from '../io/photos.ts';
import type { Report } from '../report.ts';
import { readPaperAssets, version } from '../io/assets.ts';
import { onDay } from '../io/today.ts';
import { filesBefore } from '../io/layers.ts';
import { changedUnderneath, standsOn } from '../../content/underneath.ts';
import { Stop } from '../io/stop.ts';
import { readWorkspace, type Workspace } from '../io/workspace.ts';

/** Exit 65 when anything has an error; warnings alone are good. */
export async function check(flags: Flags, report: Report): Promise<number> {
  const folders = sourceFolders(flags);
  const workspace = readWorkspace(folders);
  const { library, counts, files } = workspace;
  const used =
    library === null
      ? besideErrors(workspace, flags)
      : await inUse(library, folders.content, flags, workspace);
  const problems = sortProblems([
    ...workspace.libraryProblems,
    ...workspace.asked,
    ...underneath(flags.against, workspace, report),
    ...workspace.consultProblems,
    ...workspace.draftProblems,
    ...workspace.logProblems,
    ...used,
    ...checkIssued(resolve(flags.out)),
  ]);
  const errors = problems.filter(({ severity }) => severity === 'error').length;
  await report.problems(problems, files);
  report.say(
    [
      `${libraryText(counts)}, ${counted(counts.consults, 'consult')}:`,
      `${counted(errors, 'error')}, ${counted(problems.length - errors, 'warning')}`,
    ].join(' '),
  );
  report.answer({ ok: errors === 0, counts, problems });
  return errors === 0 ? EXIT.good : EXIT.content;
}

/** What changed below the clinic's own files since the library that `--against` names; nothing without it. */
function underneath(against: string | null, { standing }: Workspace, report: Report): Problem[] {
  if (against === null) return [];
  const before = filesBefore(against);
  if (!standsOn(standing, before))
    throw new Stop(
      EXIT.noSuchFile,
      `--against ${against} has nothing that this library changes, replaces or hides; name the folder of a library as it was, or one protocol of it`,
    );
  const changed = changedUnderneath(standing, before);
  if (changed.length === 0) report.say(`Nothing changed underneath since ${against}.`);
  return changed;
}

/** What each file answers for alone, where the library has an error; of a file with an error only its errors count. */
function besideErrors({ libraryProblems, shelves, placeOf }: Workspace, flags: Flags): Problem[] {
  const broken = new Set(libraryProblems.map(({ file }) => file));
  return checkShelves(shelves, onDay(flags), placeOf).filter(
    ({ file, severity }) => severity === 'error' || !broken.has(file),
  );
}

/** Drafts with nothing wrong in the file; of one that withdraws a leaflet that was said already. */
function draftsInOrder({ drafts, withdrawals }: Workspace): Consult[] {
  return drafts.flatMap(({ file, consult }) =>
    consult === null || withdrawals.some((one) => one.file === file) ? [] : [consult],
  );
}

/** What shows only when the library is used: its words and poses, its print, and every person's programme. */
async function inUse(
  library: Library,
  content: string,
  flags: Flags,
  workspace: Workspace,
): Promise<Problem[]> {
  const paper = await readPaperAssets(null);
  const onPages = await photosOf(library, workspace);
  const onLeaflets = await leafletPhotosOf(library, workspace);
  const refusals = [...onPages.refusals, ...onLeaflets.refusals];
  const prints = await printFaults(library, await logoOf(library.clinic, content), paper, workspace);
  const workshop = { library, models: new Map(), loadleaf: version() };
  const problems: Problem[] = [];
  // One at a time, and only what is wrong with it is kept.
  const tools = { workshop, paper, pages: onLeaflets };
  const orders = [
    ...workspace.current.map((inUse) => () => orderOf(inUse, workspace)),
    ...draftsInOrder(workspace).map((consult) => () => ({
      consult,
      ...workspace.revisionsOf(consult.alias),
    })),
  ];
  for (const order of orders) {
    const made = await oneProgramme(order(), tools);
    if (!('programme' in made)) problems.push(...problemsOf(made, workspace));
  }
  return [
    // A clinic need not use all that is shipped.
    ...checkLibrary(library, onDay(flags), workspace.placeOf).filter(
      ({ code, file }) => code !== 'card-unused' || !workspace.shipped.has(file),
    ),
    ...againstPictures(library, seenIn, workspace.placeOf),
    ...prints,
    ...refusals.map(workspace.asProblem),
    ...withoutLettersOf(prints, problems),
  ];
}

// A letter of a card is told of at the card, not again in every programme it is printed in.
function withoutLettersOf(prints: readonly Problem[], problems: readonly Problem[]): readonly Problem[] {
  const isLetter = ({ code }: Problem) => code === 'letter-not-in-font';
  if (!prints.some(isLetter)) return problems;
  return problems.filter((one) => !isLetter(one) || (one.file.startsWith('consults/') && one.path !== ''));
}
