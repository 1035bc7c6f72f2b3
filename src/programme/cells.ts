/** The cells of one exercise on one rung: value, words, rule, inputs, source and what decided it. */
import type { Slot } from '../content/library.ts';
import type { ChangeKind } from '../dose/dose.ts';
import type { KitLoad } from '../dose/kit.ts';
import type { Changed, Prescribed } from '../dose/rung.ts';
import type { Source } from '../units/source.ts';
import type { Weekday } from '../units/weekday.ts';
import type { Way } from './phrases/dose.ts';
import {
  daysText,
  easeText,
  holdText,
  loadText,
  repetitionsText,
  reserveText,
  restText,
  setsText,
  tempoText,
  timesText,
} from './phrases/dose.ts';
import { madeText } from './phrases/kit.ts';
import { CELLS, type Cell, type CellName, type DecidedBy } from './programme.ts';
import type { StartLoad } from './load.ts';

/** Everything the cells of one exercise on one rung are made of. */
export interface CellFacts {
  readonly step: number;
  readonly slot: Slot;
  readonly at: Prescribed;
  /** What the present rung changed of this exercise since the first; null where nothing did. */
  readonly changes: readonly (Changed & { readonly change: ChangeKind })[];
  readonly startLoad: StartLoad;
  readonly load: KitLoad | null;
  readonly holdDecidedBy: string | null;
  readonly fewerSetsForMinutes: boolean;
  readonly rangeDecidedBy: DecidedBy;
  readonly rangeInputs: Cell['inputs'];
  readonly shownDeg: number | null;
  readonly howFar: { readonly value: string | null; readonly text: string };
  readonly way: Way;
  readonly days: readonly Weekday[];
  /** The clinician's own values; numbers are already in `at`, and `byRule` keeps what the rules said. */
  readonly overrides: ReadonlyMap<CellName, { readonly value: number | string; readonly reason: string }>;
  readonly byRule: ReadonlyMap<CellName, number | string | null>;
}

const HOUSE: Source = { cite: 'house rules of the protocol', mark: 'choice' };
const MODEL: Source = {
  cite: 'body model of this project, estimate; its page names the constants',
  mark: 'choice',
};

export function cellsOf(facts: CellFacts): Cell[] {
  return CELLS.map((cell) => overridden(makers[cell](facts), facts));
}

type Made = Omit<Cell, 'step' | 'slot' | 'card' | 'cell'>;

const makers: Readonly<Record<CellName, (facts: CellFacts) => Cell>> = {
  sets: (facts) =>
    dosed(
      facts,
      'sets',
      facts.at.dose.sets,
      setsText(facts.at.dose),
      facts.fewerSetsForMinutes
        ? { decidedBy: 'minutes', rule: 'fewer sets, to fit the minutes there are' }
        : {},
    ),
  repetitions: (facts) =>
    dosed(facts, 'repetitions', facts.at.dose.repetitions, repetitionsText(facts.at.dose)),
  holdSeconds: (facts) =>
    dosed(
      facts,
      'holdSeconds',
      facts.at.dose.holdSeconds,
      holdText(facts.at.dose.holdSeconds),
      facts.holdDecidedBy === 'testedHold'
        ? { decidedBy: 'testedSet', rule: 'share of the seconds that could be held' }
        : {},
    ),
  tempo: (facts) => {
    const { tempo, kind } = facts.at.dose;
    if (kind === 'contacts') return dosed(facts, 'tempo', null, '');
    const words = kind === 'hold' ? easeText(tempo) : tempoText(tempo, facts.way);
    return dosed(facts, 'tempo', `${tempo.goSeconds}-${tempo.holdSeconds}-${tempo.backSeconds}`, words);
  },
  restSeconds: (facts) =>
    dosed(
      facts,
      'restSeconds',
      facts.at.dose.restSeconds,
      restText(facts.at.dose.restSeconds, facts.at.dose.sets),
    ),
  loadKg: loadCell,
  reserve: (facts) => dosed(facts, 'reserve', facts.at.dose.reserve, reserveText(facts.at.dose)),
  hipFlexionDeg: (facts) =>
    ranged(facts, 'hipFlexionDeg', facts.shownDeg, facts.shownDeg === null ? '' : `about ${facts.shownDeg}°`),
  howFar: (facts) => ranged(facts, 'howFar', facts.howFar.value, facts.howFar.text),
  timesPerDay: (facts) =>
    dosed(facts, 'timesPerDay', facts.at.dose.timesPerDay, timesText(facts.at.dose.timesPerDay)),
  days: (facts) =>
    cellOf(facts, 'days', {
      value: facts.days.join(','),
      text: daysText(facts.days),
      rule: 'week on one recovery clock',
      inputs: { perWeek: facts.days.length },
      source: HOUSE,
      decidedBy: 'dose',
    }),
};

