/** The screen in groups: each item alone, or a whole group as asked and answered no. */
import { SCREEN_GROUPS } from '../form/layout.ts';
import { describedBy, idOf } from './control.ts';
import { Help } from './fields.tsx';
import { at, catalogue, set, setAll } from './state.ts';

const ANSWERS = [
  ['no', 'No'],
  ['yes', 'Yes'],
  ['notAsked', 'Not asked'],
] as const;

export function Screen() {
  return (
    <>
      {SCREEN_GROUPS.map(({ id, title, items }) => (
        <ScreenGroup key={id} id={id} title={title} items={items} />
      ))}
    </>
  );
}

function ScreenGroup({ id, title, items }: (typeof SCREEN_GROUPS)[number]) {
  const names = items.map(([item]) => `screen.${item}`);
  const isAllNo = names.every((name) => at(name) === 'no');
  return (
    <div class="screengroup" role="group" aria-label={title}>
      <p class="grouphead">
        <span>{title}</span>
        <button
          type="button"
          data-group-no={id}
          aria-pressed={isAllNo}
          onClick={() => setAll(names.map((name) => [name, 'no']))}
        >
          Asked, all no
        </button>
      </p>
      {items.map(([item, label]) => (
        <ScreenItem key={item} item={item} label={label} />
      ))}
    </div>
  );
}

function ScreenItem({ item, label }: { item: string; label: string }) {
  const name = `screen.${item}`;
  const answer = at(name) ?? 'notAsked';
  const effect = catalogue.value?.effects[item] ?? '';
  return (
    <fieldset class={`screenitem ${String(answer)}`}>
      <legend>{label}</legend>
      <span class="presses">
        {ANSWERS.map(([value, words]) => (
          <label key={value} class="press">
            <input
              type="radio"
              name={name}
              value={value}
              id={value === 'no' ? idOf(name) : undefined}
              checked={answer === value}
              {...describedBy(name)}
              onChange={() => set(name, value)}
            />
            <span>{words}</span>
          </label>
        ))}
      </span>
      {answer === 'no' ? null : (
        <span class="effect">
          {answer === 'yes' ? `Yes: ${effect}.` : `Not asked, which acts like a yes: ${effect}.`}
        </span>
      )}
      <Help name={name} />
    </fieldset>
  );
}
