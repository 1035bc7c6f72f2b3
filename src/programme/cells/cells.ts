/** The cells of one exercise on one rung: value, words, rule, inputs, source and what decided it. */
import {
  countedAs,
  daysPerWeekText,
  daysText,
  easeText,
  holdText,
  repetitionsText,
  reserveText,
  restText,
  setsText,
  tempoText,
  timesText,
} from '../phrases/dose.ts';
import type { Cell, CellName } from '../programme.ts';
import { cellsFor } from './angleCell.ts';
import type { Why } from '../firstDose.ts';
import { dosed } from './dosed.ts';
import { houseRules, type CellFacts, type Made } from './facts.ts';
import { loadCell } from './loadCell.ts';
import { overridden } from './ownCell.ts';
import { ranged } from './rangeCell.ts';

/** All cells of the protocol's angle, in the order of CELLS. */
export function cellsOf(facts: CellFacts): Cell[] {
  return cellsFor(facts.angle).map((cell) => ({
    step: facts.step,
    slot: facts.slot.name,
    card: facts.at.card,
    cell,
    ...overridden(cell, makers[cell](facts), facts),
  }));
}

const makers: Readonly<Record<CellName, (facts: CellFacts) => Made>> = {
  sets: (facts) => dosed(facts, 'sets', { value: facts.at.dose.sets, text: setsText(facts.at.dose) }),
  repetitions: (facts) =>
    dosed(facts, 'repetitions', {
      value: facts.at.dose.repetitions,
      text: repetitionsText(facts.at.dose, countedAs(facts.fit.card)),
    }),
  holdSeconds: (facts) =>
    dosed(facts, 'holdSeconds', {
      value: facts.at.dose.holdSeconds,
      text: holdText(facts.at.dose.holdSeconds),
    }),
  tempo: tempoCell,
  restSeconds: (facts) => {
    const { restSeconds, sets } = facts.at.dose;
    return dosed(facts, 'restSeconds', { value: restSeconds, text: restText(restSeconds, sets) });
  },
  loadKg: loadCell,
  reserve: (facts) =>
    dosed(
      facts,
      'reserve',
      { value: facts.at.dose.reserve, text: reserveText(facts.at.dose) },
      facts.at.dose.kind === 'hold' ? HOLD_RESERVE : null,
    ),
  hipFlexionDeg: angleCell,
  kneeFlexionDeg: angleCell,
  ankleDorsiflexionDeg: angleCell,
  howFar: (facts) => ranged(facts, facts.howFar),
  timesPerDay: (facts) =>
    dosed(facts, 'timesPerDay', {
      value: facts.at.dose.timesPerDay,
      text: timesText(facts.at.dose.timesPerDay),
    }),
  days: daysCell,
};

function angleCell(facts: CellFacts): Made {
  const { angleDeg } = facts;
  return ranged(facts, { value: angleDeg, text: angleDeg === null ? '' : `about ${angleDeg}°` });
}

function tempoCell(facts: CellFacts): Made {
  const { tempo, kind } = facts.at.dose;
  if (kind === 'contacts') return dosed(facts, 'tempo', { value: null, text: '' });
  return dosed(
    facts,
    'tempo',
    {
      value: `${tempo.goSeconds}-${tempo.holdSeconds}-${tempo.backSeconds}`,
      text: kind === 'hold' ? easeText(tempo) : tempoText(tempo, facts.way, facts.pause),
    },
    facts.slot.dose.tempo === null ? CARD_TEMPO : null,
  );
}

// The source of a slot's dose says nothing of these two.
const CARD_TEMPO: Why = {
  rule: 'pace of the card, no pause at the squeezed end',
  inputs: {},
  source: houseRules('3'),
  decidedBy: 'dose',
};
const HOLD_RESERVE: Why = {
  rule: 'a hold leaves 10 to 20 seconds in hand',
  inputs: {},
  source: houseRules('4'),
  decidedBy: 'dose',
};

// A ladder that adds days leaves it to the patient which: the week is planned for the present ones.
function daysCell(facts: CellFacts): Made {
  const { days, at } = facts;
  const { daysPerWeek } = at;
  if (daysPerWeek !== days.length)
    return dosed(facts, 'days', { value: daysPerWeek, text: daysPerWeekText(daysPerWeek) });
  return {
    value: days.join(','),
    text: daysText(days),
    rule: 'the week on one recovery clock',
    inputs: { perWeek: days.length },
    source: houseRules('6'),
    decidedBy: 'dose',
  };
}
