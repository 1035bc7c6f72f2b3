/** Rules across the keys of a protocol: only what contradicts itself, whatever the clinic's own view. */
import { isKeepStage } from '../keepStage.ts';
import { pathText, valueAt, type Path } from '../path.ts';
import type { Wrong } from './words.ts';

type Keys = Readonly<Record<string, unknown>>;

/** A dose counts repetitions or seconds: holds the one, mobility either, all others the other. */
export function doseRule(dose: Keys, wrong: Wrong): void {
  const { kind } = dose;
  if (typeof kind !== 'string') return;
  if (kind === 'mobility') eitherCount(dose, wrong);
  else oneCount(dose, kind === 'hold' ? 'holdSeconds' : 'repetitions', kind, wrong);
  if ((kind === 'hold' || kind === 'mobility') && dose['reserve'] !== undefined) {
    wrong(['reserve'], `left out of a dose of kind ${kind}`, { fix: 'take reserve out', because: 'kind' });
  }
}

/** What a stage says of itself: weeks, the way its hip bend opens, and room for the slots it needs. */
export function stageRule(stage: Keys, wrong: Wrong): void {
  inOrder(stage, ['usualWeeks', 'from'], ['usualWeeks', 'to'], wrong);
  opening(stage, wrong);
  const most = stage['maxExercises'];
  const needed = entries(stage['slots']).filter(
    (slot) => slot['needed'] === true && slot['when'] === 'session',
  );
  if (typeof most === 'number' && needed.length > most) {
    wrong(['maxExercises'], `at least ${needed.length}, for so many slots of a session are needed`, {
      fix: 'raise it, or need fewer slots',
    });
  }
  unique(entries(stage['slots']), 'name', ['slots'], wrong);
}

/** What holds from stage to stage, and pairs of house numbers of which the first cannot be the larger. */
export function protocolRule(protocol: Keys, wrong: Wrong): void {
  const stages = entries(protocol['stages']);
  stages.forEach((stage, index) => {
    oneAngleCap(protocol['angle'], stage, index, wrong);
    if (index > 0) capsNotBelow(stages[index - 1], stage, index, wrong);
    if (
      typeof stage['name'] === 'string' &&
      isKeepStage({ name: stage['name'] }) &&
      index < stages.length - 1
    ) {
      wrong(['stages', index, 'name'], 'the last stage, if it is called keep', {
        fix: 'move it to the end, or rename it',
      });
    }
  });
  unique(stages, 'name', ['stages'], wrong);
  unique(entries(protocol['tests']), 'id', ['tests'], wrong);
  for (const [low, high] of PAIRS) inOrder(protocol, low.split('.'), high.split('.'), wrong);
}

const PAIRS = [
  ['painRule.duringAtMost.value', 'painRule.neverAbove.value'],
  ['morningCheck.carryOnOver.value', 'morningCheck.sameAgainOver.value'],
  ['flare.holdsOnlyDays.from', 'flare.holdsOnlyDays.to'],
  ['missedDays.sameStepUnder.value', 'missedDays.oneBackUpTo.value'],
  ['limits.holdShareFrom.value', 'limits.holdShareTo.value'],
  ['limits.screenedHoldSeconds.value', 'limits.holdAtMostSeconds.value'],
  ['sittingRules.leastMinutes.value', 'sittingRules.mostMinutes.value'],
] as const;

function eitherCount(dose: Keys, wrong: Wrong): void {
  if ((dose['repetitions'] === undefined) !== (dose['holdSeconds'] === undefined)) return;
  wrong([], 'given repetitions or holdSeconds, one of the two', {
    fix: 'write repetitions for moving, or holdSeconds for holding still',
    because: 'kind',
  });
}

function oneCount(dose: Keys, count: 'repetitions' | 'holdSeconds', kind: string, wrong: Wrong): void {
  const other = count === 'repetitions' ? 'holdSeconds' : 'repetitions';
  if (dose[count] === undefined)
    wrong([count], `there for a dose of kind ${kind}`, { missing: true, because: 'kind' });
  if (dose[other] !== undefined) {
    wrong([other], `left out of a dose of kind ${kind}`, { fix: `take ${other} out`, because: 'kind' });
  }
}

