/**
 * The cells of one exercise on one rung: value, words, rule, inputs, source and what decided it. One maker a cell and
 * one for each way a number comes about, so a little long.
 */
import type { Slot } from '../content/library.ts';
import type { KitLoad } from '../dose/kit.ts';
import type { GivenUp } from '../dose/minutes.ts';
import type { Prescribed } from '../dose/rung.ts';
import type { Source } from '../units/source.ts';
import type { Weekday } from '../units/weekday.ts';
import type { ChangedSince } from './changes.ts';
import type { Why } from './firstDose.ts';
import type { Fit } from './fit.ts';
import type { Own } from './overrides.ts';
import type { Pause, Way } from './phrases/dose.ts';
import {
  countedAs,
  daysText,
  easeText,
  feelText,
  holdText,
  loadText,
  repetitionsText,
  reserveText,
  restText,
  setsText,
  tempoText,
  timesText,
} from './phrases/dose.ts';
import { amountText } from './phrases/steps.ts';
import { CELLS, type Cell, type CellName } from './programme.ts';

/** Everything the cells of one exercise on one rung are made of. */
export interface CellFacts {
  readonly step: number;
  readonly slot: Slot;
  readonly fit: Fit;
  /** False once the ladder has gone on to a harder card. */
  readonly isFirstCard: boolean;
  /** With the clinician's own numbers in it, and without. */
  readonly at: Prescribed;
  readonly byRule: Prescribed;
  readonly changes: readonly ChangedSince[];
  /** What this exercise gave up to fit the minutes. */
  readonly gaveUp: readonly GivenUp[];
  readonly load: KitLoad | null;
  readonly byFeel: boolean;
  readonly rangeInputs: Cell['inputs'];
  readonly hipBendDeg: number | null;
  readonly howFar: { readonly value: string; readonly text: string };
  readonly way: Way;
  readonly pause: Pause;
  readonly days: readonly Weekday[];
  readonly own: Own;
}

/** All cells, in the order of CELLS. */
export function cellsOf(facts: CellFacts): Cell[] {
  return CELLS.map((cell) => ({
    step: facts.step,
    slot: facts.slot.name,
    card: facts.at.card,
    cell,
    ...overridden(cell, makers[cell](facts), facts),
  }));
}

type Said = Pick<Cell, 'value' | 'text'>;
type Made = Said & Why;

const HOUSE = (sections: string): Source => ({ cite: `house rules ${sections}`, mark: 'choice' });
const MODEL: Source = {
  cite: 'cap of the stage, by the body model of this project (estimate; its page names the constants)',
  mark: 'choice',
};

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
    dosed(facts, 'reserve', { value: facts.at.dose.reserve, text: reserveText(facts.at.dose) }),
  hipFlexionDeg: (facts) =>
    ranged(facts, {
      value: facts.hipBendDeg,
      text: facts.hipBendDeg === null ? '' : `about ${facts.hipBendDeg}°`,
    }),
  howFar: (facts) => ranged(facts, facts.howFar),
  timesPerDay: (facts) =>
    dosed(facts, 'timesPerDay', {
      value: facts.at.dose.timesPerDay,
      text: timesText(facts.at.dose.timesPerDay),
    }),
  days: (facts) => ({
    value: facts.days.join(','),
    text: daysText(facts.days),
    rule: 'the week on one recovery clock',
    inputs: { perWeek: facts.days.length },
    source: HOUSE('6'),
    decidedBy: 'dose',
  }),
};

function tempoCell(facts: CellFacts): Made {
  const { tempo, kind } = facts.at.dose;
  if (kind === 'contacts') return dosed(facts, 'tempo', { value: null, text: '' });
  return dosed(facts, 'tempo', {
    value: `${tempo.goSeconds}-${tempo.holdSeconds}-${tempo.backSeconds}`,
    text: kind === 'hold' ? easeText(tempo) : tempoText(tempo, facts.way, facts.pause),
  });
}

/** A number of the dose: a step's, what the minutes left, this person's own, or the protocol's. */
function dosed(facts: CellFacts, cell: CellName, said: Said): Made {
  const { slot, fit } = facts;
  const why =
    stepWhy(facts, cell) ??
    minutesWhy(facts, cell) ??
    (fit.first.why as Partial<Record<CellName, Why>>)[cell];
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
  howFar: 'range',
};

function stepWhy({ changes }: CellFacts, cell: CellName): Why | null {
  const change = changes.find((one) => one.change === STEP_CHANGES[cell]);
  if (change === undefined) return null;
  const { from, to, eased, wished, stoppedBy } = change;
  return {
    rule: `${eased ? 'taken down by a step of the ladder' : 'step of the ladder'}, from ${from === null ? '-' : amountText(from)} to ${to === null ? '-' : amountText(to)}`,
    inputs: eased ? { from, to } : { from, to, wished, stoppedBy },
    source: HOUSE('4'),
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
        source: HOUSE('4'),
        decidedBy: 'minutes',
      };
}

