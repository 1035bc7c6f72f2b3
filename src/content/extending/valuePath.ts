/** The way to one value of a protocol as an author writes it, and what it leads to. */
import type { z } from 'zod';
import { distance } from 'fastest-levenshtein';
import { listed } from '../inWords.ts';
import { nearest } from '../nearest.ts';
import { pathText, valueAt, type Path } from '../path.ts';
import { keysOf, schemaAt } from '../schema/schemaAt.ts';

export type FoundPath =
  | { readonly path: Path }
  /** Why it leads nowhere: what must be written, and what to do. */
  | { readonly expected: string; readonly fix: string };

const FORM = /^[A-Za-z]\w*(?:\.\w+|\[[^\][]+\])*$/;
const STEP = /\.?(\w+)|\[([^\][]+)\]/g;
const MOST_KEYS = 14;

/**
 * The path of a written way, stages and slots by number from 0 or by name: `stages[Calf and bridge].slots[0].dose.sets`.
 * `values`: those of the protocol, defaults included; `schema` knows the keys that it leaves out.
 */
export function valuePathTo(written: string, values: unknown, schema: z.ZodType): FoundPath {
  if (!FORM.test(written))
    return { expected: 'keys with dots between them, and [number or name]', fix: EXAMPLE };
  const steps = [...written.matchAll(STEP)].map(([, key, entry]) => key ?? entry ?? '');
  const path: PropertyKey[] = [];
  for (const [at, step] of steps.entries()) {
    const known = stepsAt(valueAt(values, path), schemaAt(schema, path));
    const next = known.find(({ names }) =>
      names.some((name) => name.toLowerCase() === step.trim().toLowerCase()),
    );
    if (next === undefined) return nowhere(written, path, step, steps.slice(at + 1), known, values);
    path.push(next.step);
  }
  return { path };
}

const EXAMPLE = 'write it as in stages[0].slots[0].dose.sets, or stages[name].slots[name].dose.sets';

interface Known {
  readonly step: PropertyKey;
  /** What an author may write for it. */
  readonly names: readonly string[];
}

function stepsAt(value: unknown, schema: z.ZodType | null): Known[] {
  if (Array.isArray(value))
    return value.map((entry, index) => ({ step: index, names: [String(index), ...namesOf(entry)] }));
  const own = typeof value === 'object' && value !== null ? Object.keys(value) : [];
  return [...new Set([...own, ...keysOf(schema)])].map((key) => ({ step: key, names: [key] }));
}

function namesOf(entry: unknown): string[] {
  return ['name', 'id', 'what'].flatMap((key) => {
    const name = valueAt(entry, [key]);
    return typeof name === 'string' ? [name] : [];
  });
}

function nowhere(
  written: string,
  path: Path,
  step: string,
  after: readonly string[],
  known: readonly Known[],
  values: unknown,
): FoundPath {
  const near = nearest(
    step,
    known.flatMap(({ names }) => names),
  );
  const meant = known.find(({ names }) => near !== null && names.includes(near));
  const whole =
    meant === undefined
      ? nearestPath(written, values)
      : pathText([...path, meant.step, ...after.map((one) => (/^\d+$/.test(one) ? Number(one) : one))]);
  const place = path.length === 0 ? 'of a protocol' : `of ${pathText(path)}`;
  const names = known.map(({ names: all }) => all.join(' or ')).slice(0, MOST_KEYS);
  return {
    expected: `a way to a value that is there; ${step} is not ${place}`,
    fix: whole === null ? `go on with one of ${listed(names, 'or')}` : `write ${whole}`,
  };
}

/** Of all values with the same last key the one whose way is most alike; null where no such key is there. */
function nearestPath(written: string, values: unknown): string | null {
  const last = /\w+$/.exec(written)?.[0] ?? '';
  const ways = waysIn(values, []).filter((way) => way.endsWith(`.${last}`));
  const [first, ...others] = ways;
  if (first === undefined) return null;
  return others.reduce((best, way) => (distance(written, way) < distance(written, best) ? way : best), first);
}

function waysIn(value: unknown, path: Path): string[] {
  const own = path.length === 0 ? [] : [pathText(path)];
  if (typeof value !== 'object' || value === null) return own;
  const steps = Array.isArray(value) ? value.map((_, index) => index) : Object.keys(value);
  return [...own, ...steps.flatMap((step) => waysIn(valueAt(value, [step]), [...path, step]))];
}
