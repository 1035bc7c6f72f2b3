/** Why the week decided as it did: a code and numbers. The programme room finds the words. */
import type { Mark } from './source.ts';

/** A house number as the protocol gives it, with its mark. */
export interface Setting {
  readonly value: number;
  readonly mark: Mark;
  readonly cite?: string | undefined;
}

/** `inputs` hold the figures that decided, in the unit their name says; days and names as they are, several in a list. */
export interface Reason<Code extends string = string> {
  readonly code: Code;
  readonly inputs: Readonly<Record<string, number | string | readonly string[] | null>>;
  readonly mark: Mark;
}

/** The entries of an input that holds several; none where it holds one value or nothing. */
export function entriesOf(input: Reason['inputs'][string] | undefined): readonly string[] {
  return typeof input === 'object' && input !== null ? input : [];
}

/** A reason; marked as our own choice unless said otherwise. */
export function reason<Code extends string>(
  code: Code,
  inputs: Reason['inputs'] = {},
  mark: Mark = 'choice',
): Reason<Code> {
  return { code, inputs, mark };
}
