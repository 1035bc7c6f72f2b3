/** The functions by which a build changes a disk, watched and stopped one by one, in this process. */
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

/** One change, before it is carried out. */
export interface Effect {
  readonly name: (typeof NAMES)[number];
  readonly path: string;
  /** What it goes to, of a renaming, a link and a copy; else the path. */
  readonly to: string;
  readonly bytes: Uint8Array;
  /** Of a writing: whether the bytes are on the disk when it returns. */
  readonly isFlushed: boolean;
}

const NAMES = [
  'writeFileSync',
  'appendFileSync',
  'renameSync',
  'mkdirSync',
  'rmSync',
  'rmdirSync',
  'linkSync',
  'symlinkSync',
  'copyFileSync',
  'writeSync',
  'fsyncSync',
] as const;

/** Those that need room on the disk. */
export const TAKES_ROOM: readonly string[] = [
  'writeFileSync',
  'appendFileSync',
  'mkdirSync',
  'linkSync',
  'symlinkSync',
  'copyFileSync',
];

/**
 * Runs the work while `before` is told every change below `folder` before it happens; what it throws, the change throws
 * in its place. Nothing is really flushed: the disk of a test need not be waited for.
 */
export async function watchingDisk<T>(
  folder: string,
  before: (effect: Effect) => void,
  work: () => Promise<T>,
): Promise<T> {
  const handles = new Map<number, string>();
  const real = Object.fromEntries([...NAMES, 'openSync' as const].map((name) => [name, fs[name]])) as Record<
    string,
    (...given: unknown[]) => unknown
  >;
  const patched = fs as unknown as Record<string, unknown>;
  patched['openSync'] = (path: string, ...rest: unknown[]) => {
    const handle = real['openSync']?.(path, ...rest) as number;
    handles.set(handle, path);
    return handle;
  };
  for (const name of NAMES)
    patched[name] = (first: string | number, second: unknown, third: unknown) => {
      const path = typeof first === 'number' ? (handles.get(first) ?? '') : first;
      if (!`${path}/`.startsWith(`${folder}/`)) return real[name]?.(first, second, third);
      const isWriting = name === 'writeFileSync' || name === 'appendFileSync';
      const hasTarget = ['renameSync', 'linkSync', 'copyFileSync'].includes(name);
      before({
        name,
        path,
        to: hasTarget ? String(second) : path,
        bytes: isWriting ? Buffer.from(second as string | Uint8Array) : new Uint8Array(),
        isFlushed: isWriting && (third as { flush?: boolean } | undefined)?.flush === true,
      });
      if (name === 'fsyncSync') return undefined;
      return isWriting ? real[name]?.(first, second) : real[name]?.(first, second, third);
    };
  syncBuiltinESMExports();
  try {
    return await work();
  } finally {
    Object.assign(patched, real);
    syncBuiltinESMExports();
  }
}

/** The disk as if the power had gone: from the nth change on nothing changes any more; of a writing half is there. */
export class Frozen extends Error {}

export function freezingAt(last: number): (effect: Effect) => void {
  let count = 0;
  return ({ name, path, bytes }) => {
    count += 1;
    if (count < last) return;
    if (count === last && name === 'writeFileSync') half(path, bytes);
    throw new Frozen(`frozen before ${name} ${path}`);
  };
}

// By a file handle, which is not watched where the path is not opened by name.
function half(path: string, bytes: Uint8Array): void {
  const handle = fs.openSync(path, 'w');
  fs.writevSync(handle, [bytes.subarray(0, bytes.length / 2)]);
  fs.closeSync(handle);
}

/** The disk takes no more bytes from the nth change on; names it still takes away and gives anew. */
export function fullFrom(last: number): (effect: Effect) => void {
  let count = 0;
  return ({ name, path }) => {
    count += 1;
    if (count < last || !TAKES_ROOM.includes(name)) return;
    throw Object.assign(new Error(`ENOSPC: no space left on device, ${name} '${path}'`), { code: 'ENOSPC' });
  };
}
