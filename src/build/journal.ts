/**
 * What a build is about to write, line by line before it writes it. A build that was killed has no manifest of its
 * files; by its journal the next one knows them as ours.
 */
import { appendFileSync, existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { onDisk, PRIVATE_FILE_MODE } from './disk.ts';
import { isOurPath, type Written } from './manifest.ts';

const NAME = '.loadleaf-journal';

/** Of builds that did not come to their end; empty when the last one did. */
export function readJournal(out: string): readonly Written[] {
  const place = join(out, NAME);
  if (!existsSync(place)) return [];
  return readFileSync(place, 'utf8')
    .split('\n')
    .flatMap((line) => {
      const [, sha256, path] = /^([0-9a-f]{64}) {2}(.+)$/.exec(line) ?? [];
      // The last line may be cut off; its file was not begun then.
      return sha256 !== undefined && path !== undefined && isOurPath(path) ? [{ path, sha256 }] : [];
    });
}

/** In the form of sha256sum, so that a person can check a folder by it. */
export function addToJournal(out: string, { path, sha256 }: Written): void {
  const place = join(out, NAME);
  onDisk(place, () => appendFileSync(place, `${sha256}  ${path}\n`, { mode: PRIVATE_FILE_MODE }));
}

/** The manifest says it all. */
export function endJournal(out: string): void {
  rmSync(join(out, NAME), { force: true });
}
