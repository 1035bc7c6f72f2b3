/** Clinician's entries that cannot be carried out, each with its place. */
import type { Weekday } from '../../units/weekday.ts';
import type { WeekPlan } from '../../scheduling/plan.ts';
import type { JointAngle } from '../../mechanics/jointAngle.ts';
import { ANGLE_CELLS } from './cells/angleCell.ts';
import { loadsFor } from '../candidates/load.ts';
import { isPosed } from '../person/model.ts';
import { ownDays, ownEntries, type Own } from './overrides.ts';
import { workDays } from './workDays.ts';
import type { Person } from '../person/person.ts';
import type { CellName } from '../terms/cell.ts';
import type { OwnEntryFault, Refusal } from '../terms/refusal.ts';
import { fitOf, type Session, type SessionExercise } from './session.ts';
import type { Rung } from '../../dosing/rung.ts';

/** Every entry for an exercise of the present rung that this exercise, kit, screen or week has no room for. */
export function ownRefusals(session: Session, present: Rung, plan: WeekPlan, person: Person): Refusal[] {
  return session.exercises.flatMap((exercise, index) => {
    const card = present.exercises[index]?.card ?? '';
    return faultsOf(exercise, card, ownEntries(card, person.consult), plan, person).map((fault) =>
      refusalAt(card, fault, person),
    );
  });
}

type DistributiveOmit<Union, Key extends PropertyKey> = Union extends unknown ? Omit<Union, Key> : never;

interface Fault {
  readonly cell: CellName;
  readonly why: DistributiveOmit<OwnEntryFault, 'value'>;
}

function refusalAt(card: string, { cell, why }: Fault, { consult }: Person): Refusal {
  const index = consult.overrides.findIndex(({ path }) => path === `${card}.${cell}`);
  const value = String(consult.overrides[index]?.value);
  return {
    code: why.reason === 'own-load-not-in-kit' ? 'load-not-in-kit' : 'does-not-fit',
    id: consult.id,
    path: ['overrides', index, 'value'],
    why: { ...why, value },
  };
}

function faultsOf(
  exercise: SessionExercise,
  cardId: string,
  own: Own,
  plan: WeekPlan,
  person: Person,
): Fault[] {
  return [
    ...countFaults(exercise, own),
    ...holdFaults(own, person),
    ...rangeFaults(exercise, cardId, own, person.model.guardedBy),
    ...loadFaults(exercise, cardId, own, person),
    ...dayFaults(exercise, own, plan),
  ];
}

// Holds go by seconds, all else by repetitions.
function countFaults({ ladder }: SessionExercise, own: Own): Fault[] {
  const isHold = ladder.start.dose.holdSeconds !== null;
  const wrong = isHold ? (['repetitions', 'reserve'] as const) : (['holdSeconds'] as const);
  return wrong
    .filter((cell) => own.has(cell))
    .map((cell) => ({ cell, why: { reason: isHold ? 'own-of-a-hold' : 'own-of-repetitions' } }));
}

function holdFaults(own: Own, { effects, protocol }: Person): Fault[] {
  const mostSeconds = protocol.limits.screenedHoldSeconds.value;
  const value = Number(own.get('holdSeconds')?.value ?? 0);
  if (effects.shortHolds.length === 0 || value <= mostSeconds) return [];
  return [{ cell: 'holdSeconds', why: { reason: 'own-hold-too-long', mostSeconds } }];
}

function rangeFaults(exercise: SessionExercise, cardId: string, own: Own, angle: JointAngle): Fault[] {
  const other = ANGLE_CELLS.find((cell) => cell !== `${angle}Deg` && own.has(cell));
  if (other !== undefined) return [{ cell: other, why: { reason: 'own-of-another-joint', angle } }];
  const cell = `${angle}Deg` as const;
  const value = own.get(cell)?.value;
  if (typeof value !== 'number') return [];
  const { settingsDeg } = fitOf(exercise, cardId);
  const [leastDeg, mostDeg] = [settingsDeg[0], settingsDeg.at(-1)];
  if (leastDeg === undefined || mostDeg === undefined)
    return [{ cell, why: { reason: 'own-without-range', angle } }];
  if (value >= leastDeg && value <= mostDeg) return [];
  return [{ cell, why: { reason: 'own-range-outside', angle, leastDeg, mostDeg } }];
}

function loadFaults(exercise: SessionExercise, cardId: string, own: Own, person: Person): Fault[] {
  const value = own.get('loadKg')?.value;
  if (typeof value !== 'number') return [];
  const why = loadFault(exercise, cardId, value, person);
  return why === null ? [] : [{ cell: 'loadKg', why }];
}

function loadFault(
  exercise: SessionExercise,
  cardId: string,
  kg: number,
  person: Person,
): Fault['why'] | null {
  const { card, load } = fitOf(exercise, cardId);
  if (person.effects.lightHolds.length > 0 && kg > 0) return { reason: 'own-weight-in-light-holds' };
  if (!isPosed(card) || card.movement.loadAt === undefined) return { reason: 'own-without-weight' };
  const mostKg = load.load.loadKg;
  if (person.sudden !== null && kg > mostKg) return { reason: 'own-load-after-sudden-start', mostKg };
  const loadsKg = loadsFor(card, person).map(({ loadKg }) => loadKg);
  if (loadsKg.includes(kg)) return null;
  return {
    reason: 'own-load-not-in-kit',
    kg,
    lighterKg: loadsKg.findLast((one) => one < kg) ?? 0,
    heavierKg: loadsKg.find((one) => one > kg) ?? null,
  };
}

function dayFaults({ slot }: SessionExercise, own: Own, plan: WeekPlan): Fault[] {
  if (!own.has('days')) return [];
  const possible: readonly Weekday[] = workDays(slot.when, plan);
  const days = ownDays(own);
  if (days !== null && days.every((day) => possible.includes(day))) return [];
  return [{ cell: 'days', why: { reason: 'own-days', possible } }];
}
