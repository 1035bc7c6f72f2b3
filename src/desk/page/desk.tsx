/** The desk begins: what it needs is fetched from beside the page, the worker reads the library, the sheet is drawn. */
import { effect } from '@preact/signals';
import { render } from 'preact';
import type { DeskCatalogue } from '../catalogue.ts';
import { DESK_WORDS, notBegunText } from '../../messages/en/desk/desk.ts';
import type { DeskData } from '../deskData.ts';
import { Beside } from './beside.tsx';
import { droppedOn } from './drop.ts';
import { keepDraft, takeDraft } from './draft.ts';
import { FileBar } from './files.tsx';
import { openFiles } from './opening.ts';
import { save } from './saving.ts';
import { Form } from './form.tsx';
import { Log } from './log.tsx';
import { followLog } from './logState.ts';
import { followReview } from './review.tsx';
import { nearby } from './nearby.ts';
import { followFolder, lookIntoFolder, Persons, takeFolder } from './persons.tsx';
import { catalogue, fault, lastGood, redo, said, sheetNow, startAnew, state, undo, view } from './state.ts';
import { look, readLibrary, withDress } from './thread.ts';

function Desk() {
  return (
    <>
      <header class="masthead">
        <div class="line">
          <p class="clinic">{catalogue.value?.clinic}</p>
          <p class="quiet">{DESK_WORDS.lead}</p>
        </div>
        <div class="line">
          <h1>{DESK_WORDS.title}</h1>
          <a class="way" href="#beside">
            {DESK_WORDS.toLeaflet}
          </a>
        </div>
        <FileBar />
        <Persons />
        <Log />
      </header>
      <main class="columns">
        <Form />
        <Beside />
      </main>
    </>
  );
}

async function begin(): Promise<void> {
  const sheet = document.getElementById('desk');
  if (sheet === null) return;
  if (location.protocol === 'file:') {
    sheet.textContent = DESK_WORDS.fromDisk;
    document.body.dataset['state'] = 'refused';
    return;
  }
  catalogue.value = await fetched<DeskCatalogue>('catalogue');
  followLog();
  followReview();
  if (!takeDraft()) startAnew();
  else said.value = DESK_WORDS.draftIsBack;
  sheet.replaceChildren();
  render(<Desk />, sheet);
  follow();
  listen();
  void lookIntoFolder();
  followFolder();
  const library = await fetched<DeskData>('library');
  dress(library);
  await readLibrary(library);
  // The clinic's own photos stand beside the form too; without them all else does.
  if (Object.keys(library.photoBytes).length > 0) await withDress().catch(() => undefined);
  effect(() => {
    look(
      sheetNow(),
      (next) => {
        fault.value = null;
        if (next.state === 'ready') lastGood.value = next;
        view.value = next;
      },
      (words) => (fault.value = words),
    );
  });
}

async function fetched<T>(name: 'catalogue' | 'library'): Promise<T> {
  const answer = await fetch(nearby(name));
  if (!answer.ok) throw new Error(`${name} could not be fetched: ${answer.status}`);
  return (await answer.json()) as T;
}

function follow(): void {
  keepDraft();
  effect(() => {
    document.body.dataset['state'] = state.value;
  });
}

/** The faces of the leaflet are those of the desk. */
function dress({ pages: { fonts, tokens } }: DeskData): void {
  for (const { weight, base64 } of fonts)
    document.fonts.add(
      new FontFace(tokens.type.family, `url(data:font/woff2;base64,${base64})`, { weight: String(weight) }),
    );
}

function listen(): void {
  addEventListener('keydown', (event) => {
    if (!(event.ctrlKey || event.metaKey)) return;
    const key = event.key.toLowerCase();
    if (key === 's') void save();
    else if (key === 'z' && event.shiftKey) redo();
    else if (key === 'z') undo();
    else if (key === 'y') redo();
    else return;
    event.preventDefault();
  });
  addEventListener('dragover', (event) => event.preventDefault());
  addEventListener('drop', (event) => {
    event.preventDefault();
    if (event.dataTransfer !== null) void take(event.dataTransfer);
  });
}

async function take(transfer: DataTransfer): Promise<void> {
  const { files, folder } = await droppedOn(transfer);
  takeFolder(folder);
  if (files.length > 0) await openFiles(files);
}

begin().catch((error: unknown) => {
  const words = error instanceof Error ? error.message : String(error);
  fault.value = words;
  document.body.dataset['state'] = 'refused';
  if (catalogue.value === null)
    (document.getElementById('desk') ?? document.body).textContent = notBegunText(words);
});
