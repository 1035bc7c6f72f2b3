/** Opening and saving: the one place where something leaves the page, and that onto this machine's disk. */
import { FilePick } from './filePick.tsx';
import { signal } from '@preact/signals';
import {
  consultTooLargeText,
  earlierText,
  FILE_WORDS,
  laidText,
  notOpenedText,
  notSavedText,
  savedText,
} from '../../messages/en/desk/files.ts';
import { pathOf, valueIn } from '../consult/path.ts';
import { valueOf } from '../consult/consultText.ts';
import { clearDraft } from './draft.ts';
import { folder, lieThere, type Folder } from './folder.ts';
import {
  fileName,
  isChanged,
  lay,
  origin,
  others,
  redo,
  canRedo,
  canUndo,
  said,
  startAnew,
  startText,
  text,
  undo,
  value,
} from './state.ts';
import { openLogs } from './log.tsx';
import { OpenFolder } from './persons.tsx';
import { saveAs } from './saveAs.ts';
import { read } from './thread.ts';
import { isUnsaved } from './unsaved.ts';

/** The longest consult that is read; longer ones are not even opened. */
const MOST_BYTES = 256 * 1024;
/** What another hand wrote meanwhile; saving waits for a decision. */
const clash = signal<{ readonly theirs: string; readonly overwrite: () => Promise<void> } | null>(null);

export async function openFiles(
  files: readonly File[],
  handle: FileSystemFileHandle | null = null,
): Promise<void> {
  const texts: { name: string; text: string }[] = [];
  const logs = files.filter(({ name }) => name.endsWith('.csv'));
  for (const file of files.filter((one) => !logs.includes(one))) {
    if (file.size > MOST_BYTES) {
      said.value = consultTooLargeText(file.name, file.size, MOST_BYTES);
      return;
    }
    const { text: found, problems } = await read(file.name, new Uint8Array(await file.arrayBuffer()));
    if (found === null) {
      said.value = notOpenedText(file.name, problems[0] ?? null);
      return;
    }
    texts.push({ name: file.name, text: found });
  }
  // Of several the highest revision is laid on the desk; the others are what went before.
  const [own, ...before] = texts.sort((a, b) => revisionOf(b.text) - revisionOf(a.text));
  if (own === undefined) return openLogs(logs);
  if (isUnsaved()) return;
  lay(
    own.text,
    { name: own.name, text: own.text, handle, isInFolder: false },
    before.map((one) => ({ file: `consults/${one.name}`, text: one.text })),
  );
  said.value = laidText(own.name);
  await openLogs(logs);
}

function revisionOf(text: string): number {
  const revision = valueIn(valueOf(text), pathOf('revision'));
  return typeof revision === 'number' ? revision : 0;
}

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

export function FileBar() {
  return (
    <>
      <div class="bar" role="toolbar" aria-label={FILE_WORDS.bar}>
        <FilePick
          opens="consult"
          words={FILE_WORDS.open}
          accept=".md,.csv,text/markdown,text/csv"
          multiple
          onFiles={openFiles}
        />
        <OpenFolder />
        <button type="button" onClick={() => void save()} data-save>
          {FILE_WORDS.save}
        </button>
        <button
          type="button"
          data-make="consult"
          onClick={() => saveAs(fileName.value, text.value, 'text/markdown')}
        >
          {FILE_WORDS.asFile}
        </button>
        <button type="button" disabled={!canUndo.value} onClick={undo}>
          {FILE_WORDS.undo}
        </button>
        <button type="button" disabled={!canRedo.value} onClick={redo}>
          {FILE_WORDS.redo}
        </button>
        <button
          type="button"
          onClick={() => {
            startAnew();
            clearDraft();
            said.value = FILE_WORDS.cleared;
          }}
        >
          {FILE_WORDS.clear}
        </button>
        <span class="filename">
          {fileName.value}
          {isChanged.value ? FILE_WORDS.isNotSaved : text.value === startText() ? '' : FILE_WORDS.isSaved}
        </span>
      </div>
      <p class="said" role="status">
        {said.value}
      </p>
      <Earlier />
      <Clash />
    </>
  );
}

/** A later revision is made after the ones before it: without them it would not be what a build makes. */
function Earlier() {
  const { alias, revision } = value.value;
  if (typeof revision !== 'number' || revision < 2 || others.value.some(({ file }) => file.endsWith('.md')))
    return null;
  return (
    <p class="earlier">
      <label>
        <span>{earlierText(String(alias), revision)}</span>
        <input
          type="file"
          accept=".md,.csv,text/markdown,text/csv"
          multiple
          data-open="earlier"
          onChange={({ currentTarget }) => {
            void openEarlier([...(currentTarget.files ?? [])]);
          }}
        />
      </label>
    </p>
  );
}

async function openEarlier(files: readonly File[]): Promise<void> {
  const logs = files.filter(({ name }) => name.endsWith('.csv'));
  const found = await Promise.all(
    files
      .filter((one) => !logs.includes(one))
      .filter(({ size }) => size <= MOST_BYTES)
      .map(async (file) => ({
        name: file.name,
        ...(await read(file.name, new Uint8Array(await file.arrayBuffer()))),
      })),
  );
  others.value = found.flatMap(({ name, text: one }) =>
    one === null ? [] : [{ file: `consults/${name}`, text: one }],
  );
  await openLogs(logs);
}

/** Both texts line by line where they differ; nothing is written before somebody decides. */
function Clash() {
  const now = clash.value;
  if (now === null) return null;
  const ours = text.value.split('\n');
  const theirs = now.theirs.split('\n');
  return (
    <div class="clash" role="alertdialog" aria-label={FILE_WORDS.clash}>
      <p>{FILE_WORDS.clashLead}</p>
      <pre>
        {theirs.filter((line) => !ours.includes(line)).map((line) => `${FILE_WORDS.there}  ${line}\n`)}
        {ours.filter((line) => !theirs.includes(line)).map((line) => `${FILE_WORDS.here}   ${line}\n`)}
      </pre>
      <button type="button" onClick={() => void now.overwrite()}>
        {FILE_WORDS.overwrite}
      </button>
      <button
        type="button"
        onClick={() => {
          lay(now.theirs, { ...origin.value, text: now.theirs }, others.value);
          clash.value = null;
        }}
      >
        {FILE_WORDS.takeTheirs}
      </button>
      <button type="button" onClick={() => (clash.value = null)}>
        {FILE_WORDS.leaveBoth}
      </button>
    </div>
  );
}
