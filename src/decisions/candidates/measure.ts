/** The model's answer to the ladder: what a card asks for at a range, load and tempo, and which cap forbids it. */
import type { Measure, Measured } from '../../dosing/growth.ts';
import type { Cap } from '../../dosing/rung.ts';
import { marginOf, type Limit } from '../../mechanics/cap.ts';
import type { Sweep } from '../../mechanics/sweep.ts';
import { isPosed, type PosedCard } from '../person/model.ts';
import { boundsFor } from '../person/ownStage.ts';
import { cardOf, type Bounds, type Person } from '../person/person.ts';
import { isJointAngle } from '../../mechanics/jointAngle.ts';

/**
 * `opened`: the bounds at the far end of the stage's ladder; `first`: those of its first step. Under 18 nothing is
 * measured, so that growth goes by work and kilograms.
 */
export function measureFor(person: Person, opened: Bounds, first: Bounds): Measure {
  return (id, at) => {
    const card = cardOf(person, id);
    if (!isPosed(card) || person.effects.under18) return null;
    const [far, near] = [opened, first].map((bounds) => boundsFor(id, person, bounds)) as [Bounds, Bounds];
    const alone = measured(card, at, person, far);
    return alone.refusedBy === null
      ? { ...alone, refusedBy: liftRefusedBy(card, at, person, far, near) }
      : alone;
  };
}

// Along the load squeeze is smooth with one hump at most: four looks below the load find it.
const LIGHTER_SHARES = [0, 0.25, 0.5, 0.75];

function measured(
  card: PosedCard,
  { rangeDeg, loadKg, tempo, kind }: Parameters<Measure>[1],
  person: Person,
  bounds: Bounds,
): Measured {
  const margin = marginOf(card.movement, bounds.caps);
  // Squeeze need not rise with load: whoever takes less must be inside as well, looked at as the caps look at it.
  const loadsKg = [loadKg, ...(loadKg === 0 ? [] : LIGHTER_SHARES.map((share) => share * loadKg))];
  const [swept, ...lighter] = person.model.sweepsTo(card, rangeDeg, loadsKg, tempo);
  if (swept === null || swept === undefined)
    return {
      compressionBw: 0,
      tensionBw: 0,
      hipMomentNm: 0,
      compressionTimeBwS: 0,
      tensionTimeBwS: 0,
      refusedBy: bounds.caps.angle,
    };
  const all = [swept, ...lighter.filter((one) => one !== null)];
  const repetitionSeconds = tempo.goSeconds + tempo.holdSeconds + tempo.backSeconds;
  const per = kind === 'hold' ? Math.max(1, repetitionSeconds) : 1;
  return {
    compressionBw: margin * Math.max(...all.map(({ peak }) => peak.compressionBw)),
    tensionBw: margin * swept.peak.tensionBw,
    hipMomentNm: Math.abs(swept.peak.hipMomentNm),
    compressionTimeBwS: (margin * swept.compressionTimeBwS) / per,
    tensionTimeBwS: (margin * swept.tensionTimeBwS) / per,
    refusedBy: all.every((one) => isFarInside(one, margin, bounds))
      ? null
      : refusedBy(card, rangeDeg, loadKg, person, bounds),
  };
}

// The exact answer takes a search; it is asked only near a cap. Between the looks no hump rises by a tenth.
const FAR_INSIDE = 0.9;

function isFarInside({ peak, otherPeak }: Sweep, margin: number, { caps }: Bounds): boolean {
  const inside = (value: number, cap: number | null, share: number) => cap === null || value <= share * cap;
  return [peak, otherPeak].every(
    (one) =>
      one === null ||
      (inside(one[`${caps.angle}Deg`], caps.angleDeg, 1) &&
        inside(margin * one.compressionBw, caps.compressionBw, FAR_INSIDE) &&
        inside(margin * one.tensionBw, caps.tensionBw, FAR_INSIDE) &&
        inside(one.demand, caps.demand, FAR_INSIDE)),
  );
}

// The weight is lifted no deeper than the stage begins with, or than the exercise itself goes by then.
function liftRefusedBy(
  card: PosedCard,
  { rangeDeg, loadKg }: Pick<Parameters<Measure>[1], 'rangeDeg' | 'loadKg'>,
  { model }: Person,
  opened: Bounds,
  first: Bounds,
): Cap | null {
  const firstDeg = first.caps.angleDeg;
  const barred = (angleDeg: number | null) => model.liftBarredBy(card, loadKg, { ...opened.caps, angleDeg });
  const atFirst = barred(firstDeg);
  const barredBy =
    atFirst === null || firstDeg === null || rangeDeg === null || rangeDeg <= firstDeg
      ? atFirst
      : barred(rangeDeg);
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
  return rangeDeg === null || rangeDeg > answer.angleDeg + 1e-6 ? named(answer.decidedBy, bounds) : null;
}

// A pose that cannot be held any more counts as bent too far.
function named(limit: Limit | 'pose', { caps, byProvokedAngle }: Bounds): Cap {
  if (limit === 'pose') return caps.angle;
  return isJointAngle(limit) && byProvokedAngle ? 'provokedAngle' : limit;
}
