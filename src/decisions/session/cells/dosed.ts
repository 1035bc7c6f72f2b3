/** A number of the dose: a step's, what the minutes left, this person's own, or the protocol's. */
import { houseRules } from '../../terms/houseSources.ts';
import type { ChangedSince } from '../changes.ts';
import type { CellName, Why } from '../../terms/cell.ts';
import { type CellFacts, type Made } from './facts.ts';

/** The cell with the first reason that holds. `own`: where the number stands when it is none of the slot's dose. */
export function dosed(facts: CellFacts, cell: CellName, value: Made['value'], own: Why | null = null): Made {
  const { slot, fit } = facts;
  const why =
    stepWhy(facts, cell) ??
    minutesWhy(facts, cell) ??
    (fit.first.why as Partial<Record<CellName, Why>>)[cell] ??
    own;
  return {
    value,
    ...(why ?? {
      rule: { rule: 'slot', slot: slot.name },
      inputs: {},
      source: slot.doseSource,
      decidedBy: 'dose',
    }),
  };
}

const STEP_CHANGES: Partial<Record<CellName, ChangedSince['change']>> = {
  sets: 'sets',
  repetitions: 'repetitions',
  holdSeconds: 'hold',
  tempo: 'tempo',
  loadKg: 'load',
  hipFlexionDeg: 'range',
  kneeFlexionDeg: 'range',
  ankleDorsiflexionDeg: 'range',
  howFar: 'range',
  days: 'days',
};

/** That the ladder has changed it since its first rung; null when it has not. */
export function stepWhy({ changes }: CellFacts, cell: CellName): Why | null {
  // What a harder version takes down to nothing, that version sets itself.
  const change = changes.find((one) => one.change === STEP_CHANGES[cell] && !(one.eased && one.to === null));
  if (change === undefined) return null;
  const { from, to, eased, wished, stoppedBy } = change;
  return {
    rule: { rule: 'ladder', eased, from, to },
    inputs: eased ? { from, to } : { from, to, wished, stoppedBy },
    source: houseRules('4'),
    decidedBy: 'step',
  };
}

function minutesWhy({ gaveUp, length }: CellFacts, cell: CellName): Why | null {
  const cut = gaveUp.find(({ what }) => what === cell);
  return cut === undefined
    ? null
    : {
        rule: { rule: 'fit-minutes', from: cut.from, to: cut.to, length },
        inputs: { byRule: cut.from },
        source: houseRules('4'),
        decidedBy: 'minutes',
      };
}
