/** A way into the front matter: keys and indices, outermost first. */

export type Path = readonly PropertyKey[];

/** The path as an author reads it; empty for the whole head. @example pathText(['tests', 0, 'pain']) // => 'tests[0].pain' */
export function pathText(path: Path): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    return text === '' ? String(step) : `${text}.${String(step)}`;
  }, '');
}

/** What stands at the path in plain values; undefined when there is nothing. */
export function valueAt(value: unknown, path: Path): unknown {
  return path.reduce<unknown>((at, step) => {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, step)) return undefined;
    return (at as Record<PropertyKey, unknown>)[step];
  }, value);
}
