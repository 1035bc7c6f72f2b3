/**
 * Writing: each file beside its place and then renamed, the manifest last. What the manifest does not name, or what
 * was changed by hand since, is never removed.
 */
import { createHash } from 'node:crypto';
import {
  existsSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  renameSync,
  rmSync,
  rmdirSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { EXIT } from './exit.ts';
import { Stop } from './fault.ts';

const MANIFEST = 'manifest.json';

export interface OutFile {
  /** Relative to the output folder, `/` between folders. */
  readonly path: string;
  readonly bytes: Uint8Array | string;
}

export interface Written {
  readonly path: string;
  readonly sha256: string;
}

export interface Outcome {
  /** All files of the site after this build, in the order of their paths. */
  readonly files: readonly Written[];
  readonly removed: readonly string[];
  /** No longer part of the site, but changed by hand since we wrote them. */
  readonly left: readonly string[];
}

/** `kept`: paths of the last build that stay although this one did not make them (a build of some aliases only). */
export function writeSite(out: string, made: readonly OutFile[], kept: (path: string) => boolean): Outcome {
  const before = readManifest(out);
  const now = new Map<string, string>();
  for (const [path, sha256] of before)
    if (kept(path) && hashOnDisk(out, path) !== null) now.set(path, sha256);
  for (const file of made) now.set(file.path, writeOne(out, file));
  const gone = [...before].filter(([path]) => !now.has(path));
  const removed = gone.filter(([path, sha256]) => hashOnDisk(out, path) === sha256).map(([path]) => path);
  const left = gone
    .filter(([path]) => !removed.includes(path) && existsSync(join(out, path)))
    .map(([path]) => path);
  for (const path of removed) remove(out, path);
  const files = [...now]
    .map(([path, sha256]) => ({ path, sha256 }))
    .sort((a, b) => (a.path < b.path ? -1 : 1));
  writeOne(out, { path: MANIFEST, bytes: `${JSON.stringify({ files }, null, 2)}\n` });
  return { files, removed, left };
}

/** Path to SHA-256 of what the last build wrote; empty when there was none. */
export function readManifest(out: string): ReadonlyMap<string, string> {
  const text = existsSync(join(out, MANIFEST)) ? readFileSync(join(out, MANIFEST), 'utf8') : '{"files":[]}';
  try {
    const { files } = JSON.parse(text) as { files: readonly Written[] };
    return new Map(files.filter(({ path }) => inside(path)).map(({ path, sha256 }) => [path, sha256]));
  } catch {
    throw new Stop(
      EXIT.cannotWrite,
      `${join(out, MANIFEST)} is not a manifest of ours; move it away or choose another --out`,
    );
  }
}

// A manifest that was tampered with must not make us remove anything outside the folder.
function inside(path: string): boolean {
  return !path.startsWith('/') && !path.includes('\\') && !path.split('/').includes('..');
}

function writeOne(out: string, { path, bytes }: OutFile): string {
  const sha256 = hash(bytes);
  if (hashOnDisk(out, path) === sha256) return sha256;
  const place = join(out, path);
  const beside = `${place}.part`;
  try {
    mkdirSync(dirname(place), { recursive: true });
    writeFileSync(beside, bytes, { flush: true });
    renameSync(beside, place);
  } catch (error) {
    rmSync(beside, { force: true });
    throw new Stop(EXIT.cannotWrite, `cannot write ${place}: ${(error as Error).message}`);
  }
  return sha256;
}

function hashOnDisk(out: string, path: string): string | null {
  const place = join(out, path);
  return existsSync(place) ? hash(readFileSync(place)) : null;
}

function hash(bytes: Uint8Array | string): string {
  return createHash('sha256').update(bytes).digest('hex');
}

function remove(out: string, path: string): void {
  rmSync(join(out, path), { force: true });
  for (let folder = dirname(path); folder !== '.'; folder = dirname(folder)) {
    if (readdirSync(join(out, folder)).length > 0) return;
    rmdirSync(join(out, folder));
  }
}
