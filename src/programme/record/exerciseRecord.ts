/** One exercise in the record: what decided it, what the model says of it, and what to bear in mind. */
import { marginOf } from '../../mechanics/cap.ts';
import type { Movement } from '../../mechanics/movement.ts';
import { MODEL_ANGLE, type ModelEstimate } from '../../decisions/candidates/estimate.ts';
import { isPosed } from '../../decisions/person/model.ts';
import { cellsInWords } from '../cells.ts';
import type { Bounds, Person } from '../../decisions/person/person.ts';
import { numberText } from '../../messages/en/plain.ts';
import { togetherText } from '../../messages/en/clinician/muscles.ts';
import type { Prescription } from '../../decisions/session/prescribe.ts';
import type { ProgrammeRecord } from '../programme.ts';
import { workedTogether } from '../../decisions/candidates/together.ts';
import { angleCellIn } from '../../decisions/session/cells/angleCell.ts';
import { rulerOf } from './squeeze.ts';

/** The exercise of one prescription; the estimate is null where the model says nothing. */
export function exerciseRecord(
  one: Prescription,
  person: Person,
  bounds: Bounds,
): ProgrammeRecord['exercises'][number] {
  const { card, estimate } = one;
  const cells = cellsInWords(one, person);
  const range = angleCellIn(cells);
  const load = cells.find(({ cell }) => cell === 'loadKg');
  return {
    card: card.id,
    title: card.title,
    decidedBy: range?.decidedBy ?? 'dose',
    because: `Range: ${range?.rule ?? ''}. Weight: ${load?.rule ?? ''}.`,
    estimate,
    ruler: rulerOf(one, person.protocol),
    remarks: [
      ...kindRemarks(one, person),
      ...cueRemarks(estimate),
      ...togetherRemarks(one, person),
      ...ownRemarks(one, person, bounds),
      ...(one.byFeel
        ? ['The estimate is for the heaviest weight that is admitted, not for the one that is felt for.']
        : []),
    ],
  };
}

const NO_POSE = 'No pose: it takes no part in squeeze and pull, and is guarded by position.';
const NO_POSE_HIP =
  'No pose: it takes no part in squeeze and pull, and is guarded by position and its stated hip bend.';

function kindRemarks({ card }: Prescription, { protocol }: Person): string[] {
  const fast = card.kind === 'energy-storage' || card.kind === 'running-drill';
  return [
    ...(card.movement === null
      ? [protocol.angle === 'kneeFlexion' || protocol.angle === 'ankleDorsiflexion' ? NO_POSE : NO_POSE_HIP]
      : []),
    ...(protocol.angle === MODEL_ANGLE ? [] : ['The model knows the hamstring tendon alone: no estimate.']),
    ...(fast ? ['Fast: the model is for slow movement and says nothing of it.'] : []),
  ];
}

// Below this the two kinds of friction are not told apart.
const TOLD_APART_BW = 0.05;

function cueRemarks(estimate: ModelEstimate | null): string[] {
  if (estimate === null || estimate.compressionVerticalOnlyBw <= estimate.compressionBw + TOLD_APART_BW)
    return [];
  return [
    `If the heels are dragged in, the squeeze may be ${numberText(estimate.compressionVerticalOnlyBw)} body weights: push away, do not drag the heels in.`,
  ];
}

function togetherRemarks({ card, at }: Prescription, person: Person): string[] {
  const found = isPosed(card) ? workedTogether(card, at, person) : null;
  return found === null ? [] : [togetherText(found, person.clinic.muscles.leastHamstringShare.value)];
}

function ownRemarks({ card, estimate }: Prescription, { consult }: Person, bounds: Bounds): string[] {
  if (!consult.overrides.some(({ path }) => path.startsWith(`${card.id}.`))) return [];
  const { movement } = card;
  const beyond = estimate === null || movement === null ? [] : beyondCaps(estimate, movement, bounds);
  return [
    "Holds the clinician's own entry, beside the rule.",
    ...(beyond.length === 0
      ? []
      : [`With it the estimate is above the stage's cap on ${beyond.join(', ')}.`]),
  ];
}

function beyondCaps(estimate: ModelEstimate, movement: Movement, { caps }: Bounds): string[] {
  const margin = marginOf(movement, caps);
  const held: [string, number, number | null][] = [
    ['hip bend', estimate.hipFlexionDeg, caps.angle === 'hipFlexion' ? caps.angleDeg : null],
    ['squeeze', margin * estimate.compressionBw, caps.compressionBw],
    ['pull', margin * estimate.tensionBw, caps.tensionBw],
    ['strength', estimate.demand, caps.demand],
  ];
  return held.filter(([, value, cap]) => cap !== null && value > cap).map(([name]) => name);
}
