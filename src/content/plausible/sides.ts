/** The painful side against what is said of the legs elsewhere. */
import type { Nameable } from '../library.ts';
import type { ConsultFrontMatter } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import { above, type Doubt } from './doubt.ts';

type Leg = 'left' | 'right';

export function sideDoubts(consult: ConsultFrontMatter, limits: Plausible, { exercises }: Nameable): Doubt[] {
  const { side, worseSide, tests, testedSets } = consult;
  const treated = side === 'both' ? worseSide : side;
  if (treated === undefined) return [];
  const whole = sideItself(consult, treated);
  if (whole.length > 0) return whole;
  const painTo = limits.soundLegPainTo.value;
  const hurts = (pain: number, leg: Leg | 'both' | undefined, path: Doubt['path']): Doubt[] =>
    side === 'both' || leg !== other(treated)
      ? []
      : above(pain, painTo, { rule: 'soundLegHurts', path, inputs: { leg, side } });
  return [
    ...tests.flatMap(({ pain, side: leg }, index) => hurts(pain, leg, ['tests', index, 'pain'])),
    ...testedSets.flatMap(({ card, pain, side: leg }, index) =>
      exercises.get(card)?.legs === 'together'
        ? sorerLeg(leg, treated, index)
        : hurts(pain, leg, ['testedSets', index, 'pain']),
    ),
  ];
}

/** Told of the side where everything else speaks of the other one: then it is not the legs that are wrong. */
function sideItself({ side, painArea = '', tests, testedSets }: ConsultFrontMatter, treated: Leg): Doubt[] {
  const path = side === 'both' ? ['worseSide'] : ['side'];
  const named = (['left', 'right'] as const).filter((leg) => new RegExp(`\\b${leg}\\b`, 'i').test(painArea));
  const inputs = { painArea, other: other(treated) };
  if (named.length === 1 && named[0] !== treated)
    return [{ rule: 'sideOfArea', path, value: treated, inputs }];
  const legs = [...tests, ...testedSets].flatMap((one) => one.side ?? []);
  const onlyOther = legs.length > 0 && legs.every((leg) => leg === other(treated));
  return onlyOther ? [{ rule: 'sideUntested', path, value: treated, inputs }] : [];
}

/** Of a lift on both legs the file names the sorer one. */
function sorerLeg(leg: Leg, treated: Leg, index: number): Doubt[] {
  if (leg === treated) return [];
  return [{ rule: 'sorerLeg', path: ['testedSets', index, 'side'], value: leg, inputs: { treated } }];
}

function other(leg: Leg): Leg {
  return leg === 'left' ? 'right' : 'left';
}
