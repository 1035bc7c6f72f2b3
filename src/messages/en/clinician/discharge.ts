/** What is asked before treatment ends, what was found, and whether it is met: for record, note and letter. */
import type { Criterion } from '../../../decisions/person/discharge.ts';
import { listText } from '../plain.ts';

const NAMES: Readonly<Record<Criterion['criterion'], string>> = {
  goalDoneTimes: 'Goal activity',
  usualMorningPain: 'Usual morning pain',
  sideDifference: 'Strength of the weaker side',
  sittingMinutes: 'Sitting',
};

const percentText = (share: number) => `${Math.round(share * 100)} % behind`;

const FOUND: Readonly<Record<Criterion['criterion'], (found: number) => string>> = {
  goalDoneTimes: (times) => `done ${times} times`,
  usualMorningPain: (pain) => `${pain} of 10`,
  sideDifference: percentText,
  sittingMinutes: (minutes) => `${minutes} minutes`,
};

const ASKED: Readonly<Record<Criterion['criterion'], (asked: number) => string>> = {
  goalDoneTimes: (times) => `done ${times} times, settled by the next day`,
  usualMorningPain: (pain) => `at most ${pain}`,
  sideDifference: (share) => `at most ${percentText(share)}`,
  sittingMinutes: (minutes) => `the goal of ${minutes} minutes`,
};

const notFound = (criterion: Criterion['criterion']) =>
  criterion === 'sideDifference' ? 'not tested on both sides' : 'not recorded';

/** Headings over the rows of criteria. */
export const CRITERION_COLUMNS = ['Asked', 'Found', 'Met'];

/** A row a criterion. `unknown`: what stands under `Met` where it was not recorded or not asked. */
export function criterionRow({ criterion, found, asked, met }: Criterion, unknown: string): string[] {
  return [
    `${NAMES[criterion]}: ${asked === null ? 'no goal recorded' : ASKED[criterion](asked)}`,
    found === null ? notFound(criterion) : FOUND[criterion](found),
    met === null ? unknown : met ? 'yes' : 'no',
  ];
}

/** What is still open when the clinician ends treatment, for the record. */
export function dischargeRemark(criteria: readonly Criterion[]): string {
  const open = criteria.filter(({ met }) => met !== true);
  const names = open.map(
    ({ criterion, met }) =>
      `${NAMES[criterion].toLowerCase()} (${met === null ? 'not recorded' : 'not met'})`,
  );
  return open.length === 0
    ? 'Discharge: all that is asked is met.'
    : `Discharge is the clinician's own decision; open: ${listText(names)}.`;
}
