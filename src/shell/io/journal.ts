/**
 * What a build is about to write, line by line before it writes it. A build that was killed has no manifest of its
 * files; by its journal the next one knows them as ours.
 */
import { appendFileSync, existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { onDisk, PRIVATE_FILE_MODE, refuseLink, syncFolder } from './disk.ts';
import { isOurPath, type Written } from './manifest.ts';

const NAME = '.loadleaf-journal';

/** Of builds that did not come to their end; empty when the last one did. Stops with 73 when it is a link. */
export function readJournal(out: string): readonly Written[] {
  const place = join(out, NAME);
  refuseLink(place);
  if (!existsSync(place)) return [];
  return readFileSync(place, 'utf8')
    .split('\n')
    .flatMap((line) => {
      const [, sha256, path] = /^([0-9a-f]{64}) {2}(.+)$/.exec(line) ?? [];
      // The last line may be cut off; its file was not begun then.
      return sha256 !== undefined && path !== undefined && isOurPath(path) ? [{ path, sha256 }] : [];
    });
}

/** In the form of sha256sum, so that a person can check a folder by it. `flush`: it outlasts a power cut. */
export function addToJournal(out: string, written: readonly Written[], flush: boolean): void {
  const place = join(out, NAME);
  const lines = written.map(({ path, sha256 }) => `${sha256}  ${path}\n`).join('');
  const isNew = !existsSync(place);
  onDisk(place, () => {
    appendFileSync(place, lines, { flush, mode: PRIVATE_FILE_MODE });
    if (flush && isNew) syncFolder(out);
  });
}

/** The manifest says it all. */
export function endJournal(out: string): void {
  rmSync(join(out, NAME), { force: true });
}
