/** The command that looks through a folder that is to be published, and says what in it belongs to a person. Writes nothing. */
import { lstatSync, readFileSync, readdirSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { isFolder, onDisk } from '../io/disk.ts';
import { EXIT } from '../exit.ts';
import type { Flags } from '../flags.ts';
import { peopleIn, isRegularFile } from '../io/people.ts';
import type { Report } from '../report.ts';
import { privateIn, type Found } from '../io/privateInPublic.ts';
import { DESK_SCRIPTS, deskScript } from '../io/assets.ts';
import { Stop } from '../io/stop.ts';

/** Exit 65 where anything private and unsealed is in the folder, a link to elsewhere, or the key of a sealed leaflet. */
export async function checkPublic(folder: string, flags: Flags, report: Report): Promise<number> {
  const top = resolve(folder);
  if (!isFolder(top)) throw new Stop(EXIT.noSuchFile, `there is no folder ${folder}; name it with --public`);
  const secrets = [...new Set([dirname(top), resolve(flags.out)].flatMap(keysBeside))];
  const files = filesIn(top);
  const found = files.flatMap((file) => foundIn(top, file, secrets));
  for (const { path, why } of found) report.warn(`${path}: ${why}`);
  if (found.length === 0) report.say(`${files.length} files in ${folder}: nothing private in them.`);
  report.answer({ ok: found.length === 0, public: top, files: files.length, found });
  return found.length === 0 ? EXIT.good : EXIT.content;
}

function foundIn(top: string, file: string, secrets: readonly string[]): Found[] {
  const path = relative(top, file).split(sep).join('/');
  if (!lstatSync(file).isFile()) return [{ path, why: 'a link, which may lead to anything' }];
  const bytes = onDisk(file, () => readFileSync(file));
  return isOwnProgram(path, bytes) ? [] : privateIn(path, bytes, secrets);
}

/** The desk's programs hold the words round a person's values, and birds among the words that are said by telephone. */
function isOwnProgram(path: string, bytes: Buffer): boolean {
  return path.startsWith('desk/') && DESK_SCRIPTS.some((name) => bytes.equals(Buffer.from(deskScript(name))));
}

/** Everything but folders; links are not followed. */
function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => !entry.isDirectory())
    .map((entry) => join(entry.parentPath, entry.name))
    .sort();
}

/** The keys in the links of an output folder, which must be nowhere else. */
function keysBeside(out: string): string[] {
  return peopleIn(out).flatMap((alias) => {
    const place = join(out, 'private', alias, 'link.txt');
    const [, key] = isRegularFile(place)
      ? (/#([A-Za-z0-9_-]{43})/.exec(readFileSync(place, 'utf8')) ?? [])
      : [];
    return key === undefined ? [] : [key];
  });
}
