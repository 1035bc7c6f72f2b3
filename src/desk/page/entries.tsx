/** Lists of entries: tests, tested sets, races, goals. */
import { isEntries, type Entries as EntriesAsked, type Field as FieldAsked } from '../form/layout.ts';
import { FIELD_WORDS } from '../../messages/en/desk/formWords.ts';
import { aboutOf, focusSoon, idOf } from './control.ts';
import { Field, Group, Help, Wrong } from './fields.tsx';
import { at, listAt, set } from './state.ts';
import { provokedKey, Seen } from './tests.tsx';

export function Entries({ name, row }: { name: string; row: EntriesAsked }) {
  const list = listAt(name);
  const isNeeded = aboutOf(name)?.isNeeded === true;
  const add = () => {
    set(`${name}.${list.length}`, {});
    focusSoon(`${name}.${list.length}`);
  };
  const take = (index: number) => {
    const next = list.filter((_, one) => one !== index);
    set(name, next.length === 0 && !isNeeded ? undefined : next);
  };
  return (
    <div class="entries" role="group" aria-label={row.label}>
      {list.map((_, index) => (
        <Group key={index} label={`${row.one} ${index + 1}`}>
          <p class="entryhead">
            <span>
              {row.one} {index + 1}
            </span>
            <button type="button" class="take" data-take={`${name}.${index}`} onClick={() => take(index)}>
              {FIELD_WORDS.takeOut}
            </button>
          </p>
          {row.fields.map((field) => {
            const path = `${name}.${index}.${field.path}`;
            if (isEntries(field)) return <Entries key={path} name={path} row={field} />;
            return isOfOtherJoint(name, field, path) ? null : <Field key={path} name={path} field={field} />;
          })}
          {name === 'tests' ? <Seen name={`${name}.${index}`} /> : null}
        </Group>
      ))}
      <button type="button" data-add={name} id={idOf(name)} onClick={add}>
        {row.add}
      </button>
      <Help name={name} />
      <Wrong name={name} />
    </div>
  );
}

/** Of a test's three angles the one that guards the protocol; another only where it was written. */
function isOfOtherJoint(name: string, { path }: FieldAsked, way: string): boolean {
  return name === 'tests' && path.startsWith('painFree') && path !== provokedKey() && at(way) === undefined;
}
