/** The model's answer to the ladder: what a card asks for at a range, load and tempo, and which cap forbids it. */
import type { Measure, Measured } from '../dose/growth.ts';
import type { Cap } from '../dose/rung.ts';
import type { Limit } from '../mechanics/cap.ts';

import { isPosed, type PosedCard } from './model.ts';
import { loadsFor } from './load.ts';
import { cardOf, type Bounds, type Person } from './person.ts';

/**
 * `opened`: the bounds at the far end of the stage's ladder; `first`: those of its first step. Under 18 nothing is
 * measured, so that growth goes by work and kilograms.
 */
export function measureFor(person: Person, opened: Bounds, first: Bounds): Measure {
  return (id, at) => {
    const card = cardOf(person, id);
    if (!isPosed(card) || person.effects.under18) return null;
    const alone = measured(card, at, person, opened);
    return alone.refusedBy === null
      ? { ...alone, refusedBy: liftRefusedBy(card, at, person, opened, first) }
      : alone;
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

// The weight is lifted no deeper than the stage begins with, or than the exercise itself goes by then.
function liftRefusedBy(
  card: PosedCard,
  { rangeDeg, loadKg }: Pick<Parameters<Measure>[1], 'rangeDeg' | 'loadKg'>,
  { model }: Person,
  opened: Bounds,
  first: Bounds,
): Cap | null {
  const firstDeg = first.caps.hipFlexionDeg;
  const hipFlexionDeg = firstDeg === null ? null : Math.max(firstDeg, rangeDeg ?? 0);
  const barredBy = model.liftBarredBy(card, loadKg, { ...opened.caps, hipFlexionDeg });
  return barredBy === null ? null : named(barredBy, first);
}

function refusedBy(
  card: PosedCard,
  rangeDeg: number | null,
  loadKg: number,
  { model }: Person,
  bounds: Bounds,
): Cap | null {
  const answer = model.rangeAt(card, loadKg, bounds.caps);
  if (!answer.admitted) return named(answer.barredBy, bounds);
  if (answer.decidedBy === 'full') return null;
  return rangeDeg === null || rangeDeg > answer.hipFlexionDeg + 1e-6 ? named(answer.decidedBy, bounds) : null;
}

// A pose that cannot be held any more counts as bent too far.
function named(limit: Limit | 'pose', { byProvokedAngle }: Bounds): Cap {
  if (limit === 'pose') return 'hipFlexion';
  return limit === 'hipFlexion' && byProvokedAngle ? 'provokedAngle' : limit;
}
