/** The letter to whoever referred the patient: what it was, how it went, what goes on, when to send back. One page. */
import type { Clinic, Consult } from '../../../content/library.ts';
import type { Criterion } from '../../../decisions/person/discharge.ts';
import { criterionRow, CRITERION_COLUMNS } from '../clinician/discharge.ts';
import { type Part, type Section, list, paragraph, section, table } from '../../shapes.ts';
import { countText, dayAndYear, listText, numberText } from '../plain.ts';

export interface LetterWords {
  readonly consult: Consult;
  readonly clinic: Clinic;
  readonly tendon: string;
  readonly criteria: readonly Criterion[];
  /** Titles of what goes on at home. */
  readonly exercises: readonly string[];
}

const SIDES = { left: 'left side', right: 'right side', both: 'both sides' } as const;

// A series longer than this would not leave room for the rest of the page.
const MOST_SCORES = 6;

/** A section for a page of its own; of the scores the last few. */
export function letterText({ consult, clinic, tendon, criteria, exercises }: LetterWords): Section {
  const weeks =
    consult.symptomWeeks === undefined ? '' : `, ${countText(consult.symptomWeeks, 'week')} after it began`;
  return section('letter', `End of treatment: ${consult.alias}`, [
    paragraph(`${clinic.name}, ${dayAndYear(consult.seenOn)}. To whom it may concern.`),
    paragraph(
      `I have treated ${consult.alias} (${consult.ageYears} years) for pain of the ${tendon}, ${SIDES[consult.side]}, and end the treatment today${weeks}. We look at it once more on ${dayAndYear(consult.reviewOn)}.`,
    ),
    table(
      'At the end of treatment',
      CRITERION_COLUMNS,
      criteria.map((one) => criterionRow(one, '-')),
    ),
    ...scoreParts(consult),
    paragraph(
      `What goes on at home, once or twice a week: ${listText(exercises)}. Loads and landmarks stand on the patient's leaflet.`,
    ),
    list([
      'Please send back: pain that has been rising for two weeks, or that does not settle within a week of easing back.',
      'Please see at once: numbness between the legs, bladder or bowel change, weakness of the legs, a foot that drops; a sudden pop with a bruise.',
    ]),
    paragraph(`${consult.clinician}. ${clinic.contact.join(' · ')}`),
  ]);
}

function scoreParts({ outcomes }: Consult): Part[] {
  const rows = outcomes
    .slice(-MOST_SCORES)
    .map(({ on, visaH, sittingMinutes, globalChange }) => [
      dayAndYear(on),
      visaH === undefined ? '-' : numberText(visaH),
      sittingMinutes === undefined ? '-' : countText(sittingMinutes, 'minute'),
      globalChange === undefined ? '-' : String(globalChange),
    ]);
  if (rows.length === 0) return [];
  return [table('Scores', ['On', 'VISA-H', 'Sitting', 'Global change'], rows)];
}
