/** The races of one person, judged: too early, in doubt, decided, and whether they stand in the plan. */
import { addDays, type IsoDate } from '../units/date.ts';
import type { NewStress } from '../week/newStress.ts';
import { judgedRaces, type JudgedRace } from '../week/race.ts';
import type { Outlook } from './outlook.ts';
import type { Person } from './person.ts';
import type { RunningFacts } from './running.ts';
import { stageNumber, type StageName } from './stageChoice.ts';
import { stressesBeforeFast } from './stresses.ts';

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
  });
}

const DAYS_A_WEEK = 7;

/**
 * A race is fast running: the earliest day of the first stage that admits it, and a week for each stress that begins
 * before fast running there. Null where the stage is there and nothing stands before it.
 */
function fitsFrom(
  person: Person,
  name: StageName,
  { dates }: Outlook,
  begins: readonly NewStress[],
): IsoDate | null {
  const { protocol, consult } = person;
  if (name === 'keep') return null;
  const present = stageNumber(protocol, name) - 1;
  const index = protocol.stages.findIndex(({ running }, at) => at >= present && running.most === 'fast');
  const stage = protocol.stages[index];
  if (stage === undefined) return dates.at(-1)?.earliestOn ?? null;
  if (index === present) {
    const before = begins.findIndex(({ stress }) => stress === 'fast');
    // A run never begins in the first week of a programme: that week the exercises are new.
    return before < 0 ? null : addDays(consult.startOn, DAYS_A_WEEK * Math.max(1, before));
  }
  const from = dates.find((date) => date.name === stage.name) ?? dates.at(-1);
  const weeks = stressesBeforeFast(stage.slots, person);
  return from === undefined ? null : addDays(from.earliestOn, DAYS_A_WEEK * weeks);
}
