/** Programmes that strain the layout: many exercises, long words, odd words. */
import type { Programme } from '../../../src/programme/programme.ts';
import { otter } from '../../fixtures/programme.ts';

/** The otter's programme three times over: twelve exercises in every step. */
export const twelve: Programme = {
  ...otter,
  exercises: [1, 2, 3].flatMap((round) =>
    otter.exercises.map((one) => ({
      ...one,
      card: `${one.card}-${round}`,
      title: `${one.title} (${round})`,
    })),
  ),
  steps: otter.steps.map((step) => ({
    ...step,
    prescriptions: [1, 2, 3].flatMap((round) =>
      step.prescriptions.map((one) => ({
        ...one,
        card: `${one.card}-${round}`,
        title: `${one.title} (${round})`,
        cells: one.cells.map((cell) => ({ ...cell, card: `${cell.card}-${round}` })),
      })),
    ),
  })),
};

/** The programme with every printed text changed by a rule; ids and record stay. */
export function reworded(programme: Programme, change: (text: string) => string): Programme {
  const kept = new Set([
    'format',
    'alias',
    'language',
    'paper',
    'seenOn',
    'startOn',
    'reviewOn',
    'id',
    'card',
    'slot',
    'cell',
    'kind',
    'weight',
    'on',
    'href',
    'record',
    'stage',
    'calendar',
    'scene',
    'logo',
    'news',
    'value',
    'rule',
    'inputs',
    'source',
    'decidedBy',
    'country',
  ]);
  const walk = (node: unknown): unknown => {
    if (typeof node === 'string') return node === '' ? '' : change(node);
    if (Array.isArray(node)) return node.map(walk);
    if (typeof node !== 'object' || node === null) return node;
    return Object.fromEntries(
      Object.entries(node).map(([key, value]) => [key, kept.has(key) ? value : walk(value)]),
    );
  };
  return walk(programme) as Programme;
}
