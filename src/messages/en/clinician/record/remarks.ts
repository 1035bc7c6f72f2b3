/** What the clinician should know beside the tables, a sentence each. */
import { REFERENCE_BODY } from '../../../../mechanics/body.ts';
import type { Decided } from '../../../../decisions/decide.ts';
import { dischargeCriteria } from '../../../../decisions/person/discharge.ts';
import { dischargeRemark } from '../discharge.ts';
import { isModelled } from '../../../../decisions/candidates/estimate.ts';
import { longestHoldSeconds } from '../../../../decisions/candidates/firstDose.ts';
import { gentlerThanTested } from '../../../../decisions/session/gentler.ts';
import { limitsOf, needsDecision, painDecision } from '../../../../decisions/screen/painLimits.ts';
import { everydayLoadText } from '../../patient/activities.ts';
import { contradictionText, entryText, gentlerText, testedUnusedText } from '../entry.ts';
import { strengthText } from '../muscles.ts';
import { WEEKDAYS, type Weekday } from '../../../../units/weekday.ts';
import type { PlanDay } from '../../../../scheduling/planDay.ts';
import { testedUnused } from '../../../../decisions/session/testedUnused.ts';
import { lessKmThanUsual } from '../../../../decisions/days/lessKm.ts';
import {
  endText,
  growthText,
  lessKmText,
  longestText,
  otherRunDaysText,
  painDecisionText,
  raceText,
  runCountText,
  runReasonText,
  usualOnlyText,
  type LongestWaits,
} from '../remarks.ts';
import { ownChoiceTexts } from '../ownChoices.ts';
import { hollowRemark, stageWord } from '../stage.ts';
import { recoveryText, sessionLengthText } from '../../patient/week.ts';
import { contradictions } from '../../../../decisions/candidates/painfulSets.ts';
import { testNameIn } from '../../../../content/testName.ts';
import { goOnPain } from '../../../../decisions/screen/goOnPain.ts';
import type { FollowingPart } from '../../../../decisions/days/followingParts.ts';
import { goOnPainText, partsText, stoppedText } from '../following.ts';
import { order } from '../../../../scheduling/run.ts';
import { cardOf, type Person } from '../../../../decisions/person/person.ts';
import { ANGLE_WORDS } from '../../angle.ts';

/** In the order person, stage, own choices, week, running, steps, dates, later stages, model. */
export function remarksOf(decided: Decided): string[] {
  return [
    ...personRemarks(decided),
    ...stageRemarks(decided),
    ...ownChoiceTexts(decided.person.consult, (id) => cardOf(decided.person, id).title),
    ...entryRemarks(decided),
    sessionLengthText(decided.length, decided.person.consult.minutesPerDay),
    `Recovery: ${recoveryText(decided.week.plan.liftRecovery)}`,
    ...decided.week.activities.flatMap(({ what, everydayLoad }) =>
      everydayLoad === null ? [] : [everydayLoadText(what, everydayLoad)],
    ),
    ...runningRemarks(decided),
    growthText(decided.dated.plan.weeks),
    ...partRemarks(decided),
    ...ladderRemarks(decided),
    ...goalRemarks(decided),
    ...laterRemarks(decided.later),
    'Estimates of the model order positions and limit early stages; they are not measured forces. Tasks led by the knee, sitting and stretching are under-estimated.',
  ];
}

function personRemarks({ person, morningTask }: Decided): string[] {
  const { consult, protocol, provokedDeg } = person;
  const noBody = consult.heightM === undefined || consult.massKg === undefined;
  return [
    ...(noBody
      ? [
          `Height or mass not recorded: the reference body (${REFERENCE_BODY.massKg} kg, ${REFERENCE_BODY.heightM} m) stands in.`,
        ]
      : []),
    ...(isModelled(person) ? strengthText(person.body) : []),
    ...painRemarks(person),
    ...(provokedDeg === null
      ? []
      : [
          `What hurt holds the ${ANGLE_WORDS[person.model.guardedBy].bend} to ${provokedDeg}° whatever the stage allows.`,
        ]),
    ...(morningTask?.id === protocol.morningCheck.card
      ? []
      : [
          `Morning check: ${protocol.morningCheck.card} cannot be done; ${morningTask?.id ?? 'twenty steps'} stands in.`,
        ]),
  ];
}

/** Whose rule of pain during exercise is the stricter one, and who decided to go on with high usual pain. */
function painRemarks({ consult, protocol }: Decided['person']): string[] {
  const decision = needsDecision(consult, protocol) ? painDecision(consult) : null;
  return [
    ...(limitsOf(consult, protocol).usualOnly
      ? [usualOnlyText(consult, protocol.painRule.usualOnlyFrom.value)]
      : []),
    ...(decision === null ? [] : [painDecisionText(consult.usualMorningPain, decision)]),
  ];
}

function stageRemarks(decided: Decided): string[] {
  const { person, stage, course } = decided;
  if (course !== 'discharge')
    return stage.chosenBy === 'clinician' && stage.chosen !== stage.proposed
      ? [`The stage is the clinician's own; the tests speak for ${stageWord(stage.proposed)}.`]
      : [];
  return [dischargeRemark(dischargeCriteria(person))];
}

