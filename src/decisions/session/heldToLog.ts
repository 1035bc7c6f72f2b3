/** The step that what was really lifted lets a person take: no load jumps past what the log shows. */
import type { Person } from '../person/person.ts';
import type { Session } from './session.ts';

/**
 * The decided step, or the last one before it in which nothing is heavier than was lifted; where the review lets the step
 * go on, than one step's growth of it. Another step that the clinician wrote stands, and so does one there is no rung of.
 */
export function heldToLog({ ladder }: Session, step: number, { logged, protocol, consult }: Person): number {
  const isOwn = consult.step !== undefined && consult.step !== logged?.step;
  if (logged === null || isOwn || ladder.rungs.length < step) return step;
  const growth = logged.grows ? protocol.limits.stepGrowth.value : 1;
  const doneKg = new Map(logged.exercises.map(({ card, loadKg }) => [card, loadKg]));
  const isHeld = (rung: Session['ladder']['rungs'][number]) =>
    rung.exercises.every(({ card, loadKg }) => loadKg <= (doneKg.get(card) ?? Infinity) * growth + 1e-9);
  const heldRung = ladder.rungs.slice(0, step).findLast(isHeld);
  return heldRung?.step ?? 1;
}
