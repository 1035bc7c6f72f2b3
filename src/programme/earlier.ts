/** What the next revision needs to know of this one, read from its record. */
import type { Earlier } from '../decisions/terms/earlier.ts';
import type { Programme } from './programme.ts';

/** The present step and the plan of a finished programme; null where there was none. */
export function earlierOf(programme: Programme | null): Earlier | null {
  if (programme === null) return null;
  const { revision, seenOn, stage, step, steps, plan, record } = programme;
  const present = steps.find((one) => one.present);
  return {
    revision,
    seenOn,
    protocol: record.versions.protocol,
    stage: stage.chosen,
    step,
    exercises: (present?.prescriptions ?? []).map(({ card, cells }) => ({
      card,
      values: Object.fromEntries(cells.map(({ cell, value }) => [cell, value])),
    })),
    plan,
  };
}