/** How the stage is entered: what was taken down, what is gentler than tested, sets that contradict each other. */
function entryRemarks(decided: Decided): string[] {
  const { person, bounds, shown, step, stage, hollow } = decided;
  const titleOf = (id: string) => cardOf(person, id).title;
  const { prescriptions } = shown[0];
  const entered = prescriptions.flatMap(({ fit, at, card }) =>
    fit.entry === null || step > 1 || at.card !== fit.card.id
      ? []
      : (entryText(card.title, fit.entry, titleOf) ?? []),
  );
  const gentler = prescriptions.flatMap((one) => {
    const found = gentlerThanTested(one, person, bounds);
    return found === null ? [] : [gentlerText(one.card.title, found)];
  });
  return [
    ...(hollow === null ? [] : [hollowRemark(stage.chosen, hollow)]),
    ...entered,
    ...gentler,
    ...testedUnused(decided).map(testedUnusedText),
    ...contradictions(person).map(({ card, painful, painless }) =>
      contradictionText(titleOf(card), painful, painless),
    ),
  ];
}

function runningRemarks({ person, running, dated, outlook }: Decided): string[] {
  const { decision, plan } = running;
  if (!person.consult.running.runs) return ['Running: does not run.'];
  const lessKm = lessKmThanUsual(person, dated.plan.weeks);
  return [
    ...decision.because.map(runReasonText),
    ...(decision.overRules ? ["Running goes beyond the house rules by the clinician's own entry."] : []),
    ...(running.notUsedTo === null
      ? []
      : [
          `Running: no ${running.notUsedTo.replaceAll('-', ' ')} run is planned, for this runner has none as a habit.`,
        ]),
    ...(plan.weeks.length === 0 ? [] : [longestText(plan.longest.because, longestWaits(running))]),
    ...(lessKm === null ? [] : [lessKmText(lessKm)]),
    ...(plan.weeks.length === 0 || plan.estimated === null ? [] : [runCountText(plan.estimated.because)]),
    ...runDaysRemark(person.consult.days, dated.plan.days),
    ...dated.races.flatMap(({ on, notes }) =>
      notes.map((note) => raceText(on, note, outlook.openEnd !== null)),
    ),
  ];
}

/** The days of the consult are those with time for exercises; a run may fall on any day. */
function runDaysRemark(days: readonly Weekday[], planned: readonly PlanDay[]): string[] {
  const others = WEEKDAYS.filter(
    (weekday) =>
      !days.includes(weekday) && planned.some((day) => day.weekday === weekday && day.runs.length > 0),
  );
  return others.length === 0 ? [] : [otherRunDaysText(others)];
}

function longestWaits({ decision }: Decided['running']): LongestWaits | null {
  if (decision.decision === 'walk-run') return 'walk-run';
  return order(decision.most) < order('longer') ? 'longer' : null;
}

/** A protocol by weeks whose next rung cannot be made for this person. */
function partRemarks({ person, stage, following, stopped }: Decided): string[] {
  if (!person.protocol.byWeeks || stage.chosen === 'keepGoing') return [];
  const stages = following.filter(({ enters }) => enters !== null);
  return [
    ...(following.length === 0 ? [] : [partsText(following)]),
    ...(stopped === null ? [] : [stoppedText(stopped, testNameIn(person.library, person.protocol.id))]),
    ...stages.flatMap((part) => ladderEnds(part, person).map((text) => `${part.name}. ${text}`)),
    ...(following.length > 0 ? goOnRemark(person, stages) : []),
  ];
}

/** Where this person goes on by usual pain and not by the protocol's number. */
function goOnRemark({ consult, protocol }: Person, stages: readonly FollowingPart[]): string[] {
  const asked = stages.flatMap(({ enters }) => enters?.painAtMost ?? []);
  const [painAtMost] = asked;
  if (painAtMost === undefined) return [];
  const pain = goOnPain(consult, protocol, painAtMost);
  return pain.usualOnly || pain.atMost !== painAtMost ? [goOnPainText(pain, painAtMost)] : [];
}

function ladderEnds({ session }: Pick<Decided, 'session'>, person: Person): string[] {
  return session.ladder.ends
    .filter(({ reached }) => reached !== 'end')
    .map((end) => endText(end, (card) => cardOf(person, card).title, person.sudden !== null));
}

function ladderRemarks({ person, session }: Decided): string[] {
  const ends = ladderEnds({ session }, person);
  const holds = session.exercises.flatMap(({ slot, fits: [fit] }) => {
    const wished = slot.progression.find(({ change }) => change === 'hold')?.to ?? null;
    const longest = longestHoldSeconds(fit.card, person);
    return wished === null || longest >= wished
      ? []
      : [
          `${slot.name}: hold ends at ${longest} s instead of ${wished}: what was held in the test, or the screen.`,
        ];
  });
  return [...ends, ...holds];
}

function goalRemarks({ outlook }: Decided): string[] {
  return outlook.tooSoon.map(
    ({ what, on, daysShort }) =>
      `Goal "${what}" on ${on} comes ${daysShort} days before the earliest end of the stages.`,
  );
}

function laterRemarks({ waits, empty }: Decided['later']): string[] {
  if (waits) return ['Later stages wait until more than light holds are allowed.'];
  return empty.map(
    ({ slot, stage }) => `Nothing in the library fills ${slot} of ${stageWord(stage)} for this person yet.`,
  );
}
