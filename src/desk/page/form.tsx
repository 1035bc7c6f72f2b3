/** The form: the parts of a consult in their order, and one line that tells what the key in hand means. */
import { useState } from 'preact/hooks';
import { FIELD_WORDS } from '../../messages/en/desk/formWords.ts';
import { bodyOf } from '../consult/consultText.ts';
import { isEntries, PARTS, type Part, type Row } from '../form/layout.ts';
import { aboutOf } from './control.ts';
import { Field } from './fields.tsx';
import { Entries } from './entries.tsx';
import { Dates, FourWeeks, Habits, Homes, Minutes } from './quick.tsx';
import { Screen } from './screen.tsx';
import { canEdit, setBody, text } from './state.ts';
import { OwnTests, TriedTests } from './tests.tsx';

export function Form() {
  const [help, setHelp] = useState('');
  if (!canEdit.value) return <p class="lead">{FIELD_WORDS.cannotEdit}</p>;
  const tell = ({ target }: { readonly target: EventTarget | null }) => {
    const name =
      target instanceof HTMLElement ? (target.getAttribute('name') ?? target.dataset['add'] ?? '') : '';
    setHelp(aboutOf(name)?.help ?? '');
  };
  return (
    <form
      id="form"
      autocomplete="off"
      onFocusIn={tell}
      onFocusOut={() => setHelp('')}
      onSubmit={(event) => event.preventDefault()}
      aria-label={FIELD_WORDS.consult}
    >
      {PARTS.map((part) => (
        <PartOf key={part.id} part={part} />
      ))}
      <div class="part" role="group" id="part-notes" aria-labelledby="part-notes-title">
        <h2 id="part-notes-title">{FIELD_WORDS.notes}</h2>
        <textarea
          aria-labelledby="part-notes-title"
          rows={8}
          spellcheck={false}
          value={bodyOf(text.value)}
          onInput={({ currentTarget }) => setBody(currentTarget.value)}
        />
      </div>
      <p class="helpline" aria-hidden="true">
        {help}
      </p>
    </form>
  );
}

function PartOf({ part: { id, title, by, lead, rows } }: { part: Part }) {
  const shown = by === 'screen' ? rows.filter(({ path }) => !path.startsWith('screen.')) : rows;
  return (
    <div class="part" role="group" id={`part-${id}`} aria-labelledby={`part-${id}-title`}>
      <h2 id={`part-${id}-title`}>{title}</h2>
      {lead === undefined ? null : <p class="quiet">{lead}</p>}
      {by === 'screen' ? <Screen /> : null}
      {by === 'kit' ? <Homes /> : null}
      {shown.map((row) => (
        <RowOf key={row.path} row={row} />
      ))}
      {by === 'dates' ? <Dates /> : null}
      {by === 'days' ? <Minutes /> : null}
      {by === 'running' ? <FourWeeks /> : null}
      {by === 'running' ? <Habits /> : null}
    </div>
  );
}

function RowOf({ row }: { row: Row }) {
  if (!isEntries(row)) return <Field name={row.path} field={row} />;
  return (
    <>
      <h3>{row.label}</h3>
      {row.path === 'tests' ? <OwnTests /> : null}
      {row.path === 'testedSets' ? <TriedTests /> : null}
      <Entries name={row.path} row={row} />
    </>
  );
}
