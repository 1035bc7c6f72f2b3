/** Single keys of the consult as controls; each carries its path as its name. */
import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { FieldAbout } from '../catalogue.ts';
import type { Field as FieldAsked } from '../form/layout.ts';
import { addToText, FIELD_WORDS, mustBeText, takeOutText } from '../../messages/en/desk/formWords.ts';
import { wordFor } from '../form/words.ts';
import { at, catalogue, listAt, set, stopped } from './state.ts';
import { aboutOf, describedBy, focusSoon, idOf, wrongAt } from './control.ts';
import { Choice } from './choice.tsx';
import { TestChoice } from './tests.tsx';

interface Asked {
  readonly name: string;
  readonly field: FieldAsked;
}

/** One key with its label and what stands against it. */
export function Field({ name, field }: Asked) {
  if (isHidden(name, field)) return null;
  const { ask } = field;
  if (ask === 'choice' || ask === 'yesNo' || ask === 'pain' || ask === 'upToTen' || ask === 'stage')
    return <Radios name={name} field={field} />;
  if (ask === 'marks' || ask === 'bands') return <Marks name={name} field={field} />;
  if (ask === 'numbers' || ask === 'names') return <Line name={name} field={field} />;
  return (
    <div class={`field as-${ask}`}>
      <label for={idOf(name)}>{field.label}</label>
      <span class="with">
        <Control name={name} field={field} />
        {field.unit === undefined ? null : <span class="unit">{field.unit}</span>}
      </span>
      <Help name={name} />
      <Wrong name={name} />
    </div>
  );
}

function Control({ name, field: { ask, label } }: Asked) {
  if (ask === 'card') return <Select name={name} options={cardOptions()} />;
  if (ask === 'test') return <TestChoice name={name} />;
  if (ask === 'protocol')
    return (
      <Select name={name} options={(catalogue.value?.protocols ?? []).map(({ id, title }) => [id, title])} />
    );
  if (ask === 'country')
    return (
      <Select name={name} options={(catalogue.value?.countries ?? []).map((one) => [one.code, one.name])} />
    );
  return <Typed name={name} label={label} ask={ask} />;
}

function isHidden(name: string, { when, path }: FieldAsked): boolean {
  if (when === undefined || at(name) !== undefined) return false;
  const { is } = when;
  const around = at(when.path);
  if (stopped.value?.problems.some((problem) => problem.path === path) === true) return false;
  return is.length === 0 ? around === undefined : !is.includes(around);
}

/** What was typed stays as it was typed while it means what stands in the consult. */
export function Typed({
  name,
  label,
  ask,
  hideLabel = false,
}: {
  name: string;
  label: string;
  ask: FieldAsked['ask'];
  hideLabel?: boolean;
}) {
  const there = at(name);
  const shown = textOf(there);
  const [typed, setTyped] = useState(shown);
  const isNumber = ask === 'number' || ask === 'numbers';
  return (
    <input
      id={idOf(name)}
      name={name}
      {...(ask === 'date' ? { type: 'date' } : { type: 'text' })}
      inputMode={isNumber ? 'decimal' : undefined}
      autocomplete="off"
      spellcheck={false}
      value={isSame(read(typed, ask), there) ? typed : shown}
      aria-label={hideLabel ? label : undefined}
      {...describedBy(name)}
      onInput={({ currentTarget }) => {
        setTyped(currentTarget.value);
        set(name, read(currentTarget.value, ask), true);
      }}
    />
  );
}

function read(typed: string, ask: FieldAsked['ask']): unknown {
  const text = typed.trim();
  if (text === '') return ask === 'names' || ask === 'numbers' ? '' : undefined;
  const isNumber = ask === 'number' || ask === 'numbers' || ask === 'loose';
  // A comma is what half of Europe writes.
  const plain = text.replace(/^(-?\d+),(\d+)$/, '$1.$2');
  return isNumber && /^-?\d+(\.\d+)?$/.test(plain) ? Number(plain) : typed.replace(/\s+$/, '');
}

function textOf(there: unknown): string {
  return typeof there === 'string' || typeof there === 'number'
    ? String(there)
    : there === true
      ? 'yes'
      : there === false
        ? 'no'
        : '';
}

function isSame(a: unknown, b: unknown): boolean {
  return a === b || (a === '' && b === undefined);
}

export function Help({ name }: { name: string }) {
  return (
    <span class="help" id={`${idOf(name)}-help`} hidden>
      {aboutOf(name)?.help}
    </span>
  );
}

export function Wrong({ name }: { name: string }) {
  const wrong = wrongAt(name);
  if (wrong === undefined) return null;
  return (
    <span class={wrong.code === 'missing-key' ? 'wrong missing' : 'wrong'} id={`${idOf(name)}-wrong`}>
      {wrong.code === 'missing-key' ? FIELD_WORDS.needed : mustBeText(wrong.expected)}
    </span>
  );
}

type Option = readonly [value: string | number, words: string];

function Select({ name, options }: { name: string; options: readonly Option[] }) {
  const there = at(name);
  const isKnown = options.some(([one]) => one === there);
  return (
    <Choice name={name} isKnown={isKnown}>
      {options.map(([one, words]) => (
        <option key={one} value={String(one)}>
          {words}
        </option>
      ))}
    </Choice>
  );
}

