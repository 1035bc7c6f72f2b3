/** Pain that is told in two ways: in a test and in a set, in the morning and in the tests, with an angle and as none. */
import type { ExerciseCard, Nameable } from '../library.ts';
import type { ConsultFrontMatter } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import { above, type Doubt } from './doubt.ts';

type Test = ConsultFrontMatter['tests'][number];
type TestedSet = ConsultFrontMatter['testedSets'][number];
type Cards = Nameable['exercises'];

export function painDoubts(consult: ConsultFrontMatter, limits: Plausible, { exercises }: Nameable): Doubt[] {
  return [
    ...consult.testedSets.flatMap((set, index) => setBesideTests(set, index, consult, limits, exercises)),
    ...consult.tests.flatMap((test, index) => easierHurtsMore(test, index, consult, limits, exercises)),
    ...usualPain(consult, limits),
    ...consult.tests.flatMap(painlessAngle),
    ...lowBesidePain(consult, limits),
  ];
}

/** Told of the set: it was done after the tests. The test that is furthest from it is named. */
function setBesideTests(
  set: TestedSet,
  index: number,
  { tests, side }: ConsultFrontMatter,
  { painApart }: Plausible,
  cards: Cards,
): Doubt[] {
  const [test] = tests
    .filter((one) => isOneLeg(one, set, side) && contradicts(one, set, painApart.value, cards))
    .toSorted((a, b) => Math.abs(b.pain - set.pain) - Math.abs(a.pain - set.pain));
  if (test === undefined) return [];
  const [least, most] = [Math.max(0, test.pain - painApart.value), Math.min(10, test.pain + painApart.value)];
  const inputs = { test: test.test, pain: test.pain, card: set.card };
  return [{ rule: 'painApart', path: ['testedSets', index, 'pain'], value: set.pain, least, most, inputs }];
}

function isOneLeg(test: Test, set: TestedSet, side: ConsultFrontMatter['side']): boolean {
  const leg = test.side ?? side;
  return leg === 'both' || leg === set.side;
}

/** More pain at less work, and the other way round; of the same card a difference alone is enough. */
function contradicts(test: Test, set: TestedSet, apart: number, cards: Cards): boolean {
  if (Math.abs(test.pain - set.pain) <= apart) return false;
  const same = test.test === set.card;
  const setEasier = isEasier(set.card, test.test, cards);
  if (set.pain > test.pain) return same || setEasier;
  // What began to hurt only beyond the bend of the set says nothing against it.
  if (set.rangeDeg !== undefined && set.rangeDeg < (test.painFreeHipFlexionDeg ?? 0)) return false;
  return (
    same ||
    isEasier(test.test, set.card, cards) ||
    (set.loadKg > 0 && isEasier(set.card, test.test, cards, 1))
  );
}

/** Whether a card is one of the easier versions of another, so many links down. */
function isEasier(easier: string, than: string, cards: Cards, links = 9): boolean {
  const next = (id: string): ExerciseCard['easier'] => cards.get(id)?.easier ?? null;
  let at = next(than);
  for (let link = 0; at !== null && link < links; link += 1) {
    if (at === easier) return true;
    at = next(at);
  }
  return false;
}

/** A test that hurts far more than a harder version of itself: one of the two is another exercise, or the pain a slip. */
function easierHurtsMore(
  { test, pain, side }: Test,
  index: number,
  { tests, side: sore }: ConsultFrontMatter,
  { painApart }: Plausible,
  cards: Cards,
): Doubt[] {
  const leg = (of: Test['side']) => of ?? sore;
  const harder = tests.find(
    (one) =>
      leg(one.side) === leg(side) && isEasier(test, one.test, cards) && pain - one.pain > painApart.value,
  );
  if (harder === undefined) return [];
  const inputs = { test, harder: harder.test, index: tests.indexOf(harder), pain: harder.pain };
  const most = harder.pain + painApart.value;
  return [{ rule: 'easierHurtsMore', path: ['tests', index, 'pain'], value: pain, most, inputs }];
}

function usualPain({ usualMorningPain, tests }: ConsultFrontMatter, limits: Plausible): Doubt[] {
  const worst = Math.max(...tests.map(({ pain }) => pain));
  return above(usualMorningPain, worst + limits.usualPainOverTests.value, {
    rule: 'usualPain',
    path: ['usualMorningPain'],
    inputs: { worst },
  });
}

/** An angle at which pain began, and no pain. */
function painlessAngle({ pain, painFreeHipFlexionDeg }: Test, index: number): Doubt[] {
  if (pain > 0 || painFreeHipFlexionDeg === undefined) return [];
  return [
    {
      rule: 'painlessAngle',
      path: ['tests', index, 'pain'],
      value: pain,
      least: 1,
      inputs: { painFreeHipFlexionDeg },
    },
  ];
}

function lowBesidePain(
  { irritability, response24h, tests, usualMorningPain }: ConsultFrontMatter,
  { lowIrritabilityPainTo: { value: most } }: Plausible,
): Doubt[] {
  const worst = Math.max(usualMorningPain, ...tests.map(({ pain }) => pain));
  if (irritability !== 'low' || (response24h !== 'up' && worst <= most)) return [];
  const inputs = { worst, mostPain: most, response24h };
  return [{ rule: 'lowIrritability', path: ['irritability'], value: irritability, inputs }];
}
