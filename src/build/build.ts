/** The command that writes the site: the library's public part, and a leaflet and record for every consult. */
import { buildSite, type Built } from './buildSite.ts';
import { libraryText } from './counted.ts';
import { EXIT } from './exit.ts';
import type { Flags } from './flags.ts';
import { foldersOf } from './folders.ts';
import type { Outcome } from './site.ts';
import type { Report } from './report.ts';
import { shownPath } from './shownPath.ts';

export const NOT_BUILT = 'The library has errors: nothing was built, and nothing was changed.';

/** Exit 65 when a consult has a Problem (the others are written), or a library file (nothing is). */
export async function build(flags: Flags, aliases: readonly string[], report: Report): Promise<number> {
  const folders = foldersOf(flags);
  const built = await buildSite(folders, aliases);
  const isGood = await tellOf(built, folders.out, report);
  report.answer({
    ok: isGood,
    out: folders.out,
    files: built.outcome?.files ?? [],
    programmes: built.programmes.map(({ alias, revision, stage, step }) => ({
      alias,
      revision,
      stage: stage.chosen,
      step,
    })),
    problems: built.problems,
  });
  return isGood ? EXIT.good : EXIT.content;
}

/** Prints what was built and what stood against the rest; whether there was no error. */
export async function tellOf(built: Built, out: string, report: Report): Promise<boolean> {
  const { workspace, problems, outcome } = built;
  await report.problems(problems, workspace.files);
  const shown = shownPath(out);
  if (outcome === null) report.warn(NOT_BUILT);
  else tellWritten(built, outcome, shown, report);
  return outcome !== null && problems.every(({ severity }) => severity !== 'error');
}

function tellWritten(
  { programmes, failed, workspace: { counts } }: Built,
  outcome: Outcome,
  shown: string,
  report: Report,
): void {
  for (const { alias, revision, stage, step } of programmes) {
    const where = stage.chosen === 'keepGoing' ? 'keep-going stage' : `stage ${stage.chosen}`;
    report.say(
      `${alias}, revision ${revision}: ${where}, step ${step}  ${shown}/private/${alias}/leaflet.html, leaflet.pdf, record.html`,
    );
  }
  for (const alias of failed) report.warn(`${alias}: no programme was written${goneText(alias, outcome)}.`);
  tellRest(outcome, failed, shown, report);
  if (outcome.files.some(({ path }) => path === 'public/index.html'))
    report.say(`Library: ${libraryText(counts)}  ${shown}/public/index.html`);
  report.say(
    `${outcome.files.length} files in ${shown}. Only ${shown}/public is for the web; ${shown}/private is for the persons named.`,
  );
}

/** Leaflets without a consult, and what hands have changed. */
function tellRest(
  { removed, left, restored }: Outcome,
  failed: readonly string[],
  shown: string,
  report: Report,
): void {
  const gone = new Set(removed.flatMap((path) => /^private\/([^/]+)\//.exec(path)?.[1] ?? []));
  for (const alias of gone)
    if (!failed.includes(alias))
      report.warn(`${alias}: there is no consult any more; its old leaflet was removed.`);
  for (const path of left)
    report.warn(`${shown}/${path} is no longer part of the site but was changed by hand; it is left.`);
  for (const path of restored) report.warn(`${shown}/${path} was changed by hand; it is written anew.`);
}

/** What became of the leaflet of somebody who may follow it no longer. */
function goneText(alias: string, { removed, left }: Outcome): string {
  const isTheirs = (path: string) => path.startsWith(`private/${alias}/`);
  if (!removed.some(isTheirs)) return '';
  return `; its old leaflet was removed${left.some(isTheirs) ? ', but for what was changed by hand' : ''}`;
}
