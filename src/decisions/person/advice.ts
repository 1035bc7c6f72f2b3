/** Which advice cards stand on this leaflet: those whose occasion holds for this person. */
import type { AdviceCard, Consult } from '../../content/library.ts';
import type { SHOW_WHEN } from '../../content/schema/advice.ts';
import type { Course } from '../stage/course.ts';
import { hasNoWeight } from './kitAtHome.ts';
import type { Person } from './person.ts';
import { circumstancesOf, fitted } from './personalAdvice.ts';
import { stageOf } from '../stage/stageChoice.ts';
import type { StageName } from '../terms/stageName.ts';

type Occasion = (typeof SHOW_WHEN)[number];

// Sitting is worth a word when it is limited at all; a long film or drive is two hours.
const SITS_UNDER_MINUTES = 120;

/**
 * Advice for everybody first, then what most speaks of this person, as many as the clinic wants on a leaflet. `runsNow`:
 * without a break.
 */
export function adviceFor(person: Person, stage: StageName, course: Course, runsNow: boolean): AdviceCard[] {
  const {
    consult,
    library,
    protocol: { angle: its },
  } = person;
  const circumstances = circumstancesOf(person, stageOf(person.protocol, stage));
  const holds = course === 'prevention' ? preventionOccasions(consult) : occasionsOf(consult, stage, runsNow);
  const shown = [...library.advice.values()].filter(
    ({ showWhen, angle = its }) => angle === its && showWhen.some((occasion) => holds.has(occasion)),
  );
  const rank = ({ showWhen }: AdviceCard) =>
    Math.min(
      ...showWhen.filter((occasion) => holds.has(occasion)).map((occasion) => ORDER.indexOf(occasion)),
    );
  shown.sort((a, b) => rank(a) - rank(b) || (a.id < b.id ? -1 : 1));
  return shown
    .flatMap((card) => fitted(card, circumstances) ?? [])
    .slice(0, library.clinic.defaults.adviceAtMost);
}

// What everybody needs, then the rarer before the common.
const ORDER: readonly Occasion[] = [
  'always',
  'treatment',
  'prevention',
  'under-18',
  'drives',
  'no-weights',
  'keep',
  'both-sides',
  'stretches',
  'sits',
  'runs',
  'flare',
  'stage-4',
  'stage-3',
  'stage-2',
  'stage-1',
];

function occasionsOf(consult: Consult, stage: StageName, runsNow: boolean): ReadonlySet<Occasion> {
  const { sitting, changedBefore } = consult;
  const stretches = changedBefore.includes('stretching') || stretchesNow(consult);
  const drives = drivesLong(consult);
  const found: [Occasion, boolean][] = [
    ['always', true],
    ['treatment', stage !== 'keepGoing'],
    // Afterwards the order in which running comes back lies behind; before running without a break it is not asked.
    ['runs', runsNow && stage !== 'keepGoing'],
    ['sits', sitting.toleranceMinutes < SITS_UNDER_MINUTES],
    ['stretches', stretches],
    ['drives', drives],
    ['flare', consult.irritability === 'high'],
    ['both-sides', consult.side === 'both'],
    ['under-18', consult.ageYears < 18],
    ['no-weights', hasNoWeight(consult.kit)],
    [stage === 'keepGoing' ? 'keep' : `stage-${stage}`, true],
  ];
  return new Set(found.filter(([, holds]) => holds).map(([occasion]) => occasion));
}

// Nothing hurts, so nothing is said of what hurts or how it comes back.
function preventionOccasions({ ageYears, kit }: Consult): ReadonlySet<Occasion> {
  return new Set<Occasion>([
    'prevention',
    ...(ageYears < 18 ? (['under-18'] as const) : []),
    ...(hasNoWeight(kit) ? (['no-weights'] as const) : []),
  ]);
}

/** Whether driving is among what the person does now, or long drives came before it. A desk is no wheel. */
export function drivesLong({ doesNow, changedBefore }: Consult): boolean {
  return changedBefore.includes('long-drives') || doesNow.some(({ what }) => /\bdriv/i.test(what));
}

/** Whether stretching, or a class that is made of it, is among what the person does now. */
export function stretchesNow({ doesNow }: Consult): boolean {
  return doesNow.some(({ what }) => /stretch|yoga|pilates/i.test(what));
}
