/** One of a list. A value that is not in it stays, and is shown as it is written. */
import type { ComponentChildren } from 'preact';
import { describedBy, idOf } from './control.ts';
import { at, set } from './state.ts';

interface Choosing {
  readonly name: string;
  /** Whether the value that is there is among the children. */
  readonly isKnown: boolean;
  readonly children: ComponentChildren;
}

export function Choice({ name, isKnown, children }: Choosing) {
  const there = at(name);
  return (
    <select
      id={idOf(name)}
      name={name}
      value={there === undefined ? '' : String(there)}
      {...describedBy(name)}
      onChange={({ currentTarget }) =>
        set(name, currentTarget.value === '' ? undefined : currentTarget.value)
      }
    >
      <option value="">-</option>
      {isKnown || there === undefined ? null : <option value={String(there)}>{String(there)}</option>}
      {children}
    </select>
  );
}
