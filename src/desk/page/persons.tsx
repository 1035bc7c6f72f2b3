/** The persons of the folder as plain lines: where each stands, when the next review is, and whether it is due. */
import { effect, signal } from '@preact/signals';
import { MOST_TEXT_BYTES } from '../../content/fileSize.ts';
import { laidText } from '../../messages/en/desk/files.ts';
import { PERSON_WORDS, personText } from '../../messages/en/desk/persons.ts';
import { personFiles, type PersonFiles } from '../folder/personFiles.ts';
import type { PersonShown, SheetText } from '../talk.ts';
import * as door from './door.ts';
import { FilePick } from './filePick.tsx';
import { chosenFolder, doorFolder, filesFolder, folder, isFolderOffered, type Folder } from './folder.ts';
import { today } from './quick.tsx';
import { lay, said, view } from './state.ts';
import { person } from './thread.ts';
import { isUnsaved } from './unsaved.ts';

const lines = signal<ReadonlyMap<string, PersonShown>>(new Map());

export async function lookIntoFolder(): Promise<void> {
  if (door.isThere()) folder.value = await doorFolder();
}

/** Every person of a new folder is looked at, one after the other, once the library is read. */
export function followFolder(): void {
  effect(() => {
    const now = folder.value;
    if (now !== null && view.value !== null && now !== looked) void lookAtAll((looked = now));
  });
}

let looked: Folder | null = null;

async function lookAtAll(now: Folder): Promise<void> {
  for (const one of personFiles(now.names)) {
    const shown = await sheetOf(one, now).then(person, () => null);
    if (folder.value !== now) return;
    if (shown !== null) lines.value = new Map([...lines.value, [one.alias, shown]]);
  }
}

async function sheetOf({ newest, others }: PersonFiles, { get }: Folder): Promise<SheetText> {
  const texts = await Promise.all(
    others.map(async (name) => ({ file: `consults/${name}`, text: await get(name) })),
  );
  const [text] = await Promise.all([get(newest)]);
  for (const one of [text, ...texts.map((each) => each.text)])
    if (one.length > MOST_TEXT_BYTES) throw new Error(newest);
  return { name: newest, text, others: texts };
}

async function open(one: PersonFiles, now: Folder): Promise<void> {
  // A line is pressed by a slip.
  if (isUnsaved()) return;
  const { name, text, others } = await sheetOf(one, now);
  lay(text, { name, text, handle: null, isInFolder: now.put !== null }, others);
  said.value = laidText(name);
}

export function takeFolder(next: Folder | null): void {
  if (next === null) return;
  if (door.isThere()) said.value = PERSON_WORDS.isThere;
  else if (personFiles(next.names).length === 0) said.value = PERSON_WORDS.none;
  else {
    lines.value = new Map();
    folder.value = next;
  }
}

/** Nothing of it where the folder came with `serve`. */
export function OpenFolder() {
  if (door.isThere()) return null;
  if (!isFolderOffered())
    return (
      <FilePick
        opens="folder"
        words={PERSON_WORDS.open}
        isFolder
        onFiles={async (files) =>
          takeFolder(filesFolder(files.map((file) => ({ path: file.webkitRelativePath, file }))))
        }
      />
    );
  return (
    <button type="button" data-open-folder onClick={() => void chosenFolder().then(takeFolder)}>
      {PERSON_WORDS.open}
    </button>
  );
}

export function Persons() {
  const now = folder.value;
  if (now === null) return null;
  const all = personFiles(now.names);
  if (all.length === 0) return null;
  return (
    <details class="persons" open={!door.isThere()}>
      <summary>{PERSON_WORDS.title}</summary>
      <ul>
        {all.map((one) => (
          <li key={one.alias}>
            <button type="button" data-person={one.alias} onClick={() => void open(one, now)}>
              <Line
                words={personText(one.alias, one.revision, lines.value.get(one.alias) ?? null, today())}
              />
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Broken between what it tells, not within a date. */
function Line({ words }: { words: string }) {
  return words.split(/(?<=, )/).map((one) => <span class="whole">{one}</span>);
}
