/** What a person has shown with a card, in a test or in the stage before: how far, how heavy, how much. */
import type { Tempo } from '../../dosing/dose.ts';
import type { TimedDose } from '../../dosing/work.ts';
import { isPosed, type PosedCard } from '../person/model.ts';
import { cardOf, painfulSide, type Bounds, type Person } from '../person/person.ts';
import { isGraded } from '../person/rangeSettings.ts';
import { testsOfSide } from '../screen/testsOfSide.ts';
import { provokedDeg } from '../../content/guardedAngle.ts';
import { endsDeg } from '../../mechanics/jointAngle.ts';

/** One set or hold that was tolerated. */
export interface Shown {
  readonly card: PosedCard;
  /** `testedSet` and `lastDone` name a load that may be gone on with; `test` is a look at the movement. */
  readonly by: 'lastDone' | 'testedSet' | 'test';
  /** Hip bend reached, degrees; null: the whole movement. */
  readonly rangeDeg: number | null;
  readonly loadKg: number;
  readonly tempo: Tempo;
  /** Repetitions that could have been done in a set, or seconds held (`held`); null: it says nothing of how much. */
  readonly amount: number | null;
  readonly held: boolean;
  /** Sets done; null for a test, which shows one set of as many as the dose has. */
  readonly sets: number | null;
}

/** Everything that was shown with one card: none where it has no pose, or hurt more than a test may. */
export function shownWith(id: string, person: Person, bounds: Bounds): readonly Shown[] {
  const card = cardOf(person, id);
  if (!isPosed(card)) return [];
  const all = [...doneLast(card, person, bounds), ...testedSets(card, person), ...tests(card, person)];
  // How far a test went holds though no step of its height stands at home.
  if (!isGraded(card, person)) return all.map((one) => ({ ...one, rangeDeg: null }));
  const leastDeg = Math.min(...(endsDeg(card.movement, person.model.guardedBy) ?? []));
  return all.filter(({ rangeDeg }) => rangeDeg === null || rangeDeg >= leastDeg);
}

/** Whether a load or a hold of this card is known that may be gone on with. */
export function isKnown(id: string, person: Person, bounds: Bounds): boolean {
  return (
    isHoldTested(id, person) ||
    shownWith(id, person, bounds).some(
      ({ by, loadKg }) => by === 'lastDone' || (by === 'testedSet' && loadKg > 0),
    )
  );
}

/** Whether it was held for so many seconds, on the leg that is treated. */
export function isHoldTested(id: string, person: Person): boolean {
  return testsOfSide(cardOf(person, id), person.consult).some(({ seconds }) => seconds !== undefined);
}

// Within a stage the ladder itself goes on from where it stood; what was done counts where a stage is entered, and
// wherever the log shows that it was done.
function doneLast(card: PosedCard, { lastDone, logged }: Person, { name }: Bounds): Shown[] {
  const isLogged = logged?.exercises.some((one) => one.card === card.id) ?? false;
  return lastDone
    .filter((one) => one.card === card.id && (one.stage !== name || isLogged))
    .map(({ rangeDeg, loadKg, tempo, repetitions, holdSeconds, sets, timesPerDay }) => ({
      card,
      by: 'lastDone',
      rangeDeg,
      loadKg: loadKg ?? 0,
      tempo: tempo ?? card.tempo,
      amount: repetitions ?? holdSeconds,
      held: holdSeconds !== null,
      sets: sets * timesPerDay,
    }));
}

function testedSets(card: PosedCard, { consult, protocol }: Person): Shown[] {
  const side = painfulSide(consult);
  return consult.testedSets
    .filter((set) => set.card === card.id && (card.legs === 'together' || set.side === side))
    .filter(({ pain }) => pain <= protocol.limits.testPainAtMost.value)
    .map(({ rangeDeg, loadKg, repetitions, reserve, tempo }) => ({
      card,
      by: 'testedSet',
      rangeDeg: rangeDeg ?? null,
      loadKg,
      tempo:
        tempo === undefined
          ? card.tempo
          : { goSeconds: tempo.go, holdSeconds: tempo.hold, backSeconds: tempo.back },
      // Of a hold the seconds stand with the tests.
      amount: card.kind === 'isometric' ? null : repetitions + reserve,
      held: false,
      sets: null,
    }));
}