/** A cell of the dose: the protocol's number, or the ladder's where a step has changed it. */
function dosed(
  facts: CellFacts,
  cell: CellName,
  value: Made['value'],
  text: string,
  special: Partial<Made> = {},
): Cell {
  const change = facts.changes.find((one) => one.change === STEP_CHANGES[cell]);
  const stepped: Partial<Made> =
    change === undefined
      ? {}
      : {
          decidedBy: 'step',
          rule: `step of the ladder, from ${change.from} to ${change.to}`,
          inputs: { from: change.from, to: change.to, wished: change.wished, stoppedBy: change.stoppedBy },
        };
  return cellOf(facts, cell, {
    value,
    text,
    rule: `dose of the slot ${facts.slot.name}`,
    inputs: {},
    source: facts.slot.doseSource,
    decidedBy: 'dose',
    ...special,
    ...stepped,
  });
}

const STEP_CHANGES: Partial<Record<CellName, string>> = {
  sets: 'sets',
  repetitions: 'repetitions',
  holdSeconds: 'hold',
  tempo: 'tempo',
  loadKg: 'load',
  days: 'days',
};

function loadCell(facts: CellFacts): Cell {
  const { startLoad, load, at } = facts;
  if (startLoad.byFeel) {
    const most = startLoad.load.loadKg;
    return cellOf(facts, 'loadKg', {
      value: null,
      text: `${loadText(null, null, at.dose.reserve)}, at most ${madeText(startLoad.load.made)}`,
      rule: startLoad.because,
      inputs: { atMostKg: most, reserve: at.dose.reserve },
      source: HOUSE,
      decidedBy: 'dose',
    });
  }
  return dosed(
    facts,
    'loadKg',
    at.loadKg,
    load === null ? loadText(at.loadKg, null, null) : madeText(load.made),
    {
      rule: startLoad.because,
      inputs: startLoad.inputs,
      source:
        startLoad.decidedBy === 'dose'
          ? facts.slot.doseSource
          : {
              cite: 'repetitions to failure by the clinic formula (secondary pages), house rules 4',
              mark: 'secondary',
            },
      decidedBy: startLoad.decidedBy,
    },
  );
}

function ranged(
  facts: CellFacts,
  cell: 'hipFlexionDeg' | 'howFar',
  value: Made['value'],
  text: string,
): Cell {
  const opened = facts.changes.some(({ change }) => change === 'range');
  return cellOf(facts, cell, {
    value,
    text,
    rule: rangeRule(facts, opened),
    inputs: facts.rangeInputs,
    source: facts.rangeDecidedBy === 'dose' ? HOUSE : MODEL,
    decidedBy: opened ? 'step' : facts.rangeDecidedBy,
  });
}

function rangeRule({ at, rangeDecidedBy }: CellFacts, opened: boolean): string {
  if (opened) return 'range opened by a step of the ladder, within the caps';
  if (at.rangeDeg === null) return 'done in full: every limit holds along it';
  return rangeDecidedBy === 'dose'
    ? 'the whole range of the card: every limit holds along it'
    : 'smallest of the cap, the model and what hurt, rounded to the gentle end';
}

function cellOf({ step, slot, at }: CellFacts, cell: CellName, made: Made): Cell {
  return { step, slot: slot.name, card: at.card, cell, ...made };
}

function overridden(cell: Cell, { overrides, byRule }: CellFacts): Cell {
  const own = overrides.get(cell.cell);
  if (own === undefined) return cell;
  const words = typeof own.value === 'string' ? { value: own.value, text: own.value } : {};
  return {
    ...cell,
    ...words,
    rule: `clinician: ${own.reason}`,
    inputs: { ...cell.inputs, byRule: byRule.get(cell.cell) ?? null },
    source: { cite: `the clinician's own entry: ${own.reason}`, mark: 'choice' },
    decidedBy: 'clinician',
  };
}
