/** What the patient is told of the change since the last leaflet. */
import { planEntries } from '../decisions/days/planEntries.ts';
import type { Decided } from '../decisions/decide.ts';
import type { Prescription } from '../decisions/session/prescribe.ts';
import { JOINT_ANGLES } from '../mechanics/jointAngle.ts';
import { changedTexts } from '../messages/en/patient/review.ts';
import type { Review } from '../review/terms.ts';
import type { Exercise, Programme } from './programme.ts';

/** Two or three sentences. */
export function changedSince(previous: Programme, decided: Decided, review: Review): string[] {
  const { stage, step, shown } = decided;
  const before = new Map(previous.exercises.map((one) => [one.card, one]));
  const { prescriptions } = shown[0];
  const turned = prescriptions.map((one) => ({
    title: one.card.title,
    turn: turnOf(one, before.get(one.card.id)),
  }));
  const titles = (turn: Turn) => turned.flatMap((one) => (one.turn === turn ? [one.title] : []));
  return changedTexts(
    review,
    { stage: stage.chosen, step },
    { more: titles('more'), less: titles('less'), fresh: titles('fresh') },
    { beforeKm: firstWeekKm(previous.plan), nowKm: firstWeekKm(planEntries(decided)) },
    (card) => before.get(card)?.title ?? card,
  );
}

/** Null where a run of the week is told in minutes, or there is none. */
function firstWeekKm(plan: Programme['plan']): number | null {
  const runs = plan.filter(({ week }) => week === 1).flatMap((day) => day.runs);
  if (runs.length === 0 || runs.some(({ km }) => km === null)) return null;
  return runs.reduce((sum, { km }) => sum + (km ?? 0), 0);
}

type Turn = 'more' | 'less' | 'same' | 'fresh';

const GROWING = [
  'sets',
  'repetitions',
  'holdSeconds',
  'loadKg',
  ...JOINT_ANGLES.map((angle) => `${angle}Deg` as const),
];

// A step that opens the range takes weight off: what it asks for as a whole is one thing more.
function turnOf({ cells }: Prescription, before: Exercise | undefined): Turn {
  if (before === undefined) return 'fresh';
  const signs = cells.flatMap(({ cell, value }) => {
    const old = before.cells.find((one) => one.cell === cell)?.value;
    return (GROWING as readonly string[]).includes(cell) &&
      typeof value === 'number' &&
      typeof old === 'number'
      ? [Math.sign(value - old)]
      : [];
  });
  if (signs.some((sign) => sign > 0)) return 'more';
  return signs.some((sign) => sign < 0) ? 'less' : 'same';
}
