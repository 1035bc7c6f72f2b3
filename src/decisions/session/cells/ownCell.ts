/** The clinician's own entry over what a cell would be. */
import { clinicianEntry } from '../../terms/houseSources.ts';
import type { Prescribed } from '../../../dosing/rung.ts';
import type { CellName } from '../../terms/cell.ts';
import type { CellFacts, Made } from './facts.ts';

/** The cell as it is, or with the entry and the rule's value beside it; numbers already stand in `at`. */
export function overridden(cell: CellName, made: Made, { own, byRule, angle, angleDeg }: CellFacts): Made {
  // The landmark follows the clinician's degrees.
  const entry = own.get(cell) ?? (cell === 'howFar' ? own.get(`${angle}Deg`) : undefined);
  if (entry === undefined) return made;
  // Days and a tempo in seconds are numbers like any other; what is written in words stands as it is.
  const isText =
    typeof entry.value === 'string' && cell !== 'days' && !(cell === 'tempo' && made.value === entry.value);
  return {
    ...made,
    ...(isText ? { value: entry.value } : {}),
    rule: { rule: 'clinician', reason: entry.reason },
    inputs: { ...made.inputs, byRule: byRuleOf(cell, byRule, angleDeg) },
    source: clinicianEntry(entry.reason),
    decidedBy: 'clinician',
  };
}

function byRuleOf(
  cell: CellName,
  { dose, loadKg, rangeDeg, daysPerWeek }: Prescribed,
  angleDeg: number | null,
) {
  switch (cell) {
    case 'loadKg':
      return loadKg;
    case 'hipFlexionDeg':
    case 'kneeFlexionDeg':
    case 'ankleDorsiflexionDeg':
    case 'howFar':
      return rangeDeg ?? angleDeg;
    case 'days':
      return daysPerWeek;
    case 'tempo':
      return `${dose.tempo.goSeconds}-${dose.tempo.holdSeconds}-${dose.tempo.backSeconds}`;
    default:
      return dose[cell];
  }
}
