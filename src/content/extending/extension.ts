/** What a clinic changes of a protocol, in values that are known to fit, and the changed protocol. */
import type { Mark } from '../../units/source.ts';
import type { FrontMatter } from '../frontMatter.ts';
import { pathText, valueAt, type Path } from '../path.ts';
import type { Single } from '../schema/extension.ts';

/** One value that is the clinic's own. */
export interface OwnValue {
  readonly path: Path;
  /** Null where the protocol below leaves it out. */
  readonly shipped: Single | null;
  readonly value: Single;
  /** Both are there for every number. */
  readonly mark: Mark | undefined;
  readonly cite: string | undefined;
}

/** What is changed of the protocol `of`. */
export interface Extension {
  readonly of: string;
  readonly values: readonly OwnValue[];
  readonly addedCards: readonly { readonly slot: Path; readonly card: string }[];
  readonly hiddenCards: readonly string[];
}

/** The same with what it stands on, so that it can be held against another version of that. */
export interface Extending extends Extension {
  readonly id: string;
  /** The clinic's file. */
  readonly front: FrontMatter;
  /** The values of the protocol below, defaults included. */
  readonly below: unknown;
}

/** A copy of plain values with another one at the path; groups that are missing on the way are made. */
export function withValue(values: unknown, path: Path, value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(values))
    return values.map((entry: unknown, index) => (index === step ? withValue(entry, rest, value) : entry));
  return { ...(values as object | undefined), [step]: withValue(valueAt(values, [step]), rest, value) };
}

/** A house number with its mark, and where it stands. */
export function isSetting(value: unknown): boolean {
  return typeof value === 'object' && value !== null && 'value' in value && 'mark' in value;
}

export function isSingle(value: unknown): value is Single {
  return ['string', 'number', 'boolean'].includes(typeof value);
}

/** The names of the stage and slot a path goes through. @example stageAndSlot(values, ['stages', 0, 'name']) // => 'Holds' */
export function stageAndSlot(values: unknown, path: Path): string {
  const names = path.flatMap((step, at) => {
    const name = typeof step === 'number' ? valueAt(values, [...path.slice(0, at + 1), 'name']) : undefined;
    return typeof name === 'string' ? [name] : [];
  });
  return names.join(', ');
}

/** A path with the names of what it goes through. */
export function toldPath(values: unknown, path: Path): string {
  const names = stageAndSlot(values, path);
  return names === '' ? pathText(path) : `${pathText(path)} (${names})`;
}
