/** The folder of the consults: through `serve`, of the person's choice where the browser offers one, else its files alone. */
import { signal } from '@preact/signals';
import { isPersonFile } from '../folder/personFiles.ts';
import * as door from './door.ts';

export interface Folder {
  readonly names: readonly string[];
  readonly get: (name: string) => Promise<string>;
  /** Writes where `known` still stands (null: nothing), else gives what does; null where nothing can be written there. */
  readonly put: ((name: string, text: string, known: string | null) => Promise<string | null>) | null;
}

export const folder = signal<Folder | null>(null);

export async function doorFolder(): Promise<Folder> {
  return { names: await door.names(), get: door.get, put: door.put };
}

/** A file of a folder, with its way from there. */
export interface PlacedFile {
  readonly path: string;
  readonly file: File;
}

/** A name lies once: what is nearest to the top. */
export function filesFolder(files: readonly PlacedFile[]): Folder {
  const depth = ({ path }: PlacedFile) => path.split('/').length;
  const own = files.filter(({ file }) => isPersonFile(file.name)).sort((a, b) => depth(b) - depth(a));
  const byName = new Map(own.map(({ file }) => [file.name, file]));
  return { names: [...byName.keys()], get: async (name) => textOf(byName.get(name)), put: null };
}

/** Of the clinic's folder as a whole those in its `consults`. */
export async function handleFolder(chosen: FileSystemDirectoryHandle): Promise<Folder> {
  const inner = await chosen.getDirectoryHandle('consults').catch(() => null);
  const place = inner === null || (await namesIn(inner)).length === 0 ? chosen : inner;
  const get = async (name: string) => textOf(await (await place.getFileHandle(name)).getFile());
  return {
    names: await namesIn(place),
    get,
    put: async (name, text, known) => {
      const there = await get(name).catch(() => null);
      if (there !== known) return there ?? '';
      const file = await (await place.getFileHandle(name, { create: true })).createWritable();
      await file.write(text);
      await file.close();
      return null;
    },
  };
}

async function namesIn(place: FileSystemDirectoryHandle): Promise<string[]> {
  const names: string[] = [];
  for await (const [name, one] of (place as unknown as Entries).entries())
    if (one.kind === 'file' && isPersonFile(name)) names.push(name);
  return names;
}

/** As browsers have it; the types of the language do not yet. */
interface Entries {
  entries(): AsyncIterable<[string, FileSystemHandle]>;
}

interface Offering {
  showDirectoryPicker?(options: { readonly mode: 'readwrite' }): Promise<FileSystemDirectoryHandle>;
}

export function isFolderOffered(): boolean {
  return (globalThis as Offering).showDirectoryPicker !== undefined;
}

/** Null where the person changed their mind. */
export async function chosenFolder(): Promise<Folder | null> {
  const chosen = await (globalThis as Offering)
    .showDirectoryPicker?.({ mode: 'readwrite' })
    .catch(() => null);
  return chosen === null || chosen === undefined ? null : handleFolder(chosen);
}

// As it is read elsewhere: a mark before the first letter is part of the file.
async function textOf(file: File | undefined): Promise<string> {
  if (file === undefined) throw new Error('it is not there any more');
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(await file.arrayBuffer());
}

/** What was written there is looked at again, and a new file is one of its. */
export function lieThere(name: string): void {
  const now = folder.value;
  if (now !== null) folder.value = { ...now, names: [...new Set([...now.names, name])] };
}
