/** Builds the site: the library's public part, and a leaflet and record for every consult. */
import { relative } from 'node:path';
import { sortProblems, type Problem } from '../content/problem.ts';
import type { Library } from '../content/library.ts';
import type { Models } from '../programme/model.ts';
import type { Programme } from '../programme/programme.ts';
import { EXIT } from './exit.ts';
import { Stop } from './fault.ts';
import type { Flags } from './flags.ts';
import { foldersOf } from './folders.ts';
import { locked } from './lock.ts';
import { logoOf } from './logo.ts';
import { letterProblems, makeProgrammes, pagesOf, papersOf } from './make.ts';
import { nearestOf } from './nearest.ts';
import { writeSite, type Outcome, type OutFile } from './output.ts';
import { reportFor, type Report } from './report.ts';
import { pageShelf, paperShelf, TEMPLATES, version } from './shelf.ts';
import { readWorkspace, type Workspace } from './workspace.ts';

const NOTICE_FILE: OutFile = {
  path: 'private/PRIVATE.txt',
  bytes:
    'Everything in this folder belongs to single persons. Do not publish it, and do not commit it.\nOnly the folder public/ beside it is meant for the web.\n',
};

// Bodies already asked about, for a server that builds again and again.
const models: Models = new Map();

/** Exit 65 when a consult has a Problem (the others are written), or a library file (nothing is). */
export async function build(flags: Flags, aliases: readonly string[]): Promise<number> {
  const folders = foldersOf(flags);
  const report = reportFor(flags);
  const workspace = readWorkspace(folders);
  const { library } = workspace;
  const broken =
    library === null ? workspace.libraryProblems : await logoProblems(library, folders.content, workspace);
  if (library === null || broken.length > 0) return stopped(report, folders.out, broken, workspace);
  checkAliases(aliases, workspace);
  return locked(folders.out, async () => {
    const workshop = { library, models, loadleaf: version() };
    const wanted = workspace.current.filter(({ alias }) => aliases.length === 0 || aliases.includes(alias));
    const made = makeProgrammes(wanted, workspace, workshop);
    const paper = await paperShelf((await logoOf(library.clinic, folders.content)) as Uint8Array | null);
    const unprintable = await Promise.all(
      made.programmes.map((one) => letterProblems(one, paper, workspace)),
    );
    const programmes = made.programmes.filter((_, index) => (unprintable[index] ?? []).length === 0);
    const ownProblems = workspace.consultProblems.filter(
      (problem) => aliases.length === 0 || belongs(problem, aliases, workspace),
    );
    const problems = sortProblems([...ownProblems, ...made.problems, ...unprintable.flat()]);

    const pages = await pagesOf(programmes, workshop, await pageShelf(), TEMPLATES, aliases.length > 0);
    const papers: OutFile[] = [];
    for (const programme of programmes) papers.push(...(await papersOf(programme, paper)));
    const failed = failedAliases(workspace, programmes, aliases);
    const kept = (path: string) =>
      aliases.length > 0 && !failed.some((alias) => path.startsWith(`private/${alias}/`));
    const outcome = writeSite(folders.out, [...pages, ...papers, NOTICE_FILE], kept);

    report.problems(problems, workspace.files);
    sayOutcome(report, folders.out, programmes, failed, outcome, workspace);
    const ok = problems.every(({ severity }) => severity !== 'error');
    report.answer({
      ok,
      out: folders.out,
      files: outcome.files,
      programmes: programmes.map(({ alias, revision, stage, step }) => ({
        alias,
        revision,
        stage: stage.chosen,
        step,
      })),
      problems,
    });
    return ok ? EXIT.good : EXIT.content;
  });
}

async function logoProblems(library: Library, content: string, workspace: Workspace): Promise<Problem[]> {
  const logo = await logoOf(library.clinic, content);
  return logo !== null && 'code' in logo ? [workspace.asProblem(logo)] : [];
}

function stopped(report: Report, out: string, problems: readonly Problem[], workspace: Workspace): number {
  report.problems(problems, workspace.files);
  process.stderr.write('The library has errors: nothing was built, and nothing was changed.\n');
  report.answer({ ok: false, out, files: [], programmes: [], problems });
  return EXIT.content;
}

function checkAliases(aliases: readonly string[], { current, stopped: broken }: Workspace): void {
  const known = [...current.map(({ alias }) => alias), ...broken];
  const wrong = aliases.find((alias) => !known.includes(alias));
  if (wrong === undefined) return;
  const near = nearestOf(wrong, known);
  throw new Stop(
    EXIT.noSuchFile,
    `there is no consult of ${wrong}${near === null ? '' : `; did you mean ${near}?`}`,
  );
}

/** Aliases that were asked for and have no programme: their old leaflets go. */
function failedAliases(
  { current, stopped: broken }: Workspace,
  programmes: readonly Programme[],
  aliases: readonly string[],
): string[] {
  const asked = [...new Set([...current.map(({ alias }) => alias), ...broken])].filter(
    (alias) => aliases.length === 0 || aliases.includes(alias),
  );
  return asked.filter((alias) => !programmes.some((one) => one.alias === alias)).sort();
}

function belongs({ file }: Problem, aliases: readonly string[], { consults }: Workspace): boolean {
  return aliases.some(
    (alias) =>
      file.includes(`/${alias}-r`) ||
      consults.some((one) => one.alias === alias && file.endsWith(`${one.id}.md`)),
  );
}

function sayOutcome(
  report: Report,
  out: string,
  programmes: readonly Programme[],
  failed: readonly string[],
  outcome: Outcome,
  { counts }: Workspace,
): void {
  const shown = relative(process.cwd(), out) || '.';
  for (const { alias, revision, stage, step } of programmes) {
    const where = stage.chosen === 'keep' ? 'keep-going stage' : `stage ${stage.chosen}`;
    report.say(
      `${alias}, revision ${revision}: ${where}, step ${step}  ${shown}/private/${alias}/leaflet.html, leaflet.pdf, record.html`,
    );
  }
  for (const alias of failed) {
    const gone = outcome.removed.some((path) => path.startsWith(`private/${alias}/`));
    process.stderr.write(
      `${alias}: no programme was written${gone ? '; its old leaflet was removed' : ''}.\n`,
    );
  }
  for (const path of outcome.left)
    process.stderr.write(
      `${shown}/${path} is no longer part of the site but was changed by hand; it is left.\n`,
    );
  report.say(
    `Library: ${counts.exercises} exercise cards, ${counts.advice} advice cards, ${counts.protocols} protocols  ${shown}/public/index.html`,
  );
  report.say(
    `${outcome.files.length} files in ${shown}. Only ${shown}/public is for the web; ${shown}/private is for the persons named.`,
  );
}
