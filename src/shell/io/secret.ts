/** The clinic secret, from which the keys of all sealed leaflets come: a file of its own, outside every repository. */
import { randomBytes } from 'node:crypto';
import { existsSync, lstatSync, readFileSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { SECRET_OCTETS, secretOf, secretText } from '../../outputs/sealed/secret.ts';
import { EXIT } from '../exit.ts';
import { keepsMode, makeFolder, onDisk, PRIVATE_FILE_MODE, PRIVATE_FOLDER_MODE, realPath } from './disk.ts';
import { repositoryAround } from './gitIgnore.ts';
import { Stop } from './stop.ts';

/** Where it lies when no other place is named: the folder of settings of this user (XDG Base Directory, from memory). */
export function secretPlace(named: string | null): string {
  if (named !== null) return resolve(named);
  const settings = process.env['XDG_CONFIG_HOME'] ?? '';
  return join(settings === '' ? join(homedir(), '.config') : settings, 'loadleaf', 'secret');
}

/** Writes a new one, 256 bits of chance, for this user alone. Never over another: with it every link would change. */
export function makeSecret(place: string): void {
  if (existsSync(place))
    throw new Stop(
      EXIT.cannotCreate,
      `${place} is there already; nothing was written, since with another secret every link would be another`,
    );
  const repository = repositoryAround(realPath(dirname(place)));
  if (repository !== null)
    throw new Stop(EXIT.usage, `${place} lies in the repository ${repository}; the secret must lie outside`);
  onDisk(place, () => {
    makeFolder(dirname(place), PRIVATE_FOLDER_MODE);
    writeFileSync(place, secretText(randomBytes(SECRET_OCTETS)), {
      flag: 'wx',
      mode: PRIVATE_FILE_MODE,
    });
    keepsMode(place, PRIVATE_FILE_MODE);
  });
}

/** Stops with 66 where there is none, 64 where others may read it or a repository holds it, 65 where it is none. */
export function readSecret(place: string): Uint8Array<ArrayBuffer> {
  if (!existsSync(place))
    throw new Stop(EXIT.noSuchFile, `there is no secret ${place}; make one with: loadleaf new secret`);
  if (process.platform !== 'win32' && (lstatSync(realPath(place)).mode & 0o077) !== 0)
    throw new Stop(
      EXIT.usage,
      `others may read the secret ${place}; take that away with: chmod 600 ${place}`,
    );
  const repository = repositoryAround(realPath(dirname(place)));
  if (repository !== null)
    throw new Stop(
      EXIT.usage,
      `the secret ${place} lies in the repository ${repository}; move it out of there`,
    );
  const secret = secretOf(onDisk(place, () => readFileSync(place, 'utf8')));
  if (secret === null)
    throw new Stop(
      EXIT.content,
      `${place} is no secret of ours: one line that begins with loadleaf-secret-1`,
    );
  return secret;
}
