/** Puts the clinic's own sources beside the values it changed. */
import { MARKS, type Mark, type Source } from '../../units/source.ts';
import { valueAt, type Path } from '../path.ts';
import { isSetting, withValue, type OwnValue } from './extension.ts';

/** A house number takes mark and source; a dose says which of its numbers are ours; other marks take ours. */
export function withSources<T>(protocol: T, own: readonly OwnValue[]): T {
  const doses = new Map<string, Path>();
  const done = own.reduce<unknown>((values, one) => {
    const at = doseAround(one.path);
    if (at === null) return sourced(values, one);
    doses.set(at.join('.'), at);
    return values;
  }, protocol);
  return [...doses.values()].reduce<unknown>((values, at) => doseSourced(values, at, own), done) as T;
}

function sourced(values: unknown, { path, mark, cite }: OwnValue): unknown {
  if (isSetting(valueAt(values, path)) && mark !== undefined)
    return withValue(withValue(values, [...path, 'mark'], mark), [...path, 'cite'], cite);
  const marked = markedAround(values, path);
  return marked === null || mark === undefined ? values : withValue(values, [...marked, 'mark'], mark);
}

/** The nearest group around that has a mark for all it holds; null at the stages and at the top. */
function markedAround(values: unknown, path: Path): Path | null {
  for (let length = path.length - 1; length > 0; length -= 1) {
    const group = path.slice(0, length);
    if (valueAt(values, [...group, 'mark']) !== undefined) return group;
  }
  return null;
}

function doseAround(path: Path): Path | null {
  const at = path.indexOf('dose');
  return at < 0 ? null : path.slice(0, at + 1);
}

function doseSourced(values: unknown, dose: Path, own: readonly OwnValue[]): unknown {
  const shipped = valueAt(values, [...dose, 'source']) as Source;
  const ours = own.filter(({ path, mark }) => isIn(dose, path) && mark !== undefined);
  if (ours.length === 0) return values;
  const cites = ours.map(
    ({ path, cite }) => `${path.slice(dose.length).join('.')}: ${cite ?? 'house choice'}`,
  );
  return withValue(values, [...dose, 'source'], {
    cite: `${cites.join('; ')}; the rest: ${shipped.cite}`,
    mark: leastSure([shipped.mark, ...ours.flatMap(({ mark }) => mark ?? [])]),
  });
}

function isIn(group: Path, path: Path): boolean {
  return group.every((step, at) => path[at] === step);
}

// A sentence is as sure as the least sure of what it says.
function leastSure(marks: readonly Mark[]): Mark {
  const order: readonly Mark[] = ['read', 'secondary', 'common-practice', 'memory', 'choice'];
  return marks.reduce((least, mark) => (order.indexOf(mark) > order.indexOf(least) ? mark : least), MARKS[0]);
}
