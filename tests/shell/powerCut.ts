/**
 * What a disk may hold after a power cut. POSIX promises only this: bytes that were flushed are there, and so are the names
 * of a folder that was flushed. Of what came after, each folder holds some first part of its changes, and a file that was
 * not flushed is whole, half or empty.
 */
import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import type { Effect } from './diskEffects.ts';

interface FileNode {
  readonly kind: 'file';
  bytes: Uint8Array;
  isFlushed: boolean;
}

interface FolderNode {
  readonly kind: 'folder';
  names: Map<string, Node>;
  /** What is on the disk for certain, and what was changed since, in its order. */
  durable: Map<string, Node>;
  pending: ((names: Map<string, Node>) => void)[];
}

type Node = FileNode | FolderNode;

/** A disk in memory that is told every effect. */
export interface ModelDisk {
  apply(effect: Effect): void;
  /** Writes what may be left into a folder. `pick(n)`: a whole number from 0 to n, of each folder and file that is in doubt. */
  leave(folder: string, pick: (most: number) => number): void;
}

/** The model of what now lies below `top`, all of it safe; effects name paths as from there, beginning with a stroke. */
export function modelOf(top: string): ModelDisk {
  const root = loaded(top);
  const nodeAt = (path: string): Node | undefined => {
    if (path === '' || path === '/') return root;
    const parent = nodeAt(dirname(path));
    return parent?.kind === 'folder' ? parent.names.get(basename(path)) : undefined;
  };
  const change = (path: string, node: Node | null): void => {
    const parent = nodeAt(dirname(path));
    if (parent?.kind !== 'folder') throw new Error(`no folder for ${path}`);
    const name = basename(path);
    const act = (names: Map<string, Node>) =>
      void (node === null ? names.delete(name) : names.set(name, node));
    act(parent.names);
    parent.pending.push(act);
  };
  const rename = (path: string, to: string): void => {
    const node = nodeAt(path);
    const parent = nodeAt(dirname(path));
    if (node === undefined || parent?.kind !== 'folder' || dirname(path) !== dirname(to))
      throw new Error(`${path} cannot become ${to}`);
    // One change, whole or not at all.
    const act = (names: Map<string, Node>) => {
      names.delete(basename(path));
      names.set(basename(to), node);
    };
    act(parent.names);
    parent.pending.push(act);
  };
  const write = (path: string, bytes: Uint8Array, isFlushed: boolean): void => {
    const there = nodeAt(path);
    if (there?.kind === 'file') Object.assign(there, { bytes, isFlushed });
    else change(path, { kind: 'file', bytes, isFlushed });
  };
  const remove = (path: string): void => {
    const node = nodeAt(path);
    if (node === undefined) return;
    if (node.kind === 'folder') for (const name of [...node.names.keys()]) remove(join(path, name));
    change(path, null);
  };
  const bytesAt = (path: string): Uint8Array => {
    const node = nodeAt(path);
    return node?.kind === 'file' ? node.bytes : new Uint8Array();
  };
  return {
    apply: ({ name, path, to, bytes, isFlushed }) => {
      if (name === 'mkdirSync') change(path, folderNode(new Map()));
      if (name === 'writeFileSync') write(path, bytes, isFlushed);
      if (name === 'appendFileSync') write(path, Buffer.concat([bytesAt(path), bytes]), isFlushed);
      if (name === 'renameSync') rename(path, to);
      if (name === 'linkSync') change(to, nodeAt(path) ?? null);
      if (name === 'copyFileSync') write(to, bytesAt(path), false);
      if (name === 'rmSync' || name === 'rmdirSync') remove(path);
      if (name === 'fsyncSync') flush(nodeAt(path));
    },
    leave: (folder, pick) => leave(root, folder, pick),
  };
}

function flush(node: Node | undefined): void {
  if (node?.kind !== 'folder') return;
  node.durable = new Map(node.names);
  node.pending = [];
}

function leave({ durable, pending }: FolderNode, folder: string, pick: (most: number) => number): void {
  mkdirSync(folder, { recursive: true });
  const names = new Map(durable);
  for (const act of pending.slice(0, pick(pending.length))) act(names);
  for (const [name, node] of names) {
    const place = join(folder, name);
    if (node.kind === 'folder') leave(node, place, pick);
    else
      writeFileSync(
        place,
        node.bytes.subarray(0, node.isFlushed ? undefined : (node.bytes.length * pick(2)) / 2),
      );
  }
}

function folderNode(names: Map<string, Node>): FolderNode {
  return { kind: 'folder', names, durable: new Map(names), pending: [] };
}

function loaded(folder: string): FolderNode {
  const names = readdirSync(folder).map((name): [string, Node] => {
    const place = join(folder, name);
    return [
      name,
      statSync(place).isDirectory()
        ? loaded(place)
        : { kind: 'file', bytes: readFileSync(place), isFlushed: true },
    ];
  });
  return folderNode(new Map(names));
}
