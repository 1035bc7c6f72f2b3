/** A number of the dose: a step's, what the minutes left, this person's own, or the protocol's. */
import type { ChangedSince } from '../changes.ts';
import type { Why } from '../firstDose.ts';
import { amountText } from '../phrases/steps.ts';
import type { CellName } from '../programme.ts';
import { houseRules, type CellFacts, type Made, type Said } from './facts.ts';

/** The cell with the first reason that holds. `own`: where the number stands when it is none of the slot's dose. */
export function dosed(facts: CellFacts, cell: CellName, said: Said, own: Why | null = null): Made {
  const { slot, fit } = facts;
  const why =
    stepWhy(facts, cell) ??
    minutesWhy(facts, cell) ??
    (fit.first.why as Partial<Record<CellName, Why>>)[cell] ??
    own;
  return {
    ...said,
    ...(why ?? {
      rule: `dose of the slot ${slot.name}`,
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
    rule: `${eased ? 'taken down by a step of the ladder' : 'step of the ladder'}, from ${from === null ? '-' : amountText(from)} to ${to === null ? '-' : amountText(to)}`,
    inputs: eased ? { from, to } : { from, to, wished, stoppedBy },
    source: houseRules('4'),
    decidedBy: 'step',
  };
}

function minutesWhy({ gaveUp }: CellFacts, cell: CellName): Why | null {
  const cut = gaveUp.find(({ what }) => what === cell);
  return cut === undefined
    ? null
    : {
        rule: `less, to fit the minutes there are: ${cut.to} instead of ${cut.from}`,
        inputs: { byRule: cut.from },
        source: houseRules('4'),
        decidedBy: 'minutes',
      };
}