function cardOptions(): readonly Option[] {
  return (catalogue.value?.cards ?? []).map(({ id, title }) => [id, title]);
}

/** One of a few words: a press each. */
export function Radios({ name, field, hideLegend = false }: Asked & { hideLegend?: boolean }) {
  const there = at(name);
  const about = aboutOf(name);
  const options = optionsOf(field.ask, about);
  const isOptional = about?.isNeeded === false && field.ask !== 'stage';
  return (
    <fieldset class={`field radios as-${field.ask}`} {...(hideLegend ? { 'aria-label': field.label } : {})}>
      <legend class={hideLegend ? 'unseen' : undefined}>{field.label}</legend>
      <span class="presses">
        {options.map((one) => (
          <label key={one} class="press">
            <input
              type="radio"
              name={name}
              value={String(one)}
              checked={isChosen(there, one)}
              {...describedBy(name)}
              onChange={() => set(name, one)}
            />
            <span>{wordFor(name, one)}</span>
          </label>
        ))}
        {isOptional ? (
          <label class="press none">
            <input
              type="radio"
              name={name}
              value=""
              checked={there === undefined}
              onChange={() => set(name, undefined)}
            />
            <span>{FIELD_WORDS.notRecorded}</span>
          </label>
        ) : null}
      </span>
      <Help name={name} />
      <Wrong name={name} />
    </fieldset>
  );
}

function optionsOf(ask: FieldAsked['ask'], about: FieldAbout | undefined): readonly (string | number)[] {
  if (ask === 'pain' || ask === 'upToTen') return [0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10];
  if (ask === 'yesNo') return ['yes', 'no'];
  return about?.words ?? [];
}

function isChosen(there: unknown, one: string | number): boolean {
  return there === one || (there === true && one === 'yes') || (there === false && one === 'no');
}

/** Any of a list of words; "none" is a word of its own where it must be said. */
function Marks({ name, field }: Asked) {
  const there = listAt(name);
  const about = aboutOf(`${name}.0`);
  const words = field.ask === 'bands' ? (catalogue.value?.bands ?? []) : (about?.words ?? []);
  const isNeeded = aboutOf(name)?.isNeeded === true;
  const isAsked = Array.isArray(at(name));
  const toggle = (word: string | number) => {
    const next = there.includes(word)
      ? there.filter((one) => one !== word)
      : words.filter((one) => one === word || there.includes(one));
    set(name, next.length === 0 && !isNeeded ? undefined : next);
  };
  return (
    <fieldset class="field marks">
      <legend>{field.label}</legend>
      <span class="presses">
        {words.map((word) => (
          <label key={word} class="press">
            <input
              type="checkbox"
              name={name}
              value={String(word)}
              checked={there.includes(word)}
              {...describedBy(name)}
              onChange={() => toggle(word)}
            />
            <span>{wordFor(`${name}.0`, word)}</span>
          </label>
        ))}
        {isNeeded && name !== 'days' ? (
          <label class="press none">
            <input
              type="checkbox"
              name={name}
              value=""
              checked={isAsked && there.length === 0}
              onChange={() => set(name, isAsked && there.length === 0 ? undefined : [])}
            />
            <span>{FIELD_WORDS.askedNone}</span>
          </label>
        ) : null}
      </span>
      <Help name={name} />
      <Wrong name={name} />
    </fieldset>
  );
}

/** A list of single numbers or lines. */
function Line({ name, field }: Asked) {
  const there = listAt(name);
  const isNumbers = field.ask === 'numbers';
  const isNeeded = aboutOf(name)?.isNeeded === true;
  const take = (index: number) => {
    const next = there.filter((_, one) => one !== index);
    set(name, next.length === 0 && !isNeeded ? undefined : next);
  };
  return (
    <fieldset class="field line">
      <legend>
        {field.label}
        {field.unit === undefined ? '' : `, ${field.unit}`}
      </legend>
      <span class="presses">
        {there.map((_, index) => (
          <span class="one" key={index}>
            <Typed
              name={`${name}.${index}`}
              label={`${field.label} ${index + 1}`}
              ask={field.ask}
              hideLabel
            />
            <button
              type="button"
              data-take={`${name}.${index}`}
              aria-label={takeOutText(field.label, index + 1)}
              onClick={() => take(index)}
            >
              ×
            </button>
            <Help name={`${name}.${index}`} />
            <Wrong name={`${name}.${index}`} />
          </span>
        ))}
        <button
          type="button"
          data-add={name}
          id={idOf(name)}
          aria-label={addToText(field.label)}
          onClick={() => {
            set(name, [...there, isNumbers ? (there.at(-1) ?? '') : '']);
            focusSoon(`${name}.${there.length}`);
          }}
        >
          {FIELD_WORDS.add}
        </button>
        {isNeeded && at(name) === undefined ? (
          <button type="button" onClick={() => set(name, [])}>
            {FIELD_WORDS.none}
          </button>
        ) : null}
        {Array.isArray(at(name)) && there.length === 0 ? (
          <span class="quiet">{FIELD_WORDS.isNone}</span>
        ) : null}
      </span>
      <Help name={name} />
      <Wrong name={name} />
    </fieldset>
  );
}

export function Group({ children, label }: { children: ComponentChildren; label: string }) {
  return (
    <div class="group" role="group" aria-label={label}>
      {children}
    </div>
  );
}