function opening(stage: Keys, wrong: Wrong): void {
  const opensToDeg = stage['opensToDeg'];
  const key = ANGLE_CAPS.find((one) => valueAt(stage, ['caps', one]) !== undefined) ?? 'hipFlexionDeg';
  const cap = valueAt(stage, ['caps', key]);
  if (typeof opensToDeg !== 'number') return;
  if (cap === null)
    wrong(['opensToDeg'], `left out where caps.${key} is none`, { fix: 'take opensToDeg out' });
  if (typeof cap === 'number' && opensToDeg < cap)
    wrong(['opensToDeg'], `at least caps.${key} (${cap})`, { fix: 'raise it, or leave it out' });
}

const ANGLE_CAPS = ['hipFlexionDeg', 'kneeFlexionDeg', 'ankleDorsiflexionDeg'] as const;

// The model sees no hip adduction: beside the positions its stages cap hip flexion.
const CAP_OF: Readonly<Record<string, (typeof ANGLE_CAPS)[number]>> = {
  hipFlexion: 'hipFlexionDeg',
  hipAdduction: 'hipFlexionDeg',
  kneeFlexion: 'kneeFlexionDeg',
  ankleDorsiflexion: 'ankleDorsiflexionDeg',
};

/** A stage caps the angle the protocol is guarded by, and no other: two would leave open which one is printed. */
function oneAngleCap(angle: unknown, stage: Keys, index: number, wrong: Wrong): void {
  const asked = CAP_OF[String(angle)];
  if (asked === undefined || valueAt(stage, ['caps']) === undefined) return;
  for (const key of ANGLE_CAPS) {
    const path = ['stages', index, 'caps', key];
    const isThere = valueAt(stage, ['caps', key]) !== undefined;
    if (key === asked && !isThere)
      wrong(path, `there where angle is ${String(angle)}`, { missing: true, because: 'angle' });
    if (key !== asked && isThere)
      wrong(path, `left out where angle is ${String(angle)}`, {
        fix: `take ${key} out; the cap is ${asked}`,
        because: 'angle',
      });
  }
}

// A stage that allows less than the one before would take away what the person has shown to bear. Null is no cap.
function capsNotBelow(before: Keys | undefined, stage: Keys, index: number, wrong: Wrong): void {
  for (const cap of [...ANGLE_CAPS, 'compressionBw', 'tensionBw', 'demand']) {
    const [earlier, later] = [valueAt(before, ['caps', cap]), valueAt(stage, ['caps', cap])];
    if (typeof later !== 'number') continue;
    const path = ['stages', index, 'caps', cap];
    const besides = ['stages', index - 1, 'caps', cap];
    if (earlier === null)
      wrong(path, 'none, as in the stage before', { fix: 'write none, or cap the stage before', besides });
    if (typeof earlier === 'number' && later < earlier)
      wrong(path, `at least that of the stage before (${earlier})`, {
        fix: 'raise it, or lower the stage before',
        besides,
      });
  }
}

function inOrder(value: unknown, low: Path, high: Path, wrong: Wrong): void {
  const [least, most] = [valueAt(value, low), valueAt(value, high)];
  if (typeof least !== 'number' || typeof most !== 'number' || least <= most) return;
  wrong(high, `at least ${pathText(low)} (${least})`, { fix: 'put one of the two right', besides: low });
}

function unique(list: readonly Keys[], key: string, path: Path, wrong: Wrong): void {
  list.forEach((entry, index) => {
    const name = entry[key];
    if (typeof name !== 'string' || list.findIndex((other) => other[key] === name) === index) return;
    wrong([...path, index, key], 'another than that of an entry before', {
      code: 'duplicate-id',
      fix: 'give it a name of its own',
    });
  });
}

function entries(value: unknown): Keys[] {
  return Array.isArray(value)
    ? value.filter((entry): entry is Keys => typeof entry === 'object' && entry !== null)
    : [];
}
