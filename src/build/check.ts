/** Reads every file, makes every programme in memory, and prints what is wrong. Writes nothing. */
import { sortProblems } from '../content/problem.ts';
import { EXIT } from './exit.ts';
import type { Flags } from './flags.ts';
import { foldersOf } from './folders.ts';
import { letterProblems, makeProgrammes } from './make.ts';
import { reportFor } from './report.ts';
import { paperShelf, version } from './shelf.ts';
import { onDay } from './today.ts';
import { allProblems, readWorkspace } from './workspace.ts';
import { logoOf } from './logo.ts';

export async function check(flags: Flags): Promise<number> {
  const folders = foldersOf(flags);
  const report = reportFor(flags);
  onDay(flags);
  const workspace = readWorkspace(folders);
  const found = allProblems(workspace);
  if (workspace.library !== null) {
    const { library } = workspace;
    const logo = await logoOf(library.clinic, folders.content);
    if (logo !== null && 'code' in logo) found.push(workspace.asProblem(logo));
    const made = makeProgrammes(workspace.current, workspace, {
      library,
      models: new Map(),
      loadleaf: version(),
    });
    found.push(...made.problems);
    if (made.programmes.length > 0) {
      const paper = await paperShelf(null);
      for (const programme of made.programmes)
        found.push(...(await letterProblems(programme, paper, workspace)));
    }
  }
  const problems = sortProblems(found);
  const ok = problems.every(({ severity }) => severity !== 'error');
  report.problems(problems, workspace.files);
  const { exercises, advice, protocols, consults } = workspace.counts;
  report.say(
    `${exercises} exercise cards, ${advice} advice cards, ${protocols} protocols, ${consults} consults: ${ok ? 'no errors' : `${problems.filter(({ severity }) => severity === 'error').length} errors`}`,
  );
  report.answer({ ok, counts: workspace.counts, problems });
  return ok ? EXIT.good : EXIT.content;
}
