/** The next revision of a consult, from the last one: what lasts is taken over, what must be asked again is empty. */
import { plainPath } from '../content/plausible/confirmed.ts';
import type { lastingPaths } from '../content/plausible/lasting.ts';
import { SCREEN_ITEMS, type ConsultFrontMatter } from '../content/schema/consult.ts';
import { addDays, daysBetween, type IsoDate } from '../units/date.ts';
import { describeSet, describeTest, HINTS, lastTime } from './nextRevisionHints.ts';
import type { StarterContent } from './starter.ts';

export interface LastRevision {
  /** The keys as they stand in the file. */
  readonly written: Readonly<Record<string, unknown>>;
  readonly consult: ConsultFrontMatter;
}

/** Keys that speak of the last visit alone, or are written anew. */
const LEFT_OUT = ['alias', 'revision', 'step', 'stageBecause', 'draft', 'confirmed'] as const;

/** Keys and hints of the draft; `lasts`: the paths under `confirmed` that still confirm something. */
export function nextRevision(
  { written, consult }: LastRevision,
  revision: number,
  today: IsoDate,
  lasts: ReturnType<typeof lastingPaths>,
): StarterContent {
  const rest = Object.fromEntries(
    Object.entries(written).filter(([key]) => !(LEFT_OUT as readonly string[]).includes(key)),
  );
  const confirmed = consult.confirmed.filter(({ path }) => lasts.has(plainPath(path)));
  return {
    values: {
      alias: consult.alias,
      revision,
      draft: 'yes',
      ...rest,
      ...movedOn(consult, today),
      stage: consult.stage === 'keepGoing' ? 'keepGoing' : 'auto',
      ...ASKED_AGAIN,
      screen: Object.fromEntries(SCREEN_ITEMS.map((item) => [item, 'notAsked'])),
      ...(confirmed.length === 0 ? {} : { confirmed }),
    },
    hints: hintsFor(consult),
  };
}

const ASKED_AGAIN = {
  irritability: null,
  response24h: null,
  usualMorningPain: null,
  tests: [{ test: null, pain: null }],
  testedSets: [],
};

/** The same days between consult, start and review as last time; the weeks of trouble go on. */
function movedOn({ seenOn, startOn, reviewOn, symptomWeeks }: ConsultFrontMatter, today: IsoDate) {
  const days = Math.max(0, daysBetween(seenOn, today));
  const start = addDays(today, daysBetween(seenOn, startOn));
  return {
    seenOn: today,
    startOn: start,
    reviewOn: addDays(start, daysBetween(startOn, reviewOn)),
    ...(symptomWeeks === undefined ? {} : { symptomWeeks: Math.round(symptomWeeks + days / 7) }),
  };
}

function hintsFor(consult: ConsultFrontMatter): StarterContent['hints'] {
  const { irritability, response24h, usualMorningPain, stage, step, tests, testedSets } = consult;
  return new Map([
    ...HINTS,
    ['stage', lastTime(step === undefined ? String(stage) : `${stage}, step ${step}`)],
    ['irritability', lastTime(irritability)],
    ['response24h', lastTime(response24h)],
    ['usualMorningPain', lastTime(String(usualMorningPain))],
    ['tests', lastTime(tests.map(describeTest).join('; '))],
    ['testedSets', lastTime(testedSets.map(describeSet).join('; ') || 'none')],
  ]);
}
