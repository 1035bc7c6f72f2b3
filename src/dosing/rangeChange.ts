/** Steps that open the range, or go on to a harder card: the load gives way, and then the repetitions. */
import type { ProgressionEntry, Prescribed } from './rung.ts';
import {
  END,
  LEAST_SETS,
  cardOf,
  eased,
  lighter,
  stopped,
  tries,
  type LadderCard,
  type Standing,
  type StepRules,
  type Tries,
} from './step.ts';

// Degrees a step asks for where the progression does not say [choice].
const BY_DEG = 5;

/** Opens the range by 5 to 15°, the widest that fits first. */
export function range(entry: ProgressionEntry, standing: Standing): Tries {
  const { exercise, at, rules } = standing;
  const card = cardOf(exercise, at);
  const from = at.rangeDeg as number;
  const wider = card.rangesDeg.filter((deg) => deg > from && deg <= (entry.to ?? Infinity));
  const [nearest, end] = [wider[0], wider.at(-1)];
  if (nearest === undefined) return card.rangesDeg.length > 0 ? END : stopped('fixedRange', from);
  const within = (most: number) =>
    wider.filter((deg) => deg <= from + most && (deg >= from + rules.rangeLeastDeg || deg === end)).reverse();
  const asked = within(Math.min(entry.by ?? BY_DEG, rules.rangeMostDeg));
  const steps = asked.length > 0 ? asked : within(rules.rangeMostDeg);
  if (steps[0] === undefined) return stopped('rangeStep', nearest);
  return tries('range', steps[0], widened(steps, card, standing));
}

// A smaller opening before a lighter load, and that before fewer repetitions. The load gives way to growth only, to
// climb back: what a cap bars at the present load would cost the load for good.
function* widened(steps: readonly number[], card: LadderCard, standing: Standing): Iterable<Prescribed> {
  const { at, rules, capOn } = standing;
  for (const rangeDeg of steps) yield { ...at, rangeDeg };
  const open = steps.filter((rangeDeg) => capOn({ ...at, rangeDeg }) === null);
  if (open.length === 0) return;
  const loads = lighter(card, at.loadKg).filter((kg) => kg < at.loadKg);
  for (const loadKg of loads) for (const rangeDeg of open) yield { ...at, rangeDeg, loadKg };
  const lightest = { ...at, loadKg: loads.at(-1) ?? at.loadKg };
  for (const rangeDeg of open) yield* eased({ ...lightest, rangeDeg }, rules);
}

/** Goes on to the next harder card. */
export function lever(_entry: ProgressionEntry, { exercise, at, rules }: Standing): Tries {
  if (exercise.cards.length === 1) return stopped('noHarderCard', at.card);
  const next = exercise.cards[exercise.cards.findIndex((one) => one.card === at.card) + 1];
  return next ? tries('lever', next.card, levered(next, at, rules)) : END;
}

// A harder card starts no further and no heavier than the last, with few repetitions, and with fewer sets where it pulls
// so much more.
function* levered(next: LadderCard, at: Prescribed, rules: StepRules): Iterable<Prescribed> {
  const count = at.dose.repetitions;
  const dose = { ...at.dose, repetitions: count && Math.min(count, rules.repetitionsBack) };
  for (const rangeDeg of lessFar(next, at.rangeDeg)) {
    const loads = lighter(next, at.loadKg);
    for (const loadKg of loads) yield { ...at, card: next.card, rangeDeg, loadKg, dose };
    const lightest = { ...at, card: next.card, rangeDeg, loadKg: loads.at(-1) ?? at.loadKg };
    for (let sets = at.dose.sets; sets >= Math.min(LEAST_SETS, at.dose.sets); sets--)
      yield* eased({ ...lightest, dose: { ...dose, sets } }, rules);
  }
}

function lessFar({ rangesDeg }: LadderCard, from: number | null): readonly (number | null)[] {
  if (rangesDeg.length === 0) return [null];
  return from === null ? rangesDeg.slice(0, 1) : rangesDeg.filter((deg) => deg <= from).reverse();
}
