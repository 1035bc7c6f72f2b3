/** The command that reads every file, makes every programme in memory, and prints what is wrong. Writes nothing. */
import { sortProblems, type Problem } from '../content/problem.ts';
import type { Library } from '../content/library.ts';
import { seenIn } from '../figure/seen.ts';
import { checkLibrary, checkShelves } from '../programme/check/library.ts';
import { againstPictures } from '../programme/check/pictures.ts';
import { counted, libraryText } from './counted.ts';
import { EXIT } from './exit.ts';
import type { Flags } from './flags.ts';
import { sourceFolders } from './folders.ts';
import { printFaults } from './libraryFaults.ts';
import { logoOf } from './logo.ts';
import { makeProgrammes, printable } from './make.ts';
import { photosOf } from './photos.ts';
import type { Report } from './report.ts';
import { paperShelf, version } from './shelf.ts';
import { onDay } from './today.ts';
import { readWorkspace, type Workspace } from './workspace.ts';

/** Exit 65 when anything has an error; warnings alone are good. */
export async function check(flags: Flags, report: Report): Promise<number> {
  const folders = sourceFolders(flags);
  const workspace = readWorkspace(folders);
  const { library, counts, files } = workspace;
  const used =
    library === null
      ? besideErrors(workspace, flags)
      : await inUse(library, folders.content, flags, workspace);
  const problems = sortProblems([...workspace.libraryProblems, ...workspace.consultProblems, ...used]);
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

/** What each file answers for alone, where the library has an error; of a file with an error only its errors count. */
function besideErrors({ libraryProblems, shelves, placeOf }: Workspace, flags: Flags): Problem[] {
  const broken = new Set(libraryProblems.map(({ file }) => file));
  return checkShelves(shelves, onDay(flags), placeOf).filter(
    ({ file, severity }) => severity === 'error' || !broken.has(file),
  );
}

/** What shows only when the library is used: its words and poses, its print, and every person's programme. */
async function inUse(
  library: Library,
  content: string,
  flags: Flags,
  workspace: Workspace,
): Promise<Problem[]> {
  const paper = await paperShelf(null);
  const { refusals } = await photosOf(library, workspace);
  const prints = await printFaults(library, await logoOf(library.clinic, content), paper, workspace);
  const workshop = { library, models: new Map(), loadleaf: version() };
  const { problems } = await printable(
    makeProgrammes(workspace.current, workspace, workshop),
    workspace,
    paper,
  );
  return [
    // A clinic need not use all that is shipped.
    ...checkLibrary(library, onDay(flags), workspace.placeOf).filter(
      ({ code, file }) => code !== 'card-unused' || !workspace.shipped.has(file),
    ),
    ...againstPictures(library, seenIn, workspace.placeOf),
    ...prints,
    ...refusals.map(workspace.asProblem),
    ...problems,
  ];
}
