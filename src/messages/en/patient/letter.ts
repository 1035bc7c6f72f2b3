/** The letter to whoever referred the patient: what it was, how it went, what goes on, when to send back. One page. */
import type { Clinic, Consult } from '../../../content/library.ts';
import type { Criterion } from '../../../decisions/person/discharge.ts';
import { criterionRow, CRITERION_COLUMNS } from '../clinician/discharge.ts';
import { scoreName, type MinimalChange, type ScoreKind } from '../clinician/record/pictures.ts';
import type { IsoDate } from '../../../units/date.ts';
import { type Part, type Section, list, paragraph, section, table } from '../../shapes.ts';
import { countText, dayAndYear, listText, numberText } from '../plain.ts';

export interface LetterWords {
  readonly consult: Consult;
  readonly clinic: Clinic;
  readonly tendon: string;
  readonly criteria: readonly Criterion[];
  /** Titles of what goes on at home. */
  readonly exercises: readonly string[];
  /** Each with the first and the last entry of all revisions. */
  readonly scores: readonly ScoreChange[];
  readonly titleOf: (card: string) => string;
}

export interface ScoreChange {
  readonly kind: ScoreKind;
  readonly first: { readonly on: IsoDate; readonly value: number };
  /** Null where there is one entry. */
  readonly last: { readonly on: IsoDate; readonly value: number } | null;
  readonly minimal: MinimalChange | null;
}

const SIDES = { left: 'left side', right: 'right side', both: 'both sides' } as const;

/** A section for a page of its own; of each score the first and the last. */
export function letterText({
  consult,
  clinic,
  tendon,
  criteria,
  exercises,
  scores,
  titleOf,
}: LetterWords): Section {
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
      criteria.map((one) => criterionRow(one, titleOf)),
    ),
    ...scoreParts(scores),
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

function scoreParts(scores: readonly ScoreChange[]): Part[] {
  if (scores.length === 0) return [];
  const rows = scores.map(({ kind, first, last, minimal }) => [
    scoreName(kind),
    `${numberText(first.value)} (${dayAndYear(first.on)})`,
    last === null ? 'one entry alone' : `${numberText(last.value)} (${dayAndYear(last.on)})`,
    minimal === null ? '-' : `${numberText(minimal.value)} (${minimal.mark})`,
  ]);
  return [table('Scores, first and last', ['Score', 'First', 'Last', 'Least change that matters'], rows)];
}
