/** Pain rule, morning check, flare, missed days and when to get help, with this person's own numbers worked out. */
import type { Protocol } from '../../../content/library.ts';
import type { FlareDose } from '../../../dosing/flareDose.ts';
import type { FlarePlan } from '../../../scheduling/flare.ts';
import type { MorningBands } from '../../../scheduling/morning.ts';
import type { PainLimits } from '../../../scheduling/painLimits.ts';
import { type Part, type Section, list, paragraph, section, table } from '../../shapes.ts';
import type { Easier } from '../../../decisions/session/easier.ts';
import { countText, secondsText } from '../plain.ts';
import { doseWords, loadText } from './dose.ts';
import { easierFarText, howFarText } from './landmarks.ts';
import { fromDayText } from './week.ts';

/** Pain during exercise by number, and what it does not mean. */
export function painRuleText(limits: PainLimits): Section {
  return section('pain-rule', 'How much pain is all right', [
    ...(limits.usualOnly ? usualOnlyParts(limits) : byNumberParts(limits)),
    paragraph(
      'Sore is not the same as harmed. Bending is normal, and it comes back. When we turn the volume down for a while, it is not a ban.',
    ),
  ]);
}

const TINGLING = 'Tingling or numbness down the leg: stop, and tell us.';

function byNumberParts({ atMost, neverAbove }: PainLimits): Part[] {
  return [
    paragraph(`While you exercise, pain up to ${atMost} out of 10 is all right.`, 'strong'),
    list([
      `At ${eitherText(Math.min(atMost + 1, neverAbove), neverAbove)}: finish the set, and do not add anything next time.`,
      `Above ${neverAbove}: stop that exercise for today.`,
      TINGLING,
    ]),
  ];
}

function usualOnlyParts({ atMost: usual }: PainLimits): Part[] {
  return [
    paragraph(
      usual === 0
        ? 'While you exercise: no pain, as is usual for you. What comes later has settled by the evening.'
        : `While you exercise: no more pain than is usual for you, ${usual} out of 10. It has settled by the evening.`,
      'strong',
    ),
    list([
      `More than ${usual}: stop that exercise for today. Use the easier numbers next time.`,
      'Not settled by the evening: use the easier numbers next time.',
      TINGLING,
    ]),
  ];
}

/** When to get in touch about the morning check, days. */
export interface ContactRules {
  readonly afterDays: number;
  readonly risingDays: number;
}

/** What is done each morning. `how`: empty for what stands among the exercises. */
export interface MorningTask {
  readonly title: string;
  readonly holds: boolean;
  readonly how: string;
  /** It stands among the exercises and goes further with the steps; as a check it must not. */
  readonly opens: boolean;
}

/** `task`: null where nothing fits, and the first steps of the day are scored instead. */
export function morningCheckText(
  bands: MorningBands,
  task: MorningTask | null,
  repetitions: number,
): Section {
  const { usual, carryOnTo, sameAgain, easeBackFrom } = bands;
  const rows: string[][] = [[spanText(0, carryOnTo), 'Carry on as planned.']];
  if (sameAgain !== null)
    rows.push([
      spanText(...sameAgain),
      'Once: do the same again, add nothing. Two mornings running: ease back.',
    ]);
  if (easeBackFrom <= 10)
    rows.push([easeBackFrom === 10 ? '10' : `${easeBackFrom} or more`, 'Ease back: use the easier numbers.']);
  return section('morning-check', 'Morning check', [
    paragraph(
      `Every morning at the same time, ${taskText(task, repetitions)} Score the pain from 0 to 10. Your usual is ${usual}.`,
    ),
    table('What your score tells you', ['Score', 'What to do'], rows),
    paragraph('Use this table from day one. The scores of the first week also show your usual.'),
  ]);
}

// Two numbers are one or the other, more of them a span.
function eitherText(low: number, high: number): string {
  return high === low + 1 ? `${low} or ${high}` : spanText(low, high);
}

function spanText(low: number, high: number): string {
  return low === high ? `${low}` : `${low} to ${high}`;
}

const SAME_DEPTH =
  'Go only as far as the easier numbers say, with no weight, so that every morning is the same.';

function taskText(task: MorningTask | null, repetitions: number): string {
  if (task === null) return 'walk twenty steps.';
  const how = task.holds
    ? `do this ${repetitions} times, a slow breath each`
    : `do this slowly ${repetitions} times`;
  const depth = task.opens ? ` ${SAME_DEPTH}` : '';
  return `${how}: ${task.title}.${task.how === '' ? '' : ` ${task.how}`}${depth}`;
}

/** `carryOnTo`: the score up to which this person carries on; above it nothing is settled. */
function contactText(carryOnTo: number, { afterDays, risingDays }: ContactRules): string {
  return `Your morning score has been over ${carryOnTo} for ${countText(afterDays, 'day')}, or rising for ${countText(Math.round(risingDays / 7), 'week')}.`;
}

