/** Why a card cannot be used by this person in this stage, before any range or load is asked for. */
import type { ExerciseCard, Slot } from '../../content/library.ts';
import { HOUSEHOLD, type Equipment } from '../../content/schema/words.ts';
import type { ConsultKit } from '../../content/schema/consult.ts';
import type { Obstacle } from '../terms/obstacle.ts';
import { triedAtMost } from '../screen/painLimits.ts';
import type { Bounds, Person } from '../person/person.ts';

/** The first obstacle in the order position, screen, pain when tried, cannot-do, kit, stated angle; null when there is none. */
export function obstacleTo(
  card: ExerciseCard,
  slot: Slot,
  person: Person,
  { stage, caps, byProvokedAngle }: Bounds,
): Obstacle | null {
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
  const hurt = painObstacle(card, person);
  if (hurt !== null) return hurt;
  const need = card.needs.find((one) => person.cannotDo.includes(one));
  if (need !== undefined) return { limit: 'cannotDo', value: need, why: { reason: 'cannot-do', need } };
  const thing = card.equipment.find((one) => !hasThing(one, person.consult.kit));
  if (thing !== undefined) return { limit: 'kit', value: thing, why: { reason: 'no-thing', thing } };
  const statedDeg = card.statedHipFlexion?.deg ?? null;
  if (statedDeg !== null && caps.hipFlexionDeg !== null && statedDeg > caps.hipFlexionDeg) {
    return {
      limit: byProvokedAngle ? 'provokedAngle' : 'hipFlexion',
      value: statedDeg,
      why: { reason: 'stated-bend', statedDeg, capDeg: caps.hipFlexionDeg },
    };
  }
  return null;
}

// What stops running for the bone's sake stops hops and skips as well.
const SPRINGY: readonly ExerciseCard['kind'][] = ['energy-storage', 'running-drill'];

/** That this card hurt more than the pain rule allows when it was tried; null when it did not. */
export function painObstacle(card: ExerciseCard, person: Person): Obstacle | null {
  const hurt = testPain(card, person);
  if (hurt === null || hurt <= triedAtMost(person.consult, person.protocol)) return null;
  return { limit: 'pain', value: hurt, why: { reason: 'hurt', pain: hurt } };
}

/** Pain in the test of this very card, 0 to 10; null when it was not tried, or hurt only from a hip bend that is kept off. */
function testPain({ id }: ExerciseCard, { consult }: Person): number | null {
  const pains = consult.tests.flatMap(({ test, pain, painFreeHipFlexionDeg }) =>
    test === id && painFreeHipFlexionDeg === undefined ? [pain] : [],
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
