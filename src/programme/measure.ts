/** The model's answer to the ladder: what a card asks for at a range, load and tempo, and which cap forbids it. */
import type { Measure, Measured } from '../dose/growth.ts';
import type { Cap } from '../dose/rung.ts';
import { cardOf } from './choose.ts';
import { isPosed, type PosedCard } from './model.ts';
import { loadsFor } from './load.ts';
import type { Bounds, Person } from './person.ts';

/** `bounds`: those at the far end of the stage's ladder. Under 18 nothing is measured, so that growth goes by work and kilograms. */
export function measureFor(person: Person, bounds: Bounds): Measure {
  return (id, at) => {
    const card = cardOf(person, id);
    return isPosed(card) && !person.effects.under18 ? measured(card, at, person, bounds) : null;
  };
}

function measured(
  card: PosedCard,
  { rangeDeg, loadKg, tempo, kind }: Parameters<Measure>[1],
  person: Person,
  bounds: Bounds,
): Measured {
  const margin = card.movement.supports.length > 1 ? bounds.caps.supportMargin : 1;
  const swept = person.model.sweepTo(card, rangeDeg, loadKg, tempo);
  if (swept === null)
    return { compressionBw: 0, hipMomentNm: 0, compressionTimeBwS: 0, refusedBy: 'hipFlexion' };
  // Squeeze need not rise with load: whoever takes less must be inside as well.
  const lighter = loadsFor(card, person).filter((load) => load.loadKg < loadKg);
  const peaks = lighter.map(
    (load) => person.model.sweepTo(card, rangeDeg, load.loadKg, tempo)?.peak.compressionBw ?? 0,
  );
  const repetitionSeconds = tempo.goSeconds + tempo.holdSeconds + tempo.backSeconds;
  return {
    compressionBw: margin * Math.max(swept.peak.compressionBw, ...peaks),
    hipMomentNm: Math.abs(swept.peak.hipMomentNm),
    compressionTimeBwS:
      (margin * swept.compressionTimeBwS) / (kind === 'hold' ? Math.max(1, repetitionSeconds) : 1),
    refusedBy: refusedBy(card, rangeDeg, loadKg, person, bounds),
  };
}

function refusedBy(
  card: PosedCard,
  rangeDeg: number | null,
  loadKg: number,
  { model }: Person,
  bounds: Bounds,
): Cap | null {
  const answer = model.rangeAt(card, loadKg, bounds.caps);
  const named = (limit: string): Cap =>
    limit === 'hipFlexion' && bounds.byProvokedAngle
      ? 'provokedAngle'
      : limit === 'pose'
        ? 'hipFlexion'
        : (limit as Cap);
  if (!answer.admitted) return named(answer.barredBy);
  if (answer.decidedBy === 'full') return null;
  return rangeDeg === null || rangeDeg > answer.hipFlexionDeg + 1e-6 ? named(answer.decidedBy) : null;
}
