/** The files of a clinic's folders as they lie there: the library read, the consults only looked at. */
import { createHash } from 'node:crypto';
import { FOLDERS } from '../../content/kind.ts';
import type { SourceFile } from '../../content/source.ts';
import type { Flags } from '../flags.ts';
import { isFolder } from './disk.ts';
import { isSameState, isSettled } from './fileState.ts';
import { lookIn, type Look } from './folder.ts';
import type { Folders } from './folders.ts';
import { hashOf } from './issued.ts';
import { readLayers, type Layers } from './layers.ts';
import type { Ledger, ReadConsult } from './ledger.ts';
import { packed } from './packed.ts';
import { quickAlias } from './quickAlias.ts';

export interface Sources {
  readonly layers: Layers;
  /** Wherever the consults lie, their names begin with consults/. */
  readonly consults: readonly Look[];
  /** Milliseconds of the machine's clock, before the first look. */
  readonly atMs: number;
}

const CONSULTS = `${FOLDERS.consult}/`;

export function lookAt(folders: Pick<Folders, 'content' | 'consults'>): Sources {
  const atMs = Date.now();
  return { layers: readLayers(folders.content), consults: consultLooks(folders), atMs };
}

// A library without consults is a library all the same.
function consultLooks({ consults }: Pick<Folders, 'consults'>): Look[] {
  if (!isFolder(consults)) return [];
  return lookIn(consults, () => true).map((look) => readOnce(named(look)));
}

function named({ file, state, read }: Look): Look {
  const name = `${CONSULTS}${file}`;
  const own = () => {
    const found = read();
    return found === null ? null : { ...found, file: `${CONSULTS}${found.file}` };
  };
  return { file: name, state, read: own };
}

function readOnce(look: Look): Look {
  let read: { readonly is: SourceFile | null } | null = null;
  const first = () => {
    const is = look.read();
    return { is: is === null ? null : packed(is) };
  };
  return { ...look, read: () => (read ??= first()).is };
}

export function isConsult({ file }: Look): boolean {
  return file.endsWith('.md');
}

/** Whether the folders still hold what was read: a build must not put an older leaflet over a newer one. */
export function isStill(then: Sources, folders: Pick<Folders, 'content' | 'consults'>): boolean {
  const now = lookAt(folders);
  return (
    areSame(then.layers.folders.flat(), now.layers.folders.flat()) &&
    then.consults.length === now.consults.length &&
    now.consults.every((look, index) => isSameLook(then.consults[index], look, then.atMs))
  );
}

function isSameLook(before: Look | undefined, now: Look, atMs: number): boolean {
  if (before?.file !== now.file) return false;
  if (before.state !== null && isSameState(before.state, now.state) && isSettled(before.state, atMs))
    return true;
  const [own, other] = [before.read(), now.read()];
  return own === null || other === null ? own === other : Buffer.compare(own.bytes, other.bytes) === 0;
}

function areSame(then: readonly SourceFile[], now: readonly SourceFile[]): boolean {
  return (
    now.length === then.length &&
    now.every(({ file, bytes }, index) => {
      const before = then[index];
      return before?.file === file && Buffer.compare(before.bytes, bytes) === 0;
    })
  );
}

/** SHA-256 over all files of the library, of each folder in their order. */
export function libraryHash({ layers }: Sources): string {
  const hash = createHash('sha256');
  for (const folder of layers.folders) {
    hash.update('folder\0');
    for (const { file, bytes, link, unreadBytes, closed } of folder)
      hash.update(`${JSON.stringify([file, link, unreadBytes, closed, bytes.length])}\0`).update(bytes);
  }
  return hash.digest('hex');
}

/** Whose a consult file is and what it holds; of a file that looks as it did before, without reading it. */
export function readConsult(look: Look, { consults }: Ledger, isVerified: boolean): ReadConsult {
  const before = Object.hasOwn(consults, look.file) ? consults[look.file] : undefined;
  if (before !== undefined && !isVerified && isSameState(before.state, look.state)) return before;
  const file = look.read();
  const sha256 = file === null ? 'gone' : sourceHash(file);
  const alias = before?.sha256 === sha256 ? before.alias : file === null ? '' : quickAlias(file);
  return { alias, sha256, state: look.state };
}

/** The same without the consults of persons of other parts; each person is of one, whoever else there is. */
export function ofPart(sources: Sources, part: Flags['part'], ledger: Ledger): Sources {
  if (part === null) return sources;
  const isOfPart = (look: Look) =>
    !isConsult(look) || partOf(readConsult(look, ledger, false).alias, part.of) === part.part;
  return { ...sources, consults: sources.consults.filter(isOfPart) };
}

/** From 1: by the first 32 bits of the SHA-256 of the alias. */
export function partOf(alias: string, of: number): number {
  return (Number.parseInt(hashOf(alias).slice(0, 8), 16) % of) + 1;
}

function sourceHash({ bytes, link, unreadBytes, closed }: SourceFile): string {
  return hashOf(`${JSON.stringify([link, unreadBytes, closed])}${hashOf(bytes)}`);
}

/** What may be kept of it for the next build: its times only where a save since would show in them. */
export function settled(read: ReadConsult, atMs: number): ReadConsult {
  return read.state !== null && !isSettled(read.state, atMs) ? { ...read, state: null } : read;
}
