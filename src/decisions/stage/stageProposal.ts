/**
 * The stage that the recorded tests speak for (house rules 11.1): by the worst test with the hip nearly straight and by
 * irritability together. One mild test never outweighs a bad one.
 */
import { numberedStages } from '../../content/keepStage.ts';
import type { Consult, Protocol, Stage } from '../../content/library.ts';
import type { StageName } from '../terms/stageName.ts';
import type { StageLooked, StageLimit } from '../terms/stageLimit.ts';
import type { SuddenStart } from '../terms/suddenStart.ts';
import type { LastDone } from '../terms/lastDone.ts';
import { needsFastWork } from '../screen/fastWork.ts';
import { entryPainAtMost } from '../screen/goOnPain.ts';

type Test = Consult['tests'][number];

export interface StageProposal {
  readonly reached: StageName;
  /** One entry for each stage that was looked at, in order, the one that is not open last. */
  readonly looked: readonly StageLooked[];
}

/** Climbs from the first stage as long as each next one may be entered by its own rules. */
export function proposeStage(
  consult: Consult,
  protocol: Protocol,
  sudden: SuddenStart | null,
  lastDone: readonly LastDone[],
): StageProposal {
  const looked: StageLooked[] = [];
  let reached = firstStage(protocol);
  for (const [index, stage] of numberedStages(protocol.stages).entries()) {
    if (index === 0) continue;
    const name = (index + 1) as StageName;
    const limit =
      limitInto(stage, index + 1, consult, protocol, sudden) ??
      weightLimit(index, consult, protocol, lastDone);
    const by = worstOfEach(consult.tests).filter(({ test }) => stage.enter.tests.includes(test));
    looked.push({ stage: name, by, limit });
    if (limit !== null) break;
    reached = name;
  }
  return { reached, looked };
}

/** `keep` only where there is nothing else. */
export function firstStage({ stages }: Protocol): StageName {
  return numberedStages(stages).length === 0 ? 'keepGoing' : 1;
}

/** What bars fast work and sport whoever asks for it: high irritability, or a test above the pain it is entered with. */
export function sportLimit({ enter }: Stage, { irritability, tests }: Consult): StageLimit | null {
  if (!enter.sport) return null;
  if (irritability === 'high') return { code: 'irritable-for-sport' };
  const worst = worstOf(tests);
  return worst === null || worst.pain <= enter.painAtMost
    ? null
    : { code: 'sport-pain', test: worst.test, pain: worst.pain, painAtMost: enter.painAtMost };
}

/**
 * Fast work comes after heavy work (house rules 4): a set with a weight that hurt little, of an exercise of the stage before
 * or of this one, or the stage before done. `index`: of the stage, from 0.
 */
function weightLimit(
  index: number,
  { testedSets }: Consult,
  { stages, limits }: Protocol,
  lastDone: readonly LastDone[],
): StageLimit | null {
  const stage = stages[index];
  if (stage?.enter.sport !== true) return null;
  const slots = [...(stages[index - 1]?.slots ?? []), ...stage.slots];
  const heavy = new Set(slots.flatMap(({ dose, cards }) => (dose.repetitions === null ? [] : cards)));
  const painAtMost = limits.testPainAtMost.value;
  const tested = testedSets.some(
    ({ card, loadKg, pain }) => heavy.has(card) && loadKg > 0 && pain <= painAtMost,
  );
  const done = lastDone.some((one) => one.stage !== 'keepGoing' && one.stage >= index);
  return tested || done ? null : { code: 'no-weight-shown', painAtMost };
}

function limitInto(
  stage: Stage,
  number: number,
  consult: Consult,
  protocol: Protocol,
  sudden: SuddenStart | null,
): StageLimit | null {
  const { tests, settled, sport } = stage.enter;
  const painAtMost = entryPainAtMost(consult, protocol, stage.enter.painAtMost);
  const { response24h, irritability } = consult;
  if (sudden !== null && number > sudden.stageAtMost) return { code: 'sudden-start', sudden };
  if (response24h === 'up') return { code: 'stirred-up' };
  const straight = straightHipTests(consult, protocol);
  const worst = worstOf(straight);
  if (worst !== null && worst.pain > painAtMost)
    return { code: 'straight-hip-pain', test: worst.test, pain: worst.pain, painAtMost };
  if (irritability === 'high' && (worst === null || response24h !== 'settled')) return { code: 'irritable' };
  const tried = consult.tests.filter(({ test }) => tests.includes(test));
  const worstTried = worstOf(tried);
  if (tests.length > 0 && worstTried === null) return { code: 'not-tested', tests };
  if (worstTried !== null && worstTried.pain > painAtMost)
    return { code: 'entry-pain', test: worstTried.test, pain: worstTried.pain, painAtMost };
  if (settled && response24h !== 'settled') return { code: 'not-settled' };
  if (sport && !needsFastWork(consult, protocol)) return { code: 'no-sport' };
  return sportLimit(stage, consult);
}

/** Tests with the hip nearly straight: those the protocol says so of, and holds of its first stage that were tried. */
function straightHipTests({ tests }: Consult, protocol: Protocol): readonly Test[] {
  const named = new Map(protocol.tests.map(({ id, lowFlexion }) => [id, lowFlexion]));
  const holds = new Set(
    (protocol.stages[0]?.slots ?? []).flatMap(({ dose, cards }) => (dose.kind === 'hold' ? cards : [])),
  );
  return tests.filter(({ test }) => named.get(test) ?? holds.has(test));
}

function worstOf(tests: readonly Test[]): Test | null {
  return tests.reduce<Test | null>(
    (worst, next) => (worst === null || next.pain > worst.pain ? next : worst),
    null,
  );
}

// A test that was done twice, on either side perhaps, counts by what hurt more.
function worstOfEach(tests: readonly Test[]): readonly Test[] {
  return [...new Set(tests.map(({ test }) => test))].map(
    (id) => worstOf(tests.filter(({ test }) => test === id)) as Test,
  );
}
