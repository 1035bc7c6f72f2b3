/** A plain note to paste into the clinic's own system: names, no ids, an exercise a line. */
import type { Consult } from '../../../../content/library.ts';
import type { Decided } from '../../../../decisions/decide.ts';
import { numberedStages } from '../../../../content/keepStage.ts';
import { limitsOf } from '../../../../decisions/screen/painLimits.ts';
import type { PainLimits } from '../../../../scheduling/painLimits.ts';
import type { CellName } from '../../../../decisions/terms/cell.ts';
import { cellTexts } from '../../patient/cells.ts';
import { capital, listText } from '../../plain.ts';
import { RUN_WORDS } from '../../patient/running.ts';
import type { Prescription } from '../../../../decisions/session/prescribe.ts';
import { stageWord } from '../stage.ts';
import { angleCellIn } from '../../../../decisions/session/cells/angleCell.ts';
import { COLUMN_WORDS, doseWords } from '../../patient/dose.ts';
import { countedAs } from '../../../../decisions/session/counted.ts';
import { clearedTexts } from './cleared.ts';
import { proposeStage } from '../../../../decisions/stage/stageProposal.ts';
import { testedUnusedText } from '../entry.ts';
import { testedUnused } from '../../../../decisions/session/testedUnused.ts';
import { effectTexts } from './effects.ts';
import { enteredLine } from './entered.ts';
import type { Review } from '../../../../review/terms.ts';
import { reviewLine } from '../review.ts';

/** `gaveUp`: sentences. `nameOf`: a test or card by its id, in words. */
export function noteLines(
  decided: Decided,
  gaveUp: readonly string[],
  nameOf: (id: string) => string,
  review: Review | null,
): string[] {
  return [
    ...beforeLines(decided, nameOf),
    ...(review === null ? [] : [reviewLine(review)]),
    ...decided.shown[0].prescriptions.map(exerciseLine),
    ...afterLines(decided, gaveUp),
  ];
}

function beforeLines(decided: Decided, nameOf: (id: string) => string): string[] {
  const { person, stage, step, session } = decided;
  const { consult } = person;
  const screen = [...effectTexts(person), ...clearedTexts(person)];
  const tests = consult.tests.map(
    ({ test, side, pain }) => `${nameOf(test)}${side === undefined ? '' : ` (${side})`} ${pain}/10`,
  );
  const own =
    stage.chosen === 'keepGoing'
      ? 'chosen by the clinician'
      : `chosen by the clinician, proposal ${stageWord(stage.proposed)}`;
  const chosen = stage.chosenBy === 'proposal' ? proposedText(person, stage) : own;
  return [
    `Home exercise programme for ${consult.alias}, revision ${consult.revision}. Seen ${consult.seenOn} by ${consult.clinician}.`,
    `Side: ${consult.side}. Irritability ${consult.irritability}, next day ${consult.response24h}, usual morning pain ${consult.usualMorningPain}/10.`,
    `Tests: ${listText(tests)}.`,
    [
      enteredLine(consult, nameOf),
      ...(consult.confirmed.length === 0 ? [] : [`Confirmed: ${confirmedText(consult.confirmed)}.`]),
    ].join(' '),
    `Screen: ${screen.length === 0 ? 'nothing that limits the programme.' : screen.join(' ')}`,
    `${capital(stageWord(stage.chosen))} (${stage.name}), step ${step} of ${session.ladder.rungs.length}; ${chosen}.`,
  ];
}

// The tests decide only where nothing else did.
function proposedText(person: Decided['person'], { chosen }: Decided['stage']): string {
  const { consult, protocol, effects, sudden, lastDone } = person;
  if (effects.lightHolds.length > 0) return 'the screen allows light holds only';
  if (numberedStages(protocol.stages).length === 0) return 'the only stage of this protocol';
  const { reached } = proposeStage(consult, protocol, null, lastDone);
  if (reached === chosen) return 'as proposed from the tests';
  return sudden !== null && chosen === sudden.stageAtMost
    ? `the most after a sudden start, the tests speak for ${stageWord(reached)}`
    : `the tests speak for ${stageWord(reached)}, which has no whole programme for this person`;
}

function confirmedText(confirmed: Consult['confirmed']): string {
  return confirmed.map(({ path, value, reason }) => `${path} ${value} (${reason})`).join('; ');
}

function afterLines(decided: Decided, gaveUp: readonly string[]): string[] {
  const { person, running, sitting, dated, course, outlook } = decided;
  const { consult, protocol } = person;
  const unused = testedUnused(decided).map(testedUnusedText);
  const goals = consult.goals.map(({ what }) => what);
  return [
    `Running: ${consult.running.runs ? `${runningText(running.decision)}${racesText(dated.races, outlook.openEnd !== null)}` : 'does not run.'}`,
    `Sitting: ${sittingText(sitting)}`,
    painText(limitsOf(consult, protocol)),
    `Given up to fit: ${gaveUp.length === 0 ? 'nothing.' : gaveUp.join(' ')}${unused.map((text) => ` ${text}`).join('')}`,
    `Goals: ${goals.length === 0 ? 'not recorded.' : `${listText(goals)}.`}`,
    `${course === 'discharge' ? 'Last look' : 'Review'} ${consult.reviewOn}. Leaflet with emergency wording for ${consult.country} given.`,
  ];
}

function painText({ atMost, neverAbove, usualOnly }: PainLimits): string {
  return usualOnly
    ? `Pain during exercise no more than usual (${atMost}/10) and settled by the evening; morning check explained.`
    : `Pain up to ${atMost}/10 during exercise, never above ${neverAbove}; morning check explained.`;
}

function runningText({ decision, most }: Decided['running']['decision']): string {
  return decision === 'keep' ? `goes on, at most ${RUN_WORDS[most]}.` : `${decision.replace('-', ' and ')}.`;
}

/** @example ' Race 2026-12-06 in the plan.' */
function racesText(races: Decided['dated']['races'], dateOpen: boolean): string {
  return races
    .map(({ on, inPlan, fitsFrom }) => {
      const early =
        fitsFrom === null ? '' : `, too early (${dateOpen ? 'no date yet' : `fits from ${fitsFrom}`})`;
      return ` Race ${on}${early}: ${inPlan ? 'in the plan' : 'not in the plan'}.`;
    })
    .join('');
}

function sittingText({ now, free }: Decided['sitting']): string {
  if (free) return 'as wished, no budget.';
  if (now === null) return 'no budget, tolerance too short.';
  return `${now.uprightMinutes} min upright, ${now.hardMinutes} min hard or leaning.`;
}

function angleText({ cells }: Prescription, texts: Readonly<Record<CellName, string>>): string {
  const found = angleCellIn(cells);
  return found === undefined || texts[found.cell] === ''
    ? ''
    : `${COLUMN_WORDS[found.cell].toLowerCase()} ${texts[found.cell]}`;
}

function exerciseLine(one: Prescription): string {
  const { card, byFeel, at } = one;
  const texts = cellTexts(one);
  const parts = [
    doseWords(at.dose, countedAs(card)),
    byFeel ? 'weight by feel' : texts.loadKg,
    angleText(one, texts),
    at.dose.timesPerDay === 1 ? '' : `${texts.timesPerDay} a day`,
    texts.days,
  ];
  return `${card.title}: ${parts.filter((part) => part !== '').join(', ')}.`;
}