/** Exercise, dose, weight and how far when easing back. */
export function easierText(easier: readonly Easier[]): Section {
  return section('easier', 'The easier numbers', [
    paragraph(
      'Use these when the morning check says ease back, after a flare, or after a week or more off. Go up again when you are back to your usual.',
    ),
    table('Your exercises, eased back', ['Exercise', 'Dose', 'Weight', 'How far'], easier.map(easierRow)),
  ]);
}

function easierRow({ title, beginsOn, dose, counted, load, farNow, farEasier }: Easier): string[] {
  return [
    beginsOn === null ? title : fromDayText(title, beginsOn),
    doseWords(dose, counted),
    load === 'felt' ? 'a lighter one than last time, or none' : loadText(load.loadKg, load.made),
    farEasier === null ? howFarText(farNow) : easierFarText(farNow, farEasier),
  ];
}

/** A hold that is kept in a flare, by its title. */
export interface FlareHoldWords {
  readonly title: string;
  readonly dose: FlareDose;
  readonly withoutWeight: boolean;
}

/** `holds`: what is still held, empty for nothing; `freeSitting`: nothing is counted any more; `fixedSitting`: some cannot be cut short. */
export function flareText(
  { restDays, holdsOnlyDays, sittingMinutes }: FlarePlan,
  holds: readonly FlareHoldWords[],
  freeSitting: boolean,
  runs: boolean,
  fixedSitting: boolean,
): Section {
  const sitting =
    sittingMinutes === null
      ? freeSitting
        ? 'Sit for half as long as you do now.'
        : 'Sit as little as you can.'
      : `Sit for at most ${countText(sittingMinutes, 'minute')} at a time${fixedSitting ? ', wherever you can choose' : ''}.`;
  return section('flare', 'If it flares up', [
    paragraph('A flare is a bad spell, not a step back to the start. It passes.'),
    list([
      ...holdsTexts(restDays, holdsOnlyDays, holds),
      ...(runs ? ['Walk instead of running.'] : []),
      sitting,
      'When the morning check is back to your usual, start again with the easier numbers.',
    ]),
  ]);
}

function holdsTexts(
  restDays: number,
  { from, to }: FlarePlan['holdsOnlyDays'],
  holds: readonly FlareHoldWords[],
): string[] {
  if (holds.length === 0)
    return [
      `For ${from + restDays} to ${to + restDays} days leave the exercises out, and keep gently on the move.`,
    ];
  const rest =
    restDays === 0
      ? []
      : [`${restDays === 1 ? 'First day' : `First ${restDays} days`}: rest, with short, easy walks only.`];
  const days = `${restDays === 0 ? 'For' : 'Then for'} ${from} to ${to} days`;
  return [...rest, `${days} only this, gently and once a day: ${holds.map(flareHoldText).join('; ')}.`];
}

/** @example 'Bridge hold from pillows, 2 holds of 15 seconds' */
function flareHoldText({ title, dose, withoutWeight }: FlareHoldWords): string {
  const weight = withoutWeight ? ', no weight' : '';
  return `${title}, ${countText(dose.sets, 'hold')} of ${secondsText(dose.holdSeconds)}${weight}`;
}

/** Days off, counted: the same again, easier, or back to the beginning. `onward`: nothing is left to begin again, so the easier numbers are. */
export function missedDaysText(sameUnder: number, oneBackUpTo: number, onward: boolean): Section {
  return section('missed-days', 'If you miss days', [
    list([
      `Fewer than ${sameUnder} days: carry on where you were.`,
      `${sameUnder} to ${oneBackUpTo} days: start again with the easier numbers.`,
      `More than ${oneBackUpTo} days, or after a fever: get in touch. ${onward ? 'You start with the easier numbers, and stay with them for two weeks.' : 'You start this part again from its first step.'}`,
    ]),
    paragraph('A late session moves the next one on.'),
  ]);
}

/** When to get in touch, and how. `boneKnown`: a sore bone is what we know already. */
export function getHelpText(
  contact: readonly string[],
  rules: ContactRules,
  { night, expected }: Protocol['getHelp'],
  { carryOnTo }: MorningBands,
  boneKnown: boolean,
): Section {
  return section('get-help', 'When to get in touch', [
    list([
      contactText(carryOnTo, rules),
      night,
      'Tingling, numbness or weakness in the leg.',
      boneKnown
        ? 'A bone hurts more, or hurts when you walk.'
        : 'One spot of bone hurts, or it hurts to hop.',
    ]),
    ...(expected === undefined ? [] : [paragraph(expected)]),
    paragraph(contact.join(' · ')),
  ]);
}
