/** The clinician's own entry over what a cell would be. */
import type { Prescribed } from '../../dosing/rung.ts';
import type { CellName } from '../programme.ts';
import type { CellFacts, Made, Said } from './facts.ts';

/** The cell as it is, or with the entry and the rule's value beside it; numbers already stand in `at`. */
export function overridden(cell: CellName, made: Made, { own, byRule, angle, angleDeg }: CellFacts): Made {
  // The landmark follows the clinician's degrees.
  const entry = own.get(cell) ?? (cell === 'howFar' ? own.get(`${angle}Deg`) : undefined);
  if (entry === undefined) return made;
  const words =
    typeof entry.value === 'string' && !made.text.startsWith(entry.value)
      ? wordsOf(cell, entry.value, made)
      : {};
  return {
    ...made,
    ...words,
    rule: `clinician: ${entry.reason}`,
    inputs: { ...made.inputs, byRule: byRuleOf(cell, byRule, angleDeg) },
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
