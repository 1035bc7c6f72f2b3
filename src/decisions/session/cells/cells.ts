/** The cells of one exercise on one rung: value, rule, inputs, source and what decided it. */
import { houseRules } from '../../terms/houseSources.ts';
import { cellsFor } from './angleCell.ts';
import { type CellName, type DecidedCell, type Why } from '../../terms/cell.ts';
import { dosed } from './dosed.ts';
import { type CellFacts, type Made } from './facts.ts';
import { loadCell } from './loadCell.ts';
import { overridden } from './ownCell.ts';
import { ranged } from './rangeCell.ts';

/** All cells of the protocol's angle, in the order of CELLS. */
export function cellsOf(facts: CellFacts): DecidedCell[] {
  return cellsFor(facts.angle).map((cell) => ({
    step: facts.step,
    slot: facts.slot.name,
    card: facts.at.card,
    cell,
    ...overridden(cell, makers[cell](facts), facts),
  }));
}

const makers: Readonly<Record<CellName, (facts: CellFacts) => Made>> = {
  sets: (facts) => dosed(facts, 'sets', facts.at.dose.sets),
  repetitions: (facts) => dosed(facts, 'repetitions', facts.at.dose.repetitions),
  holdSeconds: (facts) => dosed(facts, 'holdSeconds', facts.at.dose.holdSeconds),
  tempo: tempoCell,
  restSeconds: (facts) => dosed(facts, 'restSeconds', facts.at.dose.restSeconds),
  loadKg: loadCell,
  reserve: reserveCell,
  hipFlexionDeg: angleCell,
  kneeFlexionDeg: angleCell,
  ankleDorsiflexionDeg: angleCell,
  howFar: (facts) => ranged(facts, facts.howFar),
  timesPerDay: (facts) => dosed(facts, 'timesPerDay', facts.at.dose.timesPerDay),
  days: daysCell,
};

function angleCell(facts: CellFacts): Made {
  return ranged(facts, facts.angleDeg);
}

function reserveCell(facts: CellFacts): Made {
  const { reserve, kind } = facts.at.dose;
  return dosed(facts, 'reserve', reserve, kind === 'hold' ? HOLD_RESERVE : null);
}

function tempoCell(facts: CellFacts): Made {
  const { tempo, kind } = facts.at.dose;
  if (kind === 'contacts') return dosed(facts, 'tempo', null);
  return dosed(
    facts,
    'tempo',
    `${tempo.goSeconds}-${tempo.holdSeconds}-${tempo.backSeconds}`,
    facts.slot.dose.tempo === null ? CARD_TEMPO : null,
  );
}

// The source of a slot's dose says nothing of these two.
const CARD_TEMPO: Why = {
  rule: { rule: 'card-tempo' },
  inputs: {},
  source: houseRules('3'),
  decidedBy: 'dose',
};
const HOLD_RESERVE: Why = {
  rule: { rule: 'hold-reserve' },
  inputs: {},
  source: houseRules('4'),
  decidedBy: 'dose',
};

// A ladder that adds days leaves it to the patient which: the week is planned for the present ones.
function daysCell(facts: CellFacts): Made {
  const { days, at } = facts;
  const { daysPerWeek } = at;
  if (daysPerWeek !== days.length) return dosed(facts, 'days', daysPerWeek);
  return {
    value: days.join(','),
    rule: { rule: 'recovery-clock' },
    inputs: { perWeek: days.length },
    source: houseRules('6'),
    decidedBy: 'dose',
  };
}
