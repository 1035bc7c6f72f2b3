/**
 * The paths a repository has taken in, read from its index (gitformat-index(5)), for where git itself cannot be asked. In
 * formats 2 and 3 they stand in full; format 4 writes of each only what differs from the one before. A split index has
 * most of them in `sharedindex.*` beside it; a sparse one has a folder in place of what is in it.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Whether something below the folder is taken in. `path`: the folder from the top of the repository, `/` between steps. */
export function hasTaken(gitFolder: string, path: string): boolean {
  return indexesIn(gitFolder).some((bytes) =>
    versionOf(bytes) === 4
      ? pathsOf(bytes, hashBytes(gitFolder)).some((one) => isAround(one, path))
      : bytes.includes(`${path}/`) || sparseAround(bytes, path),
  );
}

// A path that ends with a stroke is a folder of which the index holds nothing more.
function isAround(taken: string, path: string): boolean {
  return taken.startsWith(`${path}/`) || (taken.endsWith('/') && `${path}/`.startsWith(taken));
}

/** In full paths: `a/` above `a/b`, ended by a nought. */
function sparseAround(bytes: Buffer, path: string): boolean {
  const steps = path.split('/');
  return steps.some((_, index) => bytes.includes(`${steps.slice(0, index + 1).join('/')}/\0`));
}

function indexesIn(gitFolder: string): Buffer[] {
  if (!existsSync(gitFolder)) return [];
  return readdirSync(gitFolder)
    .filter((name) => name === 'index' || name.startsWith('sharedindex.'))
    .map((name) => readFileSync(join(gitFolder, name)))
    .filter((bytes) => bytes.subarray(0, 4).toString('latin1') === 'DIRC');
}

function versionOf(bytes: Buffer): number {
  return bytes.length < 12 ? 0 : bytes.readUInt32BE(4);
}

// Times, device, inode, mode, owner, group and size of a file, before its hash.
const STAT_BYTES = 40;
const EXTENDED = 0x4000;

/** Of an index of format 4; as far as it can be read. */
function pathsOf(bytes: Buffer, hash: number): string[] {
  const paths: string[] = [];
  let before = Buffer.alloc(0);
  let at = 12;
  for (let left = bytes.readUInt32BE(8); left > 0; left -= 1) {
    const flags = at + STAT_BYTES + hash;
    if (flags + 4 > bytes.length) break;
    at = flags + ((bytes.readUInt16BE(flags) & EXTENDED) === 0 ? 2 : 4);
    const dropped = numberAt(bytes, at);
    const end = bytes.indexOf(0, dropped.next);
    if (end === -1) break;
    before = Buffer.concat([
      before.subarray(0, Math.max(0, before.length - dropped.value)),
      bytes.subarray(dropped.next, end),
    ]);
    paths.push(before.toString('utf8'));
    at = end + 1;
  }
  return paths;
}

/** A number of any length as in the offsets of a pack: seven bits a byte, one added for each byte that follows. */
function numberAt(bytes: Buffer, at: number): { readonly value: number; readonly next: number } {
  let next = at;
  let byte = bytes[next] ?? 0;
  let value = byte & 0x7f;
  for (next += 1; (byte & 0x80) !== 0 && next < bytes.length; next += 1) {
    byte = bytes[next] ?? 0;
    value = (value + 1) * 128 + (byte & 0x7f);
  }
  return { value, next };
}

/** SHA-1 unless the repository says otherwise. */
function hashBytes(gitFolder: string): number {
  const config = join(gitFolder, 'config');
  const text = existsSync(config) ? readFileSync(config, 'utf8') : '';
  return /^\s*objectformat\s*=\s*sha256\s*$/im.test(text) ? 32 : 20;
}
