/** Files and folders dropped on the page. What was dropped can only be asked for while the drop lasts. */
import { filesFolder, handleFolder, type Folder, type PlacedFile } from './folder.ts';

export interface Dropped {
  readonly files: readonly File[];
  /** Of several the first; null where there is none. */
  readonly folder: Folder | null;
}

/** As some browsers have it: a folder that can be written to. */
interface Handing {
  getAsFileSystemHandle?(): Promise<FileSystemHandle | null>;
}

export async function droppedOn({ items, files }: DataTransfer): Promise<Dropped> {
  const entries = [...items].filter(({ kind }) => kind === 'file').map((item) => item.webkitGetAsEntry());
  const folders = [...items].flatMap((item, at) => (entries[at]?.isDirectory === true ? [item] : []));
  // A folder stands among the files as one that cannot be read.
  const plain = [...files].filter((_, at) => entries[at]?.isDirectory !== true);
  const [first] = folders;
  const entry = entries.find((one) => one?.isDirectory === true);
  if (first === undefined || !isFolder(entry)) return { files: plain, folder: null };
  const handle = await (first as Handing).getAsFileSystemHandle?.().catch(() => null);
  return {
    files: plain,
    folder:
      handle?.kind === 'directory'
        ? await handleFolder(handle as FileSystemDirectoryHandle)
        : filesFolder(await filesIn(entry)),
  };
}

function isFolder(entry: FileSystemEntry | null | undefined): entry is FileSystemDirectoryEntry {
  return entry?.isDirectory === true;
}

async function filesIn(place: FileSystemDirectoryEntry): Promise<readonly PlacedFile[]> {
  const found: PlacedFile[] = [];
  for (const entry of await entriesOf(place))
    if (isFolder(entry)) found.push(...(await filesIn(entry)));
    else found.push({ path: entry.fullPath, file: await fileOf(entry as FileSystemFileEntry) });
  return found;
}

/** They are handed out by the hundred, until none is left. */
async function entriesOf(place: FileSystemDirectoryEntry): Promise<readonly FileSystemEntry[]> {
  const reader = place.createReader();
  const all: FileSystemEntry[] = [];
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((heard, failed) => reader.readEntries(heard, failed));
    if (some.length === 0) return all;
    all.push(...some);
  }
}

function fileOf(entry: FileSystemFileEntry): Promise<File> {
  return new Promise((heard, failed) => entry.file(heard, failed));
}
