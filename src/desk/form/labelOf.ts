/** What a path of the consult is called in the form. */
import { patternOf, pathOf } from '../consult/path.ts';
import { isEntries, PARTS, type Row } from './layout.ts';

const LABELS: ReadonlyMap<string, string> = new Map(PARTS.flatMap(({ rows }) => rows.flatMap((row) => labels(row, ''))));

function labels(row: Row, around: string): [string, string][] {
  const path = around === '' ? row.path : `${around}.${row.path}`;
  if (!isEntries(row)) return [[path, row.label]];
  return [
    [path, row.label],
    [`${path}.*`, row.one],
    ...row.fields.flatMap((field) => labels(field, `${path}.*`)),
  ];
}

/** @example labelOf('tests.0.pain') // => 'Test 1: Pain during it' */
export function labelOf(path: string): string {
  const steps = pathOf(path);
  const own = LABELS.get(patternOf(path));
  const at = steps.findIndex((step) => typeof step === 'number');
  const entry = at === -1 ? undefined : LABELS.get(patternOf(steps.slice(0, at + 1).join('.')));
  const label = own ?? LABELS.get(patternOf(steps.slice(0, -1).join('.'))) ?? path;
  return entry === undefined || entry === label ? label : `${entry} ${Number(steps[at]) + 1}: ${label}`;
}
