/** The screen in groups: each item alone, or a whole group as asked and answered no. */
import { ALL_NO, ANSWER_WORDS, effectText } from '../../messages/en/desk/screen.ts';
import { SCREEN_GROUPS } from '../form/layout.ts';
import { describedBy, idOf } from './control.ts';
import { Help } from './fields.tsx';
import { at, catalogue, set, setAll } from './state.ts';

const ANSWERS = ['no', 'yes', 'notAsked'] as const;

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
          {ALL_NO}
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
        {ANSWERS.map((value) => (
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
            <span>{ANSWER_WORDS[value]}</span>
          </label>
        ))}
      </span>
      {answer === 'no' ? null : <span class="effect">{effectText(String(answer), effect)}</span>}
      <Help name={name} />
    </fieldset>
  );
}
