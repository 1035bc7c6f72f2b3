/** Dates out of the future or the far past, and plans that reach too far. */
import { addDays, daysBetween, type IsoDate } from '../../units/date.ts';
import type { ConsultFrontMatter } from '../schema/consult.ts';
import type { Plausible } from '../schema/plausible.ts';
import type { Doubt, DoubtRule, ValuePath } from './doubt.ts';

export function dateDoubts(consult: ConsultFrontMatter, limits: Plausible): Doubt[] {
  const { seenOn, startOn } = consult;
  const decidedFrom = addDays(seenOn, -7 * limits.decidedWithinWeeks.value);
  const scoredFrom = addDays(seenOn, -7 * limits.scoredWithinWeeks.value);
  const aimedTo = addDays(seenOn, 7 * limits.aimedWithinWeeks.value);
  return [
    ...planDoubts(consult, limits),
    ...consult.clearances.flatMap(({ on, imaging }, index) => [
      ...early(on, decidedFrom, 'longAgo', ['clearances', index, 'on']),
      ...between(imaging?.on, [decidedFrom, on], ['clearances', index, 'imaging', 'on']),
    ]),
    ...between(consult.discharge?.on, [decidedFrom, startOn], ['discharge', 'on']),
    ...consult.outcomes.flatMap(({ on }, index) =>
      between(on, [scoredFrom, seenOn], ['outcomes', index, 'on']),
    ),
    ...consult.goals.flatMap(({ on }, index) => aimed(on, [seenOn, aimedTo], ['goals', index, 'on'])),
    ...(consult.running.races ?? []).flatMap(({ on }, index) =>
      aimed(on, [seenOn, aimedTo], ['running', 'races', index, 'on']),
    ),
  ];
}

function planDoubts({ seenOn, startOn, reviewOn }: ConsultFrontMatter, limits: Plausible): Doubt[] {
  const { seenFrom, seenTo, startWithinDays, reviewFromDays, reviewWithinWeeks } = limits;
  const startBy = addDays(seenOn, startWithinDays.value);
  const reviewBy = addDays(startOn, 7 * reviewWithinWeeks.value);
  return [
    ...early(seenOn, seenFrom.value, 'seenWhen', ['seenOn']),
    ...late(seenOn, seenTo.value, 'seenWhen', ['seenOn']),
    ...late(startOn, startBy, 'startLate', ['startOn'], { days: daysBetween(seenOn, startOn) }),
    ...early(reviewOn, addDays(startOn, reviewFromDays.value), 'reviewSoon', ['reviewOn']),
    ...late(reviewOn, reviewBy, 'reviewLate', ['reviewOn'], {
      weeks: Math.ceil(daysBetween(startOn, reviewOn) / 7),
      mostWeeks: reviewWithinWeeks.value,
    }),
  ];
}

/** Something that has been: not long ago, and not still to come. */
function between(on: IsoDate | undefined, [from, to]: readonly [IsoDate, IsoDate], path: ValuePath): Doubt[] {
  return on === undefined ? [] : [...early(on, from, 'longAgo', path), ...late(on, to, 'notYet', path)];
}

/** Something to come: not over, and not far ahead. */
function aimed(on: IsoDate | undefined, [from, to]: readonly [IsoDate, IsoDate], path: ValuePath): Doubt[] {
  return on === undefined ? [] : [...early(on, from, 'longAgo', path), ...late(on, to, 'farAhead', path)];
}

function early(on: IsoDate, least: IsoDate, rule: DoubtRule, path: ValuePath): Doubt[] {
  return on >= least ? [] : [{ rule, path, value: on, least, inputs: {} }];
}

function late(
  on: IsoDate,
  most: IsoDate,
  rule: DoubtRule,
  path: ValuePath,
  inputs: Doubt['inputs'] = {},
): Doubt[] {
  return on <= most ? [] : [{ rule, path, value: on, most, inputs }];
}
