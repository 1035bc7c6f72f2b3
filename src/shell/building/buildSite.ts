/** The work of a build, from reading to the last file; what is said of it is said by the commands. */
import { logOfName } from '../../content/log/readLog.ts';
import { nameOf } from '../../content/fileName.ts';
import type { Folders } from '../io/folders.ts';
import { readLedger, type Ledger } from '../io/ledger.ts';
import { reuseOf } from '../io/reuse.ts';
import { readSealedList } from '../io/sealedList.ts';
import { lookAt, ofPart, type Sources } from '../io/sources.ts';
import type { BuildAsk } from './buildAsk.ts';
import { buildRest } from './buildRest.ts';
import type { Built } from './built.ts';
import { untilSettled } from './haste.ts';
import { keepAll, readsNothing } from './keepAll.ts';
import { NotAsLeft } from './kept.ts';

/**
 * Builds everything, or with aliases only theirs; an alias there is no consult of stops with 66. What stands already by
 * the hash of all it comes from is kept.
 */
export async function buildSite(
  folders: Folders,
  ask: BuildAsk,
  distrusted: ReadonlySet<string> = new Set(),
): Promise<Built> {
  const looked = lookAt(folders);
  const ledger = readLedger(folders.out);
  const sources = ofPart(looked, ask.flags.part, ledger);
  const reuse = reuseOf(folders.out, sources, ledger, {
    ...ask,
    distrusted: new Set([...distrusted, ...alwaysMade(folders.out, looked, ledger, ask)]),
  });
  const work = { folders, ask, looked, sources, ledger, reuse };
  if (Object.keys(ledger.people).some((alias) => !reuse.keys.has(alias))) await untilSettled(ask);
  try {
    const { library } = reuse;
    return await (library !== null && readsNothing(work) ? keepAll(work, library) : buildRest(work));
  } catch (error) {
    if (!(error instanceof NotAsLeft)) throw error;
    const again = await buildSite(folders, ask, new Set([...distrusted, ...error.whose]));
    return withSetAside(again, error.setAside);
  }
}

/**
 * Persons whose files are made again whatever the ledger says: of a log what was written may stop a leaflet, and a sealed
 * page follows from the day and from the secret besides.
 */
function alwaysMade(out: string, { consults }: Sources, { people }: Ledger, { sealing }: BuildAsk): string[] {
  const isSealed = (sealing ?? null) !== null || readSealedList(out).length > 0;
  return isSealed
    ? Object.keys(people)
    : consults.flatMap(({ file }) => logOfName(nameOf(file))?.alias ?? []);
}

/** Also those whose sets were put aside before the build began anew. */
function withSetAside(built: Built, before: readonly string[]): Built {
  const setAside = [...new Set([...before, ...built.setAside])].sort();
  return { ...built, setAside, outcome: built.outcome === null ? null : { ...built.outcome, setAside } };
}
