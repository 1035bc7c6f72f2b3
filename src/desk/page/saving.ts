/** The one place where something leaves the page, and that onto this machine's disk. */
import { signal } from '@preact/signals';
import { notSavedText, savedText } from '../../messages/en/desk/files.ts';
import { clearDraft } from './draft.ts';
import { folder, lieThere, type Folder } from './folder.ts';
import { saveAs } from './saveAs.ts';
import { fileName, origin, said, text } from './state.ts';

/** What another hand wrote meanwhile; saving waits for a decision. */
export const clash = signal<{ readonly theirs: string; readonly overwrite: () => Promise<void> } | null>(
  null,
);

function written(name: string, handle: FileSystemFileHandle | null, isInFolder: boolean): void {
  origin.value = { name, text: text.value, handle, isInFolder };
  clash.value = null;
  clearDraft();
  if (isInFolder) lieThere(name);
  said.value = savedText(name);
}

/** Back to where it came from, unless somebody wrote there meanwhile; else onto the disk as a download. */
export async function save(): Promise<void> {
  const { handle, text: known, isInFolder } = origin.value;
  const name = fileName.value;
  try {
    const put = folder.value?.put ?? null;
    if (put !== null && (isInFolder || known === null)) return await saveInFolder(name, known, put);
    if (handle !== null && handle.name === name) return await saveByHandle(handle, known);
    saveAs(name, text.value, 'text/markdown');
    written(name, null, false);
  } catch (error) {
    said.value = notSavedText(name, error instanceof Error ? error.message : String(error));
  }
}

type Put = NonNullable<Folder['put']>;

async function saveInFolder(name: string, known: string | null, put: Put): Promise<void> {
  // Under another name it is another file, and must not be there yet.
  const before = name === origin.value.name ? known : null;
  const theirs = await put(name, text.value, before);
  if (theirs === null) return written(name, null, true);
  clash.value = {
    theirs,
    overwrite: async () => {
      const again = await put(name, text.value, theirs);
      if (again === null) written(name, null, true);
    },
  };
}

async function saveByHandle(handle: FileSystemFileHandle, known: string | null): Promise<void> {
  const theirs = await (await handle.getFile()).text();
  const write = async () => {
    const file = await handle.createWritable();
    await file.write(text.value);
    await file.close();
    written(handle.name, handle, false);
  };
  if (theirs === known) await write();
  else clash.value = { theirs, overwrite: write };
}