function loadCell(facts: CellFacts): Made {
  const { fit, load, byFeel, at, isFirstCard, slot } = facts;
  const { load: start } = fit;
  const { rule, inputs, source, decidedBy } = {
    rule: start.because,
    inputs: start.inputs,
    source: start.source ?? slot.doseSource,
    decidedBy: start.decidedBy,
  };
  if (byFeel)
    return {
      value: null,
      text: feelText(at.dose.reserve, start.decidedBy === 'dose' ? null : start.load.made),
      rule,
      inputs: { ...inputs, reserve: at.dose.reserve },
      source,
      decidedBy,
    };
  const said = { value: at.loadKg, text: loadText(at.loadKg, load?.made ?? null) };
  const stepped = stepWhy(facts, 'loadKg');
  if (stepped !== null) return { ...said, ...stepped };
  if (!isFirstCard && at.loadKg > 0) {
    const carried = 'carried on from the easier exercise, no heavier';
    return { ...said, rule: carried, inputs: {}, source: HOUSE('4'), decidedBy: 'step' };
  }
  return { ...said, rule, inputs, source, decidedBy };
}

function ranged(facts: CellFacts, said: Said): Made {
  const { fit, at, rangeInputs } = facts;
  const stepped = stepWhy(facts, 'hipFlexionDeg');
  if (stepped !== null) return { ...said, ...stepped, inputs: { ...rangeInputs, ...stepped.inputs } };
  if (at.rangeDeg === null)
    return {
      ...said,
      rule: 'done in full: every limit holds along it',
      inputs: rangeInputs,
      source: HOUSE('3'),
      decidedBy: 'dose',
    };
  const { rangeDecidedBy } = fit;
  return {
    ...said,
    ...RANGE_WHY[rangeDecidedBy as keyof typeof RANGE_WHY],
    inputs: rangeInputs,
    decidedBy: rangeDecidedBy,
  };
}

const SMALLEST = 'smallest of the cap, the model and what hurt, rounded to the gentle end';

/** By what decided the range at the first step. */
const RANGE_WHY = {
  hipFlexion: {
    rule: SMALLEST,
    source: { cite: 'hip bend cap of the stage, house rules 3', mark: 'choice' },
  },
  compression: { rule: SMALLEST, source: MODEL },
  tension: { rule: SMALLEST, source: MODEL },
  demand: { rule: SMALLEST, source: MODEL },
  provokedAngle: { rule: `${SMALLEST}; here the angle that hurt, less the margin`, source: HOUSE('3') },
  testedSet: { rule: 'no further than the set that was tested with this load', source: HOUSE('3 and 4') },
  kit: { rule: 'the highest step in the house that every limit admits', source: HOUSE('3') },
  dose: { rule: 'the whole range of the card: every limit holds along it', source: HOUSE('3') },
} as const;

function overridden(cell: CellName, made: Made, { own, byRule, hipBendDeg }: CellFacts): Made {
  // The landmark follows the clinician's degrees.
  const entry = own.get(cell) ?? (cell === 'howFar' ? own.get('hipFlexionDeg') : undefined);
  if (entry === undefined) return made;
  const words =
    typeof entry.value === 'string' && !made.text.startsWith(entry.value)
      ? wordsOf(cell, entry.value, made)
      : {};
  return {
    ...made,
    ...words,
    rule: `clinician: ${entry.reason}`,
    inputs: { ...made.inputs, byRule: byRuleOf(cell, byRule, hipBendDeg) },
    source: { cite: `the clinician's own entry: ${entry.reason}`, mark: 'choice' },
    decidedBy: 'clinician',
  };
}

// Days and a tempo in seconds are put in words like any other; what is written in words stands as it is.
function wordsOf(cell: CellName, value: string, made: Made): Partial<Said> {
  if (cell === 'days' || (cell === 'tempo' && made.value === value)) return {};
  return { value, text: value };
}

function byRuleOf(
  cell: CellName,
  { dose, loadKg, rangeDeg, daysPerWeek }: Prescribed,
  hipBendDeg: number | null,
) {
  switch (cell) {
    case 'loadKg':
      return loadKg;
    case 'hipFlexionDeg':
    case 'howFar':
      return rangeDeg ?? hipBendDeg;
    case 'days':
      return daysPerWeek;
    case 'tempo':
      return `${dose.tempo.goSeconds}-${dose.tempo.holdSeconds}-${dose.tempo.backSeconds}`;
    default:
      return dose[cell];
  }
}
