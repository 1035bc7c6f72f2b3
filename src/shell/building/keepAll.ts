/** A build that has nothing to make: all that was asked for stands. */
import { closePrivate, openPrivate } from '../io/privacy.ts';
import { checkPrivatePlace } from '../io/privatePlace.ts';
import { orTakenAway } from '../io/lastResort.ts';
import type { FinishedLibrary } from '../io/ledger.ts';
import { locked } from '../io/lock.ts';
import { openSite } from '../io/site.ts';
import { othersThan } from './asked.ts';
import type { Built } from './built.ts';
import { consultsRead, keepFinished, keptProgrammes, writeNext } from './kept.ts';
import { peopleWithout, withdrawGone } from './withdraw.ts';
import { mannerOf, NOTICE_FILE, stopUnlessStill, type Work } from './work.ts';

/** Everything asked for was made from what lies there now; what has no consult any more goes all the same. */
export async function keepAll(
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

/** Whether no file beside the library has to be looked into. */
export function readsNothing({ ask, sources, reuse: { finished, leftOut } }: Work): boolean {
  return (
    ask.aliases.every((alias) => finished.has(alias)) &&
    sources.consults.every(({ file }) => leftOut.has(file))
  );
}
