/** Where leaflets of persons must not be built: below what a web server hands out, or where a repository would take them in. */
import { existsSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { contains, realPath } from './disk.ts';
import { EXIT } from '../exit.ts';
import type { Folders } from './folders.ts';
import { hasTakenIn, isLeftOut } from './git.ts';
import { repositoryAround } from './gitIgnore.ts';
import { Stop } from './stop.ts';

/** Stops with 64 and the cure; nothing is asked of the folder but names. */
export function checkPrivatePlace({ consults, out }: Pick<Folders, 'consults' | 'out'>): void {
  const place = realPath(out);
  const served = servedBy(place);
  if (served !== null)
    throw new Stop(
      EXIT.usage,
      `a web server may hand out ${place} (${served}), and private leaflets would lie there; build with --out into a folder that no server reads, and copy only its public/ to the server`,
    );
  const repository = repositoryAround(place);
  // In the repository of the consults themselves they are at home; our own list keeps them out of it.
  if (repository === null || contains(repository, realPath(consults))) return;
  const folder = join(place, 'private');
  if (hasTakenIn(folder, repository))
    throw new Stop(
      EXIT.usage,
      `the repository ${repository} has taken in files of ${folder}, and the consults are not of it; build with --out into a folder outside, and take those files out of the repository`,
    );
  // Whatever the names of the files within may be.
  if (!isLeftOut(join(folder, 'loadleaf-alias', 'loadleaf-file'), repository))
    throw new Stop(
      EXIT.usage,
      `the repository ${repository} would take in the private leaflets, and the consults are not of it; build with --out into a folder outside, or put the line /private/ into ${join(place, '.gitignore')}`,
    );
}

// From memory: where Apache, nginx, lighttpd and IIS have their pages as they are installed, and providers theirs.
const SERVED_NAMES = ['public_html', 'htdocs', 'wwwroot', 'inetpub'];
const SERVED_PLACES = ['/var/www', '/srv/www', '/srv/http', '/usr/share/nginx', '/Library/WebServer'];
// What only a web server or a host of pages reads, at the top of what it hands out.
const SIGNS = ['.htaccess', 'web.config', '.well-known', '.nojekyll', 'CNAME', '_headers', '_redirects'];
// What a server shows when it is asked for a folder; in folders further up it may belong to a workshop of pages.
const INDEXES = ['index.html', 'index.htm', 'index.php'];

/** What says that the folder, one above it or the `public` in it is a server's; null for nothing. */
function servedBy(out: string): string | null {
  const known = SERVED_PLACES.find((place) => contains(place, out));
  if (known !== undefined) return `it lies in ${known}`;
  for (let at = out; ; at = dirname(at)) {
    if (SERVED_NAMES.includes(basename(at).toLowerCase())) return `it lies in ${at}`;
    const sign = found(at, SIGNS);
    if (sign !== null) return `there is ${sign}`;
    if (at === dirname(at)) break;
  }
  const sign = found(out, INDEXES) ?? found(join(out, 'public'), SIGNS);
  return sign === null ? null : `there is ${sign}`;
}

function found(folder: string, names: readonly string[]): string | null {
  const name = names.find((one) => existsSync(join(folder, one)));
  return name === undefined ? null : join(folder, name);
}
