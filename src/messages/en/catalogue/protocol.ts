/** Words of a protocol's public page: stages, slots, steps. For clinicians. */
import type { ProgressionEntry, Protocol, Slot, Stage } from '../../../content/library.ts';
import type { ChangeKind } from '../../../dosing/dose.ts';
import { type Part, type Section, list, paragraph, section } from '../../shapes.ts';
import { doseWords } from '../patient/dose.ts';
import type { Counted } from '../../../decisions/session/counted.ts';
import { cappedAngleOf } from '../../../content/guardedAngle.ts';
import type { JointAngle } from '../../../mechanics/jointAngle.ts';
import { ANGLE_WORDS } from '../angle.ts';
import { bwText, degText, positionsText, cardTempoText } from './library.ts';
import { capital, countText, numberText, secondsText, timesText } from '../plain.ts';

export function stageColumns(angle: JointAngle): readonly string[] {
  return [
    'Stage',
    capital(ANGLE_WORDS[angle].bend),
    'Squeeze',
    'Pull',
    'Share of strength',
    'Usual weeks',
    'Sessions a week',
    'Hours between',
    'Exercises at most',
  ];
}

export const STAGE_CAPTION = 'Stages with their caps; squeeze and pull in body weights';

export function stageRow(stage: Stage, index: number): readonly string[] {
  const { name, caps, opensToDeg, usualWeeks, sessionsPerWeek, hoursBetween, maxExercises } = stage;
  const cap = (value: number | null, text: (value: number) => string) =>
    value === null ? 'no cap' : text(value);
  const opens = opensToDeg === undefined || opensToDeg === caps.angleDeg ? '' : ` to ${degText(opensToDeg)}`;
  return [
    `${index + 1}. ${name}`,
    `${cap(caps.angleDeg, degText)}${opens}`,
    cap(caps.compressionBw, bwText),
    cap(caps.tensionBw, bwText),
    cap(caps.demand, bwText),
    spanText(usualWeeks.from, usualWeeks.to),
    String(sessionsPerWeek),
    String(hoursBetween),
    String(maxExercises),
  ];
}

function spanText(from: number, to: number): string {
  return from === to ? String(from) : `${from} to ${to}`;
}

export function guardText(protocol: Protocol): string {
  if (protocol.stages.some(({ caps }) => caps.compressionBw !== null))
    return 'Guarded by position, hip bend, and the model’s squeeze, pull and share of strength.';
  const isFree = protocol.stages.every(({ caps }) => caps.angleDeg === null);
  if (protocol.angle === 'hipFlexion' && isFree)
    return 'No stage has a cap. Load and range grow step by step, and what hurt is kept out.';
  return 'The body model knows nothing of what squeezes this tendon. It is guarded by position and joint angle alone.';
}

/** What a stage asks, admits and ends with. */
export function stageParts(stage: Stage): Part[] {
  const { enter, exit, positions, supportMargin, loadLimit, running, sitting, stretching } = stage;
  const twoSupports =
    stage.caps.compressionBw === null
      ? []
      : [`Cards with two supports count ${numberText(supportMargin)} times their squeeze and pull.`];
  return [
    paragraph(`To begin here: ${enter.words}`),
    paragraph(`To go on: ${exit.words}`),
    list([
      `Positions: ${positionsText(positions)}.`,
      ...LOAD_LIMITS[loadLimit],
      ...twoSupports,
      `Running: ${running.words}`,
      `Sitting: ${sitting}`,
      `Stretching: ${stretching}`,
    ]),
  ];
}

const LOAD_LIMITS: Readonly<Record<Stage['loadLimit'], readonly string[]>> = {
  testedHold: ['Load not above the tested hold.'],
  testedSet: ['Load not above the tested set.'],
  none: [],
};

/** @example 'Main hold (must be filled)' */
export function slotHeading({ name, needed, when }: Slot): string {
  const notes = [
    ...(needed ? ['must be filled'] : []),
    ...(when === 'between' ? ['on the days between'] : when === 'daily' ? ['every day'] : []),
  ];
  return notes.length === 0 ? name : `${name} (${notes.join(', ')})`;
}

