/** What is asked before treatment ends, what was found, and whether it is met: for record, note and letter. */
import type { Criterion, Evidence } from '../../../decisions/person/discharge.ts';
import { countText, listText, numberText } from '../plain.ts';

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
export const CRITERION_COLUMNS = ['Asked', 'Found', 'Met', 'Shown by'];

/** A row a criterion: met, not met or not known, with the entries that show it. `titleOf`: the title of a card. */
export function criterionRow(
  { criterion, found, asked, met, shownBy }: Criterion,
  titleOf: (card: string) => string,
): string[] {
  return [
    `${NAMES[criterion]}: ${asked === null ? 'no goal recorded' : ASKED[criterion](asked)}`,
    found === null ? notFound(criterion) : FOUND[criterion](found),
    metText(met),
    shownBy.map((one) => evidenceText(one, titleOf)).join('; ') || 'no entry',
  ];
}

function metText(met: boolean | null): string {
  return met === null ? 'not known' : met ? 'met' : 'not met';
}

function evidenceText(one: Evidence, titleOf: (card: string) => string): string {
  switch (one.of) {
    case 'goal':
      return `${one.what}: ${one.times === null ? 'times not recorded' : `done ${countText(one.times, 'time')}`}`;
    case 'usualMorning':
      return `consult of ${one.on}: ${numberText(one.pain)}`;
    case 'loggedMornings':
      return `log, ${countText(one.written, 'morning')} up to ${one.until}: ${numberText(one.worst)} at most`;
    case 'sides':
      return `${titleOf(one.card)}, ${one.on}: ${percentText(one.behind)}`;
    case 'sitting':
      return `consult of ${one.on}: ${numberText(one.minutes)} minutes`;
  }
}

/** What is still open when the clinician ends treatment, for the record. */
export function dischargeRemark(criteria: readonly Criterion[]): string {
  const open = criteria.filter(({ met }) => met !== true);
  const names = open.map(({ criterion, met }) => `${NAMES[criterion].toLowerCase()} (${metText(met)})`);
  return open.length === 0
    ? 'Discharge: all that is asked is met.'
    : `Discharge is the clinician's own decision; open: ${listText(names)}.`;
}
