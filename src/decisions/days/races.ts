/** The races of one person, judged: too early, in doubt, decided, and whether they stand in the plan. */
import { addDays, type IsoDate } from '../../units/date.ts';
import type { NewStress } from '../../scheduling/newStress.ts';
import { judgedRaces, type JudgedRace } from '../../scheduling/race.ts';
import type { Outlook } from './outlook.ts';
import type { Person } from '../person/person.ts';
import type { RunningFacts } from './running.ts';
import { stageNumber } from '../stage/stageChoice.ts';
import type { StageName } from '../terms/stageName.ts';

/** `begins`: the new stresses of the present stage, in their order. */
export function racesOf(
  person: Person,
  name: StageName,
  { decision, plan }: RunningFacts,
  outlook: Outlook,
  begins: readonly NewStress[],
): JudgedRace[] {
  const { consult, protocol } = person;
  const { irritability, usualMorningPain, running } = consult;
  return judgedRaces(running.races ?? [], {
    most: decision.most,
    longestKm: plan.longest.atMostKm,
    fitsFrom: fitsFrom(person, name, outlook, begins),
    irritable: irritability === 'high' || usualMorningPain >= protocol.runningRules.usualPainNoRun.value,
    barred: decision.because.some(({ code }) => code === 'does-not-run' || code === 'screen-stops-running'),
    table: protocol.runningRules.raceEasyDays,
    restShare: protocol.runningRules.raceRestShare.value,
    overLongest: protocol.runningRules.raceOverLongest.value,
  });
}

const DAYS_A_WEEK = 7;

/**
 * A race is fast running, and the end of the way: the earliest end of the stages, as for any goal. In the stage that
 * admits fast running it is earlier where all stresses have begun earlier; null where nothing stands before it.
 */
function fitsFrom(
  person: Person,
  name: StageName,
  { dates }: Outlook,
  begins: readonly NewStress[],
): IsoDate | null {
  const { protocol, consult } = person;
  const present = stageNumber(protocol, name) - 1;
  const index = protocol.stages.findIndex(({ running }, at) => at >= present && running.most === 'fast');
  const end = dates.at(-1)?.earliestOn ?? null;
  if (index === present) {
    const before = begins.findIndex(({ stress }) => stress === 'fast');
    if (before < 0) return null;
    // A run never begins in the first week of a programme: that week the exercises are new. A week of fast running and
    // the days of less running before a race come after it.
    const weeks = Math.max(1, before) + 1;
    const ready = addDays(consult.startOn, DAYS_A_WEEK * weeks + protocol.runningRules.raceTaperDays.value);
    return end !== null && end < ready ? end : ready;
  }
  return end;
}
