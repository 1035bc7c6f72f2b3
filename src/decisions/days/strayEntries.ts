/** The clinician's own numbers for cards that are not in the plan: they would change nothing, so somebody erred. */
import type { Consult } from '../../content/library.ts';
import type { Refusal, CardInPlan } from '../terms/refusal.ts';
import { isDecision } from '../session/overrides.ts';
import type { FollowingPart } from './followingParts.ts';
import type { Session } from '../session/session.ts';
import type { Shown } from './work.ts';

interface Planned {
  readonly shown: readonly Shown[];
  readonly session: Session;
  readonly step: number;
  readonly following: readonly FollowingPart[];
}

/** A refusal for every entry whose card is neither in the plan nor on a later step of it. */
export function strayEntries(consult: Consult, planned: Planned): Refusal[] {
  const cards = cardsInPlan(planned);
  return consult.overrides.flatMap(({ path }, index) =>
    isDecision(path) || cards.some(({ id }) => path.startsWith(`${id}.`))
      ? []
      : [
          {
            code: 'does-not-fit',
            id: consult.id,
            path: ['overrides', index, 'path'],
            why: { reason: 'own-of-no-card', value: path, cards },
          },
        ],
  );
}

/** Every card of the plan once: those of today, of later steps, and of the rungs that follow by weeks. */
export function cardsInPlan({ shown, session, step, following }: Planned): readonly CardInPlan[] {
  const steps = session.ladder.rungs.slice(step - 1).map((rung, index) => ({
    fromStep: index === 0 ? null : step + index,
    ids: rung.exercises.map(({ card }) => card),
  }));
  const parts = [
    { fromStep: null, ids: shown[0]?.prescriptions.map(({ card }) => card.id) ?? [] },
    ...steps,
    ...following.map((part) => ({
      fromStep: part.step,
      ids: part.shown.prescriptions.map(({ card }) => card.id),
    })),
  ];
  const all = parts.flatMap(({ fromStep, ids }) => ids.map((id) => ({ id, fromStep })));
  return all.filter(({ id }, index) => all.findIndex((one) => one.id === id) === index);
}