// A test that hurt from a certain bend on was tolerated below it, by the margin; one that hurt all along was not.
function tests(card: PosedCard, { consult, protocol }: Person): Shown[] {
  const { testPainAtMost, provokedLessDeg } = protocol.limits;
  return testsOfSide(card, consult).flatMap((one): Shown[] => {
    const { test, pain, seconds } = one;
    const painFromDeg = provokedDeg(one);
    const reachesDeg = protocol.tests.find(({ id }) => id === test)?.reachesDeg ?? null;
    if (painFromDeg === undefined && pain > testPainAtMost.value) return [];
    const belowPainDeg = painFromDeg === undefined ? null : Math.max(0, painFromDeg - provokedLessDeg.value);
    return [
      {
        card,
        by: 'test',
        rangeDeg: lesser(reachesDeg, belowPainDeg),
        loadKg: 0,
        tempo: card.tempo,
        amount: seconds ?? null,
        held: true,
        sets: null,
      },
    ];
  });
}

function lesser(a: number | null, b: number | null): number | null {
  if (a === null || b === null) return a ?? b;
  return Math.min(a, b);
}

/** What is held against 1.3: peaks, and squeeze and pull over one session. Infinite where nothing is known of it. */
export interface SessionBurden {
  readonly compressionBw: number;
  /** Peak pull: not held against 1.3 itself. */
  readonly tensionBw: number;
  readonly hipMomentNm: number;
  readonly compressionTimeBwS: number;
  readonly tensionTimeBwS: number;
}

/** A dose of a card at a range and load; null where this body cannot take it. Without the margin, as estimates are. */
export function burdenOf(
  card: PosedCard,
  at: { readonly rangeDeg: number | null; readonly loadKg: number; readonly dose: TimedDose },
  { model }: Person,
): SessionBurden | null {
  const { sets, repetitions, holdSeconds, timesPerDay, tempo } = at.dose;
  const units = repetitions ?? (holdSeconds ?? 0) / secondsOf(tempo);
  return burden(card, at.rangeDeg, at.loadKg, tempo, sets * timesPerDay * units, model);
}

/** What was shown, for a session of so many sets where it was one set. */
export function shownBurden(
  { card, rangeDeg, loadKg, tempo, amount, held, sets }: Shown,
  dose: TimedDose,
  { model }: Person,
): SessionBurden | null {
  const units = amount === null ? null : held ? amount / secondsOf(tempo) : amount;
  const times = units === null ? null : units * (sets ?? dose.sets * dose.timesPerDay);
  return burden(card, rangeDeg, loadKg, tempo, times, model);
}

function burden(
  card: PosedCard,
  rangeDeg: number | null,
  loadKg: number,
  tempo: Tempo,
  times: number | null,
  model: Person['model'],
): SessionBurden | null {
  const swept = model.sweepTo(card, rangeDeg, loadKg, tempo);
  if (swept === null) return null;
  return {
    compressionBw: swept.peak.compressionBw,
    tensionBw: swept.peak.tensionBw,
    hipMomentNm: Math.abs(swept.peak.hipMomentNm),
    compressionTimeBwS: times === null ? Infinity : times * swept.compressionTimeBwS,
    tensionTimeBwS: times === null ? Infinity : times * swept.tensionTimeBwS,
  };
}

// Of a hold the way in and out is measured: a second of it is as much as a second of that way.
function secondsOf({ goSeconds, holdSeconds, backSeconds }: Tempo): number {
  return Math.max(1, goSeconds + holdSeconds + backSeconds);
}
