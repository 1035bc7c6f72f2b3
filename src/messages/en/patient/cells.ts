/** The numbers of the dosage table as the patient reads them: plain words, no shorthand. */
import type { IsoDate } from '../../../units/date.ts';
import { CELLS, type CellName, type DecidedCell } from '../../../decisions/terms/cell.ts';
import type { CellFacts } from '../../../decisions/session/cells/facts.ts';
import type { Prescription } from '../../../decisions/session/prescribe.ts';
import {
  daysPerWeekText,
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
} from './dose.ts';
import { countedAs } from '../../../decisions/session/counted.ts';
import { howFarText } from './landmarks.ts';
import { timesText } from '../plain.ts';
import { roundDown } from '../../../units/round.ts';
import { fromDayText } from './week.ts';

const NONE = Object.fromEntries(CELLS.map((cell) => [cell, ''])) as Record<CellName, string>;

/** What each cell says; empty where it does not apply, as those of another joint's angle. */
export function cellTexts({
  cells,
  facts,
  howFar,
  beginsOn,
}: Prescription): Readonly<Record<CellName, string>> {
  const texts = cells.map(
    (cell) => [cell.cell, cellText(cell, facts, howFarText(howFar[0]), beginsOn)] as const,
  );
  return { ...NONE, ...Object.fromEntries(texts) };
}

function cellText(
  { cell, value, decidedBy }: DecidedCell,
  facts: CellFacts,
  howFar: string,
  beginsOn: IsoDate | null,
): string {
  // What a clinician wrote in words stands as it is.
  const own = decidedBy === 'clinician' ? facts.own.get(cell)?.value : undefined;
  const text = typeof own === 'string' && own === value ? ownText(cell, own, facts) : null;
  const said = text ?? (cell === 'howFar' ? howFar : TEXTS[cell](facts));
  return cell === 'days' && beginsOn !== null ? fromDayText(said, beginsOn) : said;
}

// Days and a tempo in seconds are put in words like any other number.
function ownText(cell: CellName, own: string, { at: { dose } }: CellFacts): string | null {
  const seconds = `${dose.tempo.goSeconds}-${dose.tempo.holdSeconds}-${dose.tempo.backSeconds}`;
  return cell === 'days' || (cell === 'tempo' && own === seconds) ? null : own;
}

const TEXTS: Readonly<Record<Exclude<CellName, 'howFar'>, (facts: CellFacts) => string>> = {
  sets: ({ at, fit }) => setsText(at.dose, countedAs(fit.card)),
  repetitions: ({ at, fit }) => repetitionsText(at.dose, countedAs(fit.card)),
  holdSeconds: ({ at }) => holdText(at.dose.holdSeconds),
  tempo: ({ at: { dose }, way, pause }) => {
    if (dose.kind === 'contacts') return '';
    return dose.kind === 'hold' ? easeText(dose.tempo) : tempoText(dose.tempo, way, pause);
  },
  restSeconds: ({ at: { dose } }) => restText(dose.restSeconds, dose.sets),
  loadKg: ({ at, byFeel, load, fit }) =>
    byFeel
      ? feelText(at.dose.reserve, load?.made ?? fit.load.load.made)
      : loadText(at.loadKg, load?.made ?? null),
  reserve: ({ at }) => reserveText(at.dose),
  hipFlexionDeg: angleText,
  kneeFlexionDeg: angleText,
  ankleDorsiflexionDeg: angleText,
  timesPerDay: ({ at }) => timesText(at.dose.timesPerDay),
  days: ({ at, days }) => (at.daysPerWeek === days.length ? daysText(days) : daysPerWeekText(at.daysPerWeek)),
};

// What a clinician wrote stands as it is; the record keeps every number whole.
function angleText({ angleDeg, angleGrainDeg, angle, own }: CellFacts): string {
  if (angleDeg === null) return '';
  const deg = own.has(`${angle}Deg`) ? angleDeg : roundDown(angleDeg, angleGrainDeg);
  return `about ${deg}°`;
}
