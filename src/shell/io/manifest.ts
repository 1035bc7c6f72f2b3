/** What of an output folder is ours: the files of the last build with their hashes, kept as `manifest.json`. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { onDisk, putFile, refuseLink } from './disk.ts';
import { EXIT } from '../exit.ts';
import { Stop } from './stop.ts';

const NAME = 'manifest.json';

export interface Written {
  /** Relative to the output folder, `/` between folders. */
  readonly path: string;
  readonly sha256: string;
}

export interface Manifest {
  /** The files of the site. */
  readonly files: readonly Written[];
  /** Files that are no longer part of the site but were changed by hand, as we last wrote them. */
  readonly left: readonly Written[];
}

/**
 * Of the last build; null when there was none, or when it was lost or emptied: then the files tell by their marks which
 * are ours. Stops with 73 when another's file or a link is in its place.
 */
export function readManifest(out: string): Manifest | null {
  const place = join(out, NAME);
  refuseLink(place);
  if (!existsSync(place)) return null;
  const text = onDisk(place, () => readFileSync(place, 'utf8'));
  // After a power cut some disks hold a file's length and noughts.
  if (/^[\s\0]*$/.test(text)) return null;
  const { files, left } = parsed(text);
  if (!isList(files) || !isList(left))
    throw new Stop(
      EXIT.cannotCreate,
      `${place} is no manifest of ours; move it away, or choose another place with --out`,
    );
  return { files, left };
}

// It names persons by their aliases.
export function writeManifest(out: string, { files, left }: Manifest): void {
  putFile(join(out, NAME), `${JSON.stringify({ files, left }, null, 2)}\n`, true);
}

/** Whether a path lies where we write: in one of our two folders, and nowhere by way of `..`. */
export function isOurPath(path: string): boolean {
  const steps = path.split('/');
  return (
    (steps[0] === 'public' || steps[0] === 'private') &&
    steps.length > 1 &&
    steps.every((step) => step !== '' && step !== '.' && step !== '..' && !step.includes('\\'))
  );
}

function parsed(text: string): { readonly files?: unknown; readonly left?: unknown } {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null ? value : {};
  } catch {
    return {};
  }
}

// One that was tampered with must not make us remove anything of somebody else's.
function isList(value: unknown): value is readonly Written[] {
  return (
    Array.isArray(value) &&
    value.every(
      (one: Partial<Written> | null) =>
        typeof one?.path === 'string' && typeof one.sha256 === 'string' && isOurPath(one.path),
    )
  );
}
