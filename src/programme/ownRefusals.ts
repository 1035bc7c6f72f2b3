/** Clinician's entries that cannot be carried out, each with its place and the cure. */
import type { Refusal } from '../units/refusal.ts';
import type { Weekday } from '../units/weekday.ts';
import type { WeekPlan } from '../scheduling/plan.ts';
import type { JointAngle } from '../mechanics/jointAngle.ts';
import { ANGLE_CELLS } from './cells/angleCell.ts';
import { ANGLE_WORDS } from './phrases/angle.ts';
import { loadsFor } from './load.ts';
import { isPosed } from './model.ts';
import { ownDays, ownEntries, type Own } from './overrides.ts';
import { workDays } from './workDays.ts';
import type { Person } from './person.ts';
import { suddenLoadLimit } from './phrases/stage.ts';
import { listText, numberText } from './phrases/plain.ts';
import { fitOf, type Session, type SessionExercise } from './session.ts';
import type { Rung } from '../dosing/rung.ts';

/** Every entry for an exercise of the present rung that this exercise, kit, screen or week has no room for. */
export function ownRefusals(session: Session, present: Rung, plan: WeekPlan, person: Person): Refusal[] {
  return session.exercises.flatMap((exercise, index) => {
    const card = present.exercises[index]?.card ?? '';
    return faultsOf(exercise, card, ownEntries(card, person.consult), plan, person).map((fault) =>
      refusalAt(card, fault, person),
    );
  });
}

interface Fault {
  readonly cell: string;
  readonly code: 'does-not-fit' | 'load-not-in-kit';
  readonly expected: string;
  readonly fix: string;
}

function refusalAt(card: string, { cell, code, expected, fix }: Fault, { consult }: Person): Refusal {
  const index = consult.overrides.findIndex(({ path }) => path === `${card}.${cell}`);
  return {
    code,
    kind: 'consult',
    id: consult.id,
    path: ['overrides', index, 'value'],
    found: String(consult.overrides[index]?.value),
    expected,
    fix,
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

const TAKE_OUT = 'Take the entry out.';

// Holds go by seconds, all else by repetitions.
function countFaults({ ladder }: SessionExercise, own: Own): Fault[] {
  const isHold = ladder.start.dose.holdSeconds !== null;
  const wrong = isHold ? (['repetitions', 'reserve'] as const) : (['holdSeconds'] as const);
  return wrong
    .filter((cell) => own.has(cell))
    .map((cell) => ({
      cell,
      code: 'does-not-fit',
      expected: isHold ? 'left out: this exercise is held' : 'left out: this exercise goes by repetitions',
      fix: isHold ? 'Set holdSeconds instead.' : 'Set repetitions instead.',
    }));
}

function holdFaults(own: Own, { effects, protocol }: Person): Fault[] {
  const most = protocol.limits.screenedHoldSeconds.value;
  const value = Number(own.get('holdSeconds')?.value ?? 0);
  if (effects.shortHolds.length === 0 || value <= most) return [];
  const expected = `at most ${most}: the screen allows short holds only`;
  return [{ cell: 'holdSeconds', code: 'does-not-fit', expected, fix: `Write ${most} or less.` }];
}

function rangeFaults(exercise: SessionExercise, cardId: string, own: Own, angle: JointAngle): Fault[] {
  const other = ANGLE_CELLS.find((cell) => cell !== `${angle}Deg` && own.has(cell));
  if (other !== undefined) {
    const expected = `left out: this protocol is set by ${ANGLE_WORDS[angle].bend}`;
    return [{ cell: other, code: 'does-not-fit', expected, fix: `Write ${angle}Deg, or take it out.` }];
  }
  const value = own.get(`${angle}Deg`)?.value;
  if (typeof value !== 'number') return [];
  const { settingsDeg } = fitOf(exercise, cardId);
  const [least, most] = [settingsDeg[0], settingsDeg.at(-1)];
  if (least !== undefined && most !== undefined && value >= least && value <= most) return [];
  const graded = least !== undefined;
  return [
    {
      cell: `${angle}Deg`,
      code: 'does-not-fit',
      expected: graded
        ? `a ${ANGLE_WORDS[angle].bend} of this exercise: ${least}° to ${most}°`
        : `left out: this exercise is not set by ${ANGLE_WORDS[angle].bend}`,
      fix: graded ? `Write ${least} to ${most}.` : TAKE_OUT,
    },
  ];
}

function loadFaults(exercise: SessionExercise, cardId: string, own: Own, person: Person): Fault[] {
  const value = own.get('loadKg')?.value;
  if (typeof value !== 'number') return [];
  const { card } = fitOf(exercise, cardId);
  if (person.effects.lightHolds.length > 0 && value > 0)
    return [
      {
        cell: 'loadKg',
        code: 'does-not-fit',
        expected: '0: the screen allows light holds only',
        fix: TAKE_OUT,
      },
    ];
  if (!isPosed(card) || card.movement.loadAt === undefined)
    return [
      {
        cell: 'loadKg',
        code: 'does-not-fit',
        expected: 'left out: this exercise carries no weight',
        fix: TAKE_OUT,
      },
    ];
  const lightKg = fitOf(exercise, cardId).load.load.loadKg;
  if (person.sudden !== null && value > lightKg)
    return [
      {
        cell: 'loadKg',
        code: 'does-not-fit',
        expected: suddenLoadLimit(lightKg),
        fix: `Write ${numberText(lightKg)} or less, or take the entry out.`,
      },
    ];
  const loadsKg = loadsFor(card, person).map(({ loadKg }) => loadKg);
  if (loadsKg.includes(value)) return [];
  return [{ cell: 'loadKg', code: 'load-not-in-kit', ...kitWords(loadsKg, value) }];
}

// The nearest either way is enough to see what the kit can do.
function kitWords(loadsKg: readonly number[], value: number): Pick<Fault, 'expected' | 'fix'> {
  const lighter = loadsKg.findLast((kg) => kg < value) ?? 0;
  const heavier = loadsKg.find((kg) => kg > value);
  const near = [lighter, ...(heavier === undefined ? [] : [heavier])].map((kg) => `${numberText(kg)} kg`);
  return {
    expected: `a load that the kit makes for this exercise; the nearest ${near.length === 1 ? 'is' : 'are'} ${listText(near)}`,
    fix: `Write ${numberText(lighter)}, or add to the kit what makes ${numberText(value)} kg.`,
  };
}

function dayFaults({ slot }: SessionExercise, own: Own, plan: WeekPlan): Fault[] {
  if (!own.has('days')) return [];
  const possible: readonly Weekday[] = workDays(slot.when, plan);
  const days = ownDays(own);
  if (days !== null && days.every((day) => possible.includes(day))) return [];
  return [
    {
      cell: 'days',
      code: 'does-not-fit',
      expected: `days on which this work is planned, of ${possible.join(', ')}`,
      fix: `Write some of ${possible.join(', ')}.`,
    },
  ];
}
