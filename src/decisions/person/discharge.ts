/** Whether treatment may end (house rules 10): goal done, mornings quiet, sides alike, sitting as wished. */
import type { Consult } from '../../content/library.ts';
import { oneRepetitionMaximum, type ClinicFormula } from '../../dosing/maximum.ts';
import type { IsoDate } from '../../units/date.ts';
import type { LoggedMornings } from '../terms/earlier.ts';
import type { Person } from './person.ts';

export interface Criterion {
  readonly criterion: 'goalDoneTimes' | 'usualMorningPain' | 'sideDifference' | 'sittingMinutes';
  /** Times, points of 10, share by which the weaker side falls behind, minutes; null: not recorded. */
  readonly found: number | null;
  /** In the same unit; null: nothing is asked of this person. */
  readonly asked: number | null;
  /** Null: it was not recorded, or not asked of this person. */
  readonly met: boolean | null;
  /** The entries that show it. */
  readonly shownBy: readonly Evidence[];
}

/** One entry of the consult or of the log. */
export type Evidence =
  | { readonly of: 'goal'; readonly what: string; readonly times: number | null }
  | { readonly of: 'usualMorning'; readonly on: IsoDate; readonly pain: number }
  | ({ readonly of: 'loggedMornings' } & LoggedMornings)
  | { readonly of: 'sides'; readonly card: string; readonly on: IsoDate; readonly behind: number }
  | { readonly of: 'sitting'; readonly on: IsoDate; readonly minutes: number };

/** The four criteria in the order of the rules. */
export function dischargeCriteria({
  consult,
  protocol,
  clinic,
  logged,
}: Pick<Person, 'consult' | 'protocol' | 'clinic' | 'logged'>): Criterion[] {
  const { goalDoneTimes, checkAtMost, sideDifferenceAtMost } = protocol.discharge;
  return [
    goalCriterion(consult, goalDoneTimes.value),
    morningCriterion(consult, logged?.mornings ?? null, checkAtMost.value),
    sideCriterion(consult, clinic.defaults.oneRepetitionMaximum, sideDifferenceAtMost.value),
    sittingCriterion(consult),
  ];
}

function goalCriterion({ goals }: Consult, asked: number): Criterion {
  const done = goals.flatMap(({ doneTimes }) => doneTimes ?? []);
  const found = done.length === 0 ? null : Math.max(...done);
  const shownBy = goals.map(({ what, doneTimes }): Evidence => ({
    of: 'goal',
    what,
    times: doneTimes ?? null,
  }));
  return { criterion: 'goalDoneTimes', found, asked, met: found === null ? null : found >= asked, shownBy };
}

// What the person says of a usual morning, and what was written down of the last ones: the worse of them counts.
function morningCriterion(
  { usualMorningPain: pain, seenOn: on }: Consult,
  mornings: LoggedMornings | null,
  asked: number,
): Criterion {
  const found = Math.max(pain, mornings?.worst ?? 0);
  const usual: Evidence = { of: 'usualMorning', on, pain };
  return {
    criterion: 'usualMorningPain',
    found,
    asked,
    met: found <= asked,
    shownBy: mornings === null ? [usual] : [usual, { of: 'loggedMornings', ...mornings }],
  };
}

/** Of every card tested on both sides the share by which the weaker one falls behind; the worst of them counts. */
function sideCriterion(
  { testedSets, seenOn: on }: Consult,
  formula: ClinicFormula,
  asked: number,
): Criterion {
  const cards = [...new Set(testedSets.map(({ card }) => card))];
  const shownBy = cards.flatMap((card): (Evidence & { readonly of: 'sides' })[] => {
    const [left, right] = (['left', 'right'] as const).map((side) =>
      strongest(
        testedSets.filter((set) => set.card === card && set.side === side),
        formula,
      ),
    );
    return left === undefined || right === undefined || left === null || right === null
      ? []
      : [{ of: 'sides', card, on, behind: 1 - Math.min(left, right) / Math.max(left, right) }];
  });
  const found = shownBy.length === 0 ? null : Math.max(...shownBy.map(({ behind }) => behind));
  const met = found === null ? null : found <= asked + 1e-9;
  return { criterion: 'sideDifference', found, asked, met, shownBy };
}

/** The greatest maximum of the sets, kg; of sets without a weight the most repetitions. Null where none says anything. */
function strongest(sets: readonly Consult['testedSets'][number][], formula: ClinicFormula): number | null {
  const values = sets.flatMap(({ loadKg, repetitions, reserve }) => {
    if (loadKg === 0) return [repetitions + reserve];
    const answer = oneRepetitionMaximum(loadKg, repetitions + reserve, formula);
    return 'none' in answer ? [] : [answer.maximumKg];
  });
  return values.length === 0 ? null : Math.max(...values);
}

function sittingCriterion({ sitting, seenOn: on }: Consult): Criterion {
  const { toleranceMinutes: found, goalMinutes: asked = null } = sitting;
  const met = asked === null ? null : found >= asked;
  return {
    criterion: 'sittingMinutes',
    found,
    asked,
    met,
    shownBy: [{ of: 'sitting', on, minutes: found }],
  };
}
