/** What a path of the consult is called in the form. */
import { GROUP_LABELS } from '../../messages/en/desk/form.ts';
import { patternOf, pathOf } from '../consult/path.ts';
import { isEntries, PARTS, type Row } from './layout.ts';

const LABELS: ReadonlyMap<string, string> = new Map(
  PARTS.flatMap(({ title, rows }) => rows.flatMap((row) => [...groups(row, title), ...labels(row, '')])),
);

/** A group without a place of its own is called as the part that it stands in, unless that holds another group too. */
function groups({ path }: Row, title: string): [string, string][] {
  if (!path.includes('.')) return [];
  const group = path.slice(0, path.indexOf('.'));
  return [[group, GROUP_LABELS[group] ?? title]];
}

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

const ORDER = [...LABELS.keys()];

/** Where a path stands in the form, for putting what is missing in that order. */
export function placeOf(path: string): number {
  const own = ORDER.indexOf(patternOf(path));
  return own === -1 ? ORDER.length : own;
}
