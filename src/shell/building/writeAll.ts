/** From what was read to the last file, the site being held. */
import { sortProblems } from '../../content/problem.ts';
import type { Outcome } from '../io/site.ts';
import { othersThan } from './asked.ts';
import type { Built } from './built.ts';
import { consultsRead, finishedLibrary, keepFinished, without, writeNext, type Kept } from './kept.ts';
import { NOTICE_FILE } from './work.ts';
import { writeLibrary } from './writeLibrary.ts';
import { writePeople } from './writePeople.ts';
import type { Writing } from './writing.ts';

/** `withdrawn`: aliases whose leaflets this build has taken away. */
export async function writeAll(
  writing: Writing,
  withdrawn: readonly string[],
): Promise<Omit<Built, 'isClosed'>> {
  const { site, work, workspace, written } = writing;
  await writePeople(writing, await writeLibrary(writing));
  const kept = keepFinished(site, work.folders.out, work.reuse, work.ask);
  site.write(NOTICE_FILE);
  const outcome = site.finish(othersThan(work.ask.aliases));
  writeDown(writing, kept, withdrawn, outcome);
  return {
    workspace,
    programmes: written.programmes.sort((a, b) => (a.alias < b.alias ? -1 : 1)),
    failed: written.failed.sort(),
    problems: sortProblems([...workspace.asked, ...written.problems]),
    outcome,
    setAside: outcome.setAside,
    sealed: written.sealed.map(({ alias, words }) => ({ alias, words })),
  };
}

/** What the next build may keep. */
function writeDown(
  { workspace, work, written }: Writing,
  kept: Kept,
  withdrawn: readonly string[],
  { setAside }: Outcome,
): void {
  const { folders, ask, sources, ledger, reuse } = work;
  const isWhole = ask.aliases.length === 0;
  const others = isWhole ? {} : without(ledger.people, [...withdrawn, ...written.failed, ...setAside]);
  writeNext(folders.out, ledger, {
    library: isWhole
      ? (kept.library ?? finishedLibrary(folders.out, reuse, workspace, written.library))
      : ledger.library,
    consults: { ...(isWhole ? {} : ledger.consults), ...consultsRead(sources, reuse) },
    people: { ...others, ...kept.people, ...Object.fromEntries(written.people) },
  });
}
