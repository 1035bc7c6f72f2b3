/** Whether treatment may end (house rules 10): goal done, mornings quiet, sides alike, sitting as wished. */
import type { Consult } from '../content/library.ts';
import { oneRepetitionMaximum, type ClinicFormula } from '../dosing/maximum.ts';
import type { Person } from '../decisions/person/person.ts';

export interface Criterion {
  readonly name: string;
  readonly found: string;
  readonly asked: string;
  /** Null: it was not recorded, or not asked of this person. */
  readonly met: boolean | null;
}

/** The four criteria in the order of the rules. */
export function dischargeCriteria({ consult, protocol, clinic }: Person): Criterion[] {
  const { goalDoneTimes, checkAtMost, sideDifferenceAtMost } = protocol.discharge;
  return [
    goalCriterion(consult, goalDoneTimes.value),
    {
      name: 'Usual morning pain',
      found: `${consult.usualMorningPain} of 10`,
      asked: `at most ${checkAtMost.value}`,
      met: consult.usualMorningPain <= checkAtMost.value,
    },
    sideCriterion(consult, clinic.defaults.oneRepetitionMaximum, sideDifferenceAtMost.value),
    sittingCriterion(consult),
  ];
}

function goalCriterion({ goals }: Consult, times: number): Criterion {
  const done = goals.flatMap(({ doneTimes }) => doneTimes ?? []);
  return {
    name: 'Goal activity',
    found: done.length === 0 ? 'not recorded' : `done ${Math.max(...done)} times`,
    asked: `done ${times} times, settled by the next day`,
    met: done.length === 0 ? null : Math.max(...done) >= times,
  };
}

/** Of every card tested on both sides the share by which the weaker one falls behind; the worst of them counts. */
function sideCriterion({ testedSets }: Consult, formula: ClinicFormula, atMost: number): Criterion {
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
  const worst = behind.length === 0 ? null : Math.max(...behind);
  return {
    name: 'Strength of the weaker side',
    found: worst === null ? 'not tested on both sides' : `${Math.round(worst * 100)} % behind`,
    asked: `at most ${Math.round(atMost * 100)} % behind`,
    met: worst === null ? null : worst <= atMost + 1e-9,
  };
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
  const { toleranceMinutes, goalMinutes } = sitting;
  return {
    name: 'Sitting',
    found: `${toleranceMinutes} minutes`,
    asked: goalMinutes === undefined ? 'no goal recorded' : `the goal of ${goalMinutes} minutes`,
    met: goalMinutes === undefined ? null : toleranceMinutes >= goalMinutes,
  };
}
