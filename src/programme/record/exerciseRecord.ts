/** One exercise in the record: what decided it, what the model says of it, and what to bear in mind. */
import type { Messages } from '../../messages/messages.ts';
import { marginOf } from '../../mechanics/cap.ts';
import type { Movement } from '../../mechanics/movement.ts';
import { MODEL_ANGLE, type ModelEstimate } from '../../decisions/candidates/estimate.ts';
import { isPosed } from '../../decisions/person/model.ts';
import { cellsInWords } from '../cells.ts';
import type { Bounds, Person } from '../../decisions/person/person.ts';
import type { CapName, ExerciseRemark } from '../../messages/en/clinician/record/exercise.ts';

import type { Prescription } from '../../decisions/session/prescribe.ts';
import type { ProgrammeRecord } from '../programme.ts';
import { workedTogether } from '../../decisions/candidates/together.ts';
import { angleCellIn } from '../../decisions/session/cells/angleCell.ts';
import { rulerOf } from './squeeze.ts';

/** The exercise of one prescription; the estimate is null where the model says nothing. */
export function exerciseRecord(
  say: Messages,
  one: Prescription,
  person: Person,
  bounds: Bounds,
): ProgrammeRecord['exercises'][number] {
  const { card, estimate } = one;
  const cells = cellsInWords(say, one, person);
  const range = angleCellIn(cells);
  const load = cells.find(({ cell }) => cell === 'loadKg');
  return {
    card: card.id,
    title: card.title,
    decidedBy: range?.decidedBy ?? 'dose',
    because: say.becauseText(range?.rule ?? '', load?.rule ?? ''),
    estimate,
    ruler: rulerOf(say, one, person.protocol),
    remarks: [
      ...[...kindRemarks(one, person), ...cueRemarks(estimate)].map(say.exerciseRemarkText),
      ...togetherRemarks(say, one, person),
      ...[...ownRemarks(one, person, bounds), ...(one.byFeel ? ([{ remark: 'felt' }] as const) : [])].map(
        say.exerciseRemarkText,
      ),
    ],
  };
}

function kindRemarks({ card }: Prescription, { protocol: { angle } }: Person): ExerciseRemark[] {
  const fast = card.kind === 'energy-storage' || card.kind === 'running-drill';
  const stated = angle !== 'kneeFlexion' && angle !== 'ankleDorsiflexion';
  const found: readonly [ExerciseRemark, boolean][] = [
    [{ remark: stated ? 'no-pose-stated-hip' : 'no-pose' }, card.movement === null],
    [{ remark: 'other-tendon' }, angle !== MODEL_ANGLE],
    [{ remark: 'fast' }, fast],
  ];
  return found.filter(([, holds]) => holds).map(([remark]) => remark);
}

// Below this the two kinds of friction are not told apart.
const TOLD_APART_BW = 0.05;

function cueRemarks(estimate: ModelEstimate | null): ExerciseRemark[] {
  if (estimate === null || estimate.compressionVerticalOnlyBw <= estimate.compressionBw + TOLD_APART_BW)
    return [];
  return [{ remark: 'heels-dragged', compressionBw: estimate.compressionVerticalOnlyBw }];
}

function togetherRemarks(say: Messages, { card, at }: Prescription, person: Person): string[] {
  const found = isPosed(card) ? workedTogether(card, at, person) : null;
  return found === null ? [] : [say.togetherText(found, person.clinic.muscles.leastHamstringShare.value)];
}

function ownRemarks({ card, estimate }: Prescription, { consult }: Person, bounds: Bounds): ExerciseRemark[] {
  if (!consult.overrides.some(({ path }) => path.startsWith(`${card.id}.`))) return [];
  const { movement } = card;
  const caps = estimate === null || movement === null ? [] : beyondCaps(estimate, movement, bounds);
  return [{ remark: 'own-entry' }, ...(caps.length === 0 ? [] : [{ remark: 'beyond-caps', caps } as const])];
}

function beyondCaps(estimate: ModelEstimate, movement: Movement, { caps }: Bounds): CapName[] {
  const margin = marginOf(movement, caps);
  const held: [CapName, number, number | null][] = [
    ['hipFlexion', estimate.hipFlexionDeg, caps.angle === 'hipFlexion' ? caps.angleDeg : null],
    ['compression', margin * estimate.compressionBw, caps.compressionBw],
    ['tension', margin * estimate.tensionBw, caps.tensionBw],
    ['demand', estimate.demand, caps.demand],
  ];
  return held.filter(([, value, cap]) => cap !== null && value > cap).map(([name]) => name);
}
