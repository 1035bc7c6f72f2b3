/** Why a card cannot be used by this person in this stage, before any range or load is asked for. */
import { provokedDeg } from '../../content/guardedAngle.ts';
import type { ExerciseCard, Slot } from '../../content/library.ts';
import { HOUSEHOLD, type Equipment } from '../../content/schema/words.ts';
import type { ConsultKit } from '../../content/schema/consult.ts';
import type { CardLimit } from '../terms/cardLimit.ts';
import { triedAtMost } from '../screen/painLimits.ts';
import type { Bounds, Person } from '../person/person.ts';

/** The first limit in the order left out by the clinician, position, screen, pain when tried, cannot-do, kit, stated angle; null when there is none. */
export function limitOn(
  card: ExerciseCard,
  slot: Slot,
  person: Person,
  { stage, caps, byProvokedAngle }: Bounds,
): CardLimit | null {
  const leftOut = person.consult.leftOut.find((one) => one.card === card.id);
  if (leftOut !== undefined)
    return { limit: 'clinician', value: null, why: { reason: 'left-out', because: leftOut.reason } };
  const position = card.positions.find((one) => !stage.positions.includes(one));
  if (position !== undefined)
    return {
      limit: 'position',
      value: position,
      why: { reason: 'position', position },
    };
  if (person.effects.lightHolds.length > 0 && slot.dose.kind !== 'hold' && slot.dose.kind !== 'mobility') {
    return { limit: 'screen', value: slot.dose.kind, why: { reason: 'light-holds-only' } };
  }
  if (person.effects.noRunning.length > 0 && SPRINGY.includes(card.kind))
    return { limit: 'screen', value: card.kind, why: { reason: 'no-spring-by-screen' } };
  if (person.maternity?.jumps === false && SPRINGY.includes(card.kind))
    return {
      limit: 'screen',
      value: card.kind,
      why: { reason: 'no-spring-by-maternity' },
    };
  const hurt = painLimit(card, person);
  if (hurt !== null) return hurt;
  const need = card.needs.find((one) => person.cannotDo.includes(one));
  if (need !== undefined) return { limit: 'cannotDo', value: need, why: { reason: 'cannot-do', need } };
  const thing = card.equipment.find((one) => !hasThing(one, person.consult.kit));
  if (thing !== undefined) return { limit: 'kit', value: thing, why: { reason: 'no-thing', thing } };
  // A card without a pose states its hip bend at most: of another joint nobody knows how far it bends there.
  if (card.movement === null && caps.angle !== 'hipFlexion' && caps.angleDeg !== null)
    return {
      limit: caps.angle,
      value: caps.angleDeg,
      why: { reason: 'bend-not-known', angle: caps.angle, capDeg: caps.angleDeg },
    };
  const statedDeg = caps.angle === 'hipFlexion' ? (card.statedHipFlexion?.deg ?? null) : null;
  if (statedDeg !== null && caps.angleDeg !== null && statedDeg > caps.angleDeg) {
    return {
      limit: byProvokedAngle ? 'provokedAngle' : 'hipFlexion',
      value: statedDeg,
      why: { reason: 'stated-bend', statedDeg, capDeg: caps.angleDeg },
    };
  }
  return null;
}

// What stops running for the bone's sake stops hops and skips as well.
const SPRINGY: readonly ExerciseCard['kind'][] = ['energy-storage', 'running-drill'];

/** That this card hurt more than the pain rule allows when it was tried; null when it did not. */
export function painLimit(card: ExerciseCard, person: Person): CardLimit | null {
  const hurt = testPain(card, person);
  if (hurt === null || hurt <= triedAtMost(person.consult, person.protocol)) return null;
  return { limit: 'pain', value: hurt, why: { reason: 'hurt', pain: hurt } };
}

/** Pain in the test of this very card, 0 to 10; null when it was not tried, or hurt only from an angle that is kept off. */
function testPain({ id }: ExerciseCard, { consult }: Person): number | null {
  const pains = consult.tests.flatMap((one) =>
    one.test === id && provokedDeg(one) === undefined ? [one.pain] : [],
  );
  return pains.length === 0 ? null : Math.max(...pains);
}

/** Every home has the household things; the rest must be in the recorded kit. */
function hasThing(thing: Equipment, kit: ConsultKit): boolean {
  if ((HOUSEHOLD as readonly string[]).includes(thing)) return true;
  const weights = [...kit.dumbbellsKg, ...kit.kettlebellsKg, ...kit.bottlesL];
  const there: Partial<Record<Equipment, boolean>> = {
    weight: weights.length > 0 || kit.barKg !== undefined || kit.rucksack,
    dumbbell: kit.dumbbellsKg.length > 0,
    kettlebell: kit.kettlebellsKg.length > 0,
    bar: kit.barKg !== undefined,
    band: kit.bands.length > 0,
    rucksack: kit.rucksack,
    bench: kit.bench,
    ball: kit.ball,
    step: kit.stepCm.length > 0,
  };
  return there[thing] ?? false;
}
