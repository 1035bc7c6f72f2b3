/** Sealed leaflets among the files of a site: made anew, left as they are, or replaced by a page that says whom to ring. */
import { sealedWords } from '../../messages/en/patient/sealed.ts';
import type { Sealing } from '../../post/sealedFiles.ts';
import type { IsoDate } from '../../units/date.ts';
import type { Flags } from '../flags.ts';
import { readSecret, secretPlace } from '../io/secret.ts';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isRegularFile } from '../io/people.ts';
import { WITHDRAWN_SIGN } from '../io/privateInPublic.ts';
import { readSealedList, type SealedPlace } from '../io/sealedList.ts';
import { readSealedAssets } from '../io/assets.ts';
import type { OutFile } from '../io/site.ts';
import type { Workspace } from '../io/workspace.ts';
import { askedIn } from './asked.ts';

/** Null for a build that seals nothing. Stops as `readSecret` does. */
export async function sealingOf({ site, secret }: Pick<Flags, 'site' | 'secret'>): Promise<Sealing | null> {
  if (site === null) return null;
  return { site, secret: readSecret(secretPlace(secret)), dress: await readSealedAssets() };
}

/** Where a person's leaflet stands, by the secret alone. */
async function sealedPlace(alias: string, { secret }: Pick<Sealing, 'secret'>): Promise<SealedPlace> {
  const { sealingKeys } = await import('../../outputs/sealed/keys.ts');
  return { alias, id: (await sealingKeys(secret, alias)).id };
}

/** What stands sealed already, and what this build may seal. */
export async function sealedPlaces(
  out: string,
  { current }: Workspace,
  aliases: readonly string[],
  sealing: Sealing | null,
): Promise<SealedPlace[]> {
  const list = readSealedList(out);
  if (sealing === null) return list;
  const asked = current.map(({ alias }) => alias).filter(askedIn(aliases));
  const now = await Promise.all(asked.map((alias) => sealedPlace(alias, sealing)));
  return [...list.filter(({ id }) => now.every((place) => place.id !== id)), ...now];
}

/**
 * The pages that take the place of sealed leaflets: of those whose screen blocks, whose log leads to "stop and be seen",
 * whose consult says so or whose day has come; and, where all consults were read (`isWhole`), of those who have none any
 * more. Any other Problem leaves the last good one, a newest consult that cannot be read among them (`stillOpen`).
 */
export async function withdrawnSealed(
  out: string,
  workspace: Workspace,
  on: IsoDate,
  isWhole: boolean,
): Promise<OutFile[]> {
  const gone = readSealedList(out)
    .filter(({ alias }) => isWithdrawn(alias, workspace, on, isWhole))
    // Of somebody who was never sealed nothing need be said.
    .filter(({ id }) => isRegularFile(join(out, 'public', 'for', id, 'index.html')));
  if (gone.length === 0) return [];
  const { assets, withdrawnWorker } = await readSealedAssets();
  const [{ withdrawnPage }, { filesAt }] = await Promise.all([
    import('../../outputs/html/sealed/sealedPage.ts'),
    import('../../post/sealedFiles.ts'),
  ]);
  const page = withdrawnPage(sealedWords(workspace.clinic ?? NO_CLINIC), assets);
  return gone.flatMap(({ id }) => filesAt(id, page, withdrawnWorker));
}

// The clinic file has an error; who it is stands on the paper and in the message.
const NO_CLINIC = { name: 'Your clinic, as it stands on your leaflet', contact: [] };

export function isWithdrawn(
  alias: string,
  workspace: Pick<Workspace, 'blocked' | 'stoppedWithdrawn' | 'toBeSeen' | 'current' | 'aliases'>,
  on: IsoDate,
  isWhole: boolean,
): boolean {
  const { blocked, stoppedWithdrawn, toBeSeen, current, aliases } = workspace;
  if ([...blocked, ...stoppedWithdrawn, ...toBeSeen.map((one) => one.alias)].includes(alias)) return true;
  const consult = current.find((one) => one.alias === alias);
  if (consult === undefined) return isWhole && ![...aliases.values()].includes(alias);
  return consult.withdraw === true || (consult.withdrawOn !== undefined && consult.withdrawOn <= on);
}

/** Of these, whose sealed leaflet can still be opened by whoever has the link. */
export function stillOpen(out: string, aliases: readonly string[]): string[] {
  return readSealedList(out)
    .filter(
      ({ alias, id }) => aliases.includes(alias) && isOpen(join(out, 'public', 'for', id, 'index.html')),
    )
    .map(({ alias }) => alias);
}

function isOpen(page: string): boolean {
  return isRegularFile(page) && !readFileSync(page, 'utf8').includes(WITHDRAWN_SIGN);
}
