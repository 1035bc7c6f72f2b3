/** The bar of the files, and what it asks: for earlier revisions, and what to do where another hand wrote. */
import { earlierText, FILE_WORDS } from '../../messages/en/desk/files.ts';
import { clearDraft } from './draft.ts';
import { FilePick } from './filePick.tsx';
import { openEarlier, openFiles } from './opening.ts';
import { OpenFolder } from './persons.tsx';
import { saveAs } from './saveAs.ts';
import { clash, save } from './saving.ts';
import {
  canRedo,
  canUndo,
  fileName,
  isChanged,
  lay,
  origin,
  others,
  redo,
  said,
  startAnew,
  startText,
  text,
  undo,
  value,
} from './state.ts';

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
