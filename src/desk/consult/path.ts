/** Ways into a consult, as the form writes them in the names of its controls. */

export type Step = string | number;

/** @example pathOf('tests.0.pain') // => ['tests', 0, 'pain'] */
export function pathOf(name: string): Step[] {
  return name.split('.').map((step) => (/^\d+$/.test(step) ? Number(step) : step));
}

/** With the entries of lists as `*`, as the schema's keys are listed. @example patternOf('tests.0.pain') // => 'tests.*.pain' */
export function patternOf(name: string): string {
  return name.replace(/\.\d+(?=\.|$)/g, '.*');
}

/** What stands there; undefined where nothing does. A key that every object has is none of ours. */
export function valueIn(value: unknown, path: readonly Step[]): unknown {
  let at = value;
  for (const step of path) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, step)) return undefined;
    at = (at as Record<Step, unknown>)[step];
  }
  return at;
}
