/** Through `serve`: the persons of the folder as plain lines, with the day of their review. */
import { signal } from '@preact/signals';
import * as door from './door.ts';
import { today } from './quick.tsx';
import { lay, said } from './state.ts';

const list = signal<readonly door.Person[]>([]);

export async function lookIntoFolder(): Promise<void> {
  if (door.isThere()) list.value = await door.persons();
}

async function open({ files }: door.Person): Promise<void> {
  const texts = await Promise.all(files.map(async (file) => ({ file, text: await door.get(file) })));
  const own = texts.at(-1);
  if (own === undefined) return;
  lay(
    own.text,
    { name: own.file, text: own.text, handle: null, isInFolder: true },
    texts.slice(0, -1).map(({ file, text }) => ({ file: `consults/${file}`, text })),
  );
  said.value = `${own.file} lies on the desk.`;
}

export function Persons() {
  if (list.value.length === 0) return null;
  return (
    <details class="persons">
      <summary>Persons in this folder</summary>
      <ul>
        {list.value.map((person) => (
          <li key={person.alias}>
            <button type="button" data-person={person.alias} onClick={() => void open(person)}>
              {person.alias}, revision {person.revision}
              {person.reviewOn === null
                ? ''
                : `, review ${person.reviewOn}${person.reviewOn <= today() ? ', due' : ''}`}
            </button>
          </li>
        ))}
      </ul>
    </details>
  );
}
