/** What the clinician should know beside the tables, a sentence each. */
import { REFERENCE_BODY } from '../../mechanics/body.ts';
import type { Decided } from '../decide.ts';
import { dischargeCriteria } from '../discharge.ts';
import { isModelled } from '../estimate.ts';
import { longestHoldSeconds } from '../firstDose.ts';
import { gentlerThanTested } from '../gentler.ts';
import { unusedEntries } from '../overrides.ts';
import { limitsOf, needsDecision, painDecision } from '../painLimits.ts';
import { ANGLE_WORDS } from '../phrases/angle.ts';
import { everydayLoadText } from '../phrases/activities.ts';
import { contradictionText, entryText, gentlerText } from '../phrases/entry.ts';
import { strengthText } from '../phrases/muscles.ts';
import { listText } from '../phrases/plain.ts';
import {
  endText,
  growthText,
  longestText,
  painDecisionText,
  raceText,
  runCountText,
  runReasonText,
  usualOnlyText,
} from '../phrases/remarks.ts';
import { hollowRemark } from '../phrases/stage.ts';
import { recoveryText, sessionLengthText } from '../phrases/week.ts';
import { contradictions } from '../painfulSets.ts';
import { cardOf } from '../person.ts';
import { stageWord } from '../stageChoice.ts';

/** In the order person, stage, week, running, steps, dates, later stages, model. */
export function remarksOf(decided: Decided): string[] {
  return [
    ...personRemarks(decided),
    ...stageRemarks(decided),
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
    ...decided.later.notes,
    'Estimates of the model order positions and limit early stages; they are not measured forces. Tasks led by the knee, sitting and stretching are under-estimated.',
  ];
}

function personRemarks({ person, morningTask, shown }: Decided): string[] {
  const { consult, protocol, provokedDeg } = person;
  const noBody = consult.heightM === undefined || consult.massKg === undefined;
  const cards = new Set(shown.flatMap(({ prescriptions }) => prescriptions.map(({ card }) => card.id)));
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
    ...unusedEntries(consult, cards),
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
  const open = dischargeCriteria(person).filter(({ met }) => met !== true);
  const names = open.map(
    ({ name, met }) => `${name.toLowerCase()} (${met === null ? 'not recorded' : 'not met'})`,
  );
  return [
    open.length === 0
      ? 'Discharge: all that is asked is met.'
      : `Discharge is the clinician's own decision; open: ${listText(names)}.`,
  ];
}

/** How the stage is entered: what was taken down, what is gentler than tested, sets that contradict each other. */
function entryRemarks({ person, bounds, shown, step, stage, hollow }: Decided): string[] {
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
    ...contradictions(person).map(({ card, painful, painless }) =>
      contradictionText(titleOf(card), painful, painless),
    ),
  ];
}

function runningRemarks({ person, running, dated }: Decided): string[] {
  const { decision, plan } = running;
  if (!person.consult.running.runs) return ['Running: does not run.'];
  return [
    ...decision.because.map(runReasonText),
    ...(decision.overRules ? ["Running goes beyond the house rules by the clinician's own entry."] : []),
    ...(running.notUsedTo === null
      ? []
      : [
          `Running: no ${running.notUsedTo.replaceAll('-', ' ')} run is planned, for this runner has none as a habit.`,
        ]),
    ...(plan.weeks.length === 0 ? [] : [longestText(plan.longest.because)]),
    ...(plan.weeks.length === 0 || plan.estimated === null ? [] : [runCountText(plan.estimated.because)]),
    ...dated.races.flatMap(({ on, notes }) => notes.map((note) => raceText(on, note))),
  ];
}

/** A protocol by weeks whose next rung cannot be made for this person. */
function partRemarks({ person, stage, following }: Decided): string[] {
  if (!person.protocol.byWeeks || stage.chosen === 'keepGoing') return [];
  const last = following.at(-1);
  return last === undefined
    ? []
    : [`The plan goes on by weeks: ${following.map(({ name, from }) => `${name} from ${from}`).join('; ')}.`];
}

function ladderRemarks({ person, session }: Decided): string[] {
  const ends = session.ladder.ends
    .filter(({ reached }) => reached !== 'end')
    .map((end) => endText(end, (card) => cardOf(person, card).title, person.sudden !== null));
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