/** The first dose, and what changes step by step. */
export function slotSentences({ dose, progression }: Slot, counted: Counted): string[] {
  const rest = dose.restSeconds === 0 ? '' : `, ${secondsText(dose.restSeconds)} of rest between`;
  const times = dose.timesPerDay === 1 ? '' : `, ${timesText(dose.timesPerDay)} a day`;
  const reserve = dose.reserve === null ? '' : `, ${countText(dose.reserve, 'repetition')} in reserve`;
  const own = dose.tempo === null ? '' : ` Tempo: ${cardTempoText(dose.tempo)}.`;
  return [
    `Begins with ${doseWords(dose, counted)}${rest}${reserve}${times}.${own}`,
    progression.length === 0
      ? 'Stays as it is.'
      : `Then one change a step, in this order: ${progression.map(changeText).join('; ')}.`,
  ];
}

const CHANGE_NOUNS: Readonly<Record<ChangeKind, readonly [noun: string, unit: string]>> = {
  range: ['range', '°'],
  load: ['load, by the kit', ' kg'],
  repetitions: ['repetitions', ''],
  hold: ['hold', ' s'],
  sets: ['sets', ''],
  tempo: ['tempo', ' s'],
  days: ['days', ''],
  lever: ['the next harder card', ''],
};

function changeText({ change, by, to }: ProgressionEntry): string {
  const [noun, unit] = CHANGE_NOUNS[change];
  return [
    noun,
    ...(by === null ? [] : [`by ${numberText(by)}${unit}`]),
    ...(to === null ? [] : [`to ${numberText(to)}${unit}`]),
  ].join(' ');
}

/** How a ladder of steps is made, in the protocol's own numbers. */
export function stepRules({ angle, limits, goingOn, easeBack }: Protocol): Section {
  const { stepGrowth, weekGrowth, feltLoadGrowth, cardsAboveHalfCap, provokedLessDeg, roundAngleDeg } =
    limits;
  return section('steps', 'Steps', [
    paragraph('A stage is a ladder of steps, and a step changes one thing for one exercise.'),
    list([
      `No step is more than ${numberText(stepGrowth.value)} times the last one that was tolerated, in peak squeeze, in hip moment, and in squeeze over the session.`,
      `A weight that is felt for goes to the next one in the house, or to ${numberText(feltLoadGrowth.value)} times its kilograms at most.`,
      `A week is at most ${numberText(weekGrowth.value)} times the last tolerated week.`,
      `The range is the smallest of the stage’s cap, the model’s answer, and the angle that provoked pain less ${degText(provokedLessDeg.value)}. Angles round down to ${degText(roundAngleDeg.value)}, loads round down to the kit.`,
      `At most ${countText(cardsAboveHalfCap.value, 'exercise')} above half the squeeze cap in a session.`,
      `Going on: the whole dose in ${countText(goingOn.doneSessions.value, 'session')}, morning check within usual + ${goingOn.checkOverUsual.value} for ${countText(goingOn.checkDays.value, 'day')}, ${Math.round(goingOn.sessionsDoneShare.value * 100)}\u00a0% of the sessions, and at least ${countText(goingOn.leastSessions.value, 'session')} and ${countText(goingOn.leastDays.value, 'day')} on the step.`,
      `Easing back: sets times ${numberText(easeBack.setsFactor.value)}, load times ${numberText(easeBack.loadFactor.value)}, ${degText(easeBack.rangeLessDeg.value)} less ${ANGLE_WORDS[cappedAngleOf(angle)].bend}.`,
    ]),
  ]);
}

export function testsSection({ tests }: Protocol): Section {
  return section('tests', 'Tests it knows', [
    list(tests.map(({ name, lowFlexion }) => (lowFlexion ? `${name} (hip nearly straight)` : name))),
  ]);
}

export const ACTIVITY_COLUMNS = ['Activity', 'From stage', 'How', 'Until then'] as const;
export const ACTIVITIES_HEADING = 'Other activities';

export const SETTING_COLUMNS = ['Setting', 'Value', 'Mark', 'Source'] as const;

export function settingValue(value: number | string): string {
  return typeof value === 'number' ? numberText(value) : value;
}

export function ladderAlt(count: number, leastBw: number, mostBw: number): string {
  return `${countText(count, 'card')} from ${bwText(leastBw)} to ${bwText(mostBw)} body weights of squeeze. Cards in one bracket are not told apart. Model estimates.`;
}

export function ladderNote(unposed: number): string {
  const missing =
    unposed === 0
      ? ''
      : ` ${capital(countText(unposed, 'card'))} without an estimate ${unposed === 1 ? 'is' : 'are'} not shown.`;
  return `For the reference body, without a weight, over the whole movement, as caps count it. A stage admits a card at as much range and load as its caps allow, so a card above a line may still be used in part.${missing}`;
}
