/** Whether treatment may end (house rules 10): goal done, mornings quiet, sides alike, sitting as wished. */
import type { Consult } from '../../content/library.ts';
import { oneRepetitionMaximum, type ClinicFormula } from '../../dosing/maximum.ts';
import type { Person } from './person.ts';

export interface Criterion {
  readonly criterion: 'goalDoneTimes' | 'usualMorningPain' | 'sideDifference' | 'sittingMinutes';
  /** Times, points of 10, share by which the weaker side falls behind, minutes; null: not recorded. */
  readonly found: number | null;
  /** In the same unit; null: nothing is asked of this person. */
  readonly asked: number | null;
  /** Null: it was not recorded, or not asked of this person. */
  readonly met: boolean | null;
}

/** The four criteria in the order of the rules. */
export function dischargeCriteria({ consult, protocol, clinic }: Person): Criterion[] {
  const { goalDoneTimes, checkAtMost, sideDifferenceAtMost } = protocol.discharge;
  return [
    goalCriterion(consult, goalDoneTimes.value),
    {
      criterion: 'usualMorningPain',
      found: consult.usualMorningPain,
      asked: checkAtMost.value,
      met: consult.usualMorningPain <= checkAtMost.value,
    },
    sideCriterion(consult, clinic.defaults.oneRepetitionMaximum, sideDifferenceAtMost.value),
    sittingCriterion(consult),
  ];
}

function goalCriterion({ goals }: Consult, asked: number): Criterion {
  const done = goals.flatMap(({ doneTimes }) => doneTimes ?? []);
  const found = done.length === 0 ? null : Math.max(...done);
  return { criterion: 'goalDoneTimes', found, asked, met: found === null ? null : found >= asked };
}

/** Of every card tested on both sides the share by which the weaker one falls behind; the worst of them counts. */
function sideCriterion({ testedSets }: Consult, formula: ClinicFormula, asked: number): Criterion {
  const cards = [...new Set(testedSets.map(({ card }) => card))];
  const behind = cards.flatMap((card) => {
    const [left, right] = (['left', 'right'] as const).map((side) =>
      strongest(
        testedSets.filter((set) => set.card === card && set.side === side),
        formula,
      ),
    );
    return left === undefined || right === undefined || left === null || right === null
      ? []
      : [1 - Math.min(left, right) / Math.max(left, right)];
  });
  const found = behind.length === 0 ? null : Math.max(...behind);
  return { criterion: 'sideDifference', found, asked, met: found === null ? null : found <= asked + 1e-9 };
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

function sittingCriterion({ sitting }: Consult): Criterion {
  const { toleranceMinutes: found, goalMinutes: asked = null } = sitting;
  return { criterion: 'sittingMinutes', found, asked, met: asked === null ? null : found >= asked };
}
