/** The programmes the pages are tried on: the invented one, and the fullest that the shipped content makes. */
import { assembled } from '../../../src/programme/revisions.ts';
import { orderOf } from '../../../src/shell/building/oneSet.ts';
import { readWorkspace } from '../../../src/shell/io/workspace.ts';
import type { Programme } from '../../../src/programme/programme.ts';
import { otter } from '../../fixtures/programme.ts';
import { reviewed } from './reviewed.ts';

export const programmes: readonly (readonly [name: string, programme: Programme])[] = [
  ['the invented otter', otter],
  ['marten of the shipped content', shipped('marten').programme],
];

/** The same, the second at the next visit, after a log. */
export function programmesReviewed(): typeof programmes {
  const { consult, programme, workshop } = shipped('marten');
  return [
    programmes[0]!,
    ['marten of the shipped content, after a log', reviewed(consult, programme, workshop)],
  ];
}

/** The programme of a consult that stands in the content folder. */
function shipped(alias: string) {
  const workspace = readWorkspace({ content: 'content', consults: 'content/consults' });
  const { library, current } = workspace;
  if (library === null)
    throw new Error(workspace.libraryProblems.map(({ code, file }) => `${code} ${file}`).join());
  const consult = current.find((one) => one.alias === alias);
  if (consult === undefined) throw new Error(`no consult of ${alias}`);
  const order = orderOf(consult, workspace);
  const workshop = { library, models: new Map(), loadleaf: '0' };
  const made = assembled(order.consult, order, workshop);
  if (!('programme' in made)) throw new Error(`no programme of ${alias}: ${JSON.stringify(made.refusals)}`);
  return { consult: order.consult, programme: made.programme, workshop };
}

/** Keys whose text is an address, a code or a unit, not words for a reader. */
const CODES = new Set([
  'alias', 'at', 'card', 'cell', 'country', 'cite', 'chosen', 'chosenBy', 'decidedBy', 'href', 'id', 'kind', 'language',
  'limit', 'loadleaf', 'mark', 'on', 'paper', 'proposed', 'scene', 'seenOn', 'squeeze', 'startOn', 'reviewOn',
  'weekday', 'weight',
]); // prettier-ignore

/** The programme with `change` made to every text a reader sees. */
export function reworded(programme: Programme, change: (text: string) => string): Programme {
  const walk = (value: unknown, key: string): unknown => {
    if (CODES.has(key)) return value;
    if (typeof value === 'string') return key === 'value' ? value : change(value);
    if (Array.isArray(value)) return value.map((entry) => walk(entry, key));
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, walk(inner, name)]));
  };
  return walk(programme, '') as Programme;
}
