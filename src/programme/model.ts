/** The body model asked for one body, each question once. */
import type { ExerciseCard } from '../content/library.ts';
import type { Tempo } from '../dose/dose.ts';
import type { Body } from '../mechanics/body.ts';
import type { Caps } from '../mechanics/cap.ts';
import type { Movement } from '../mechanics/movement.ts';
import {
  fitRangeAndLoad,
  type Fit,
  type FitRequest,
  type NoFit,
  type RefusedLoad,
} from '../mechanics/fit.ts';
import { liftBarredBy } from '../mechanics/lift.ts';
import { largestRange, type AdmittedRange, type Barred } from '../mechanics/range.ts';
import { stretchFrom, sweep, verticalOnlySqueezeBw, type Sweep } from '../mechanics/sweep.ts';
import { gentleEndOf, type MovementEnd, type Stretch } from '../mechanics/gentle.ts';
import { fractionAtHip } from '../mechanics/trajectory.ts';

/** A card that has a pose. */
export type PosedCard = ExerciseCard & { readonly movement: Movement };

export interface Model {
  readonly body: Body;
  /** The largest part of the movement admitted at any load up to this one. */
  rangeAt(card: PosedCard, loadKg: number, caps: Caps): AdmittedRange | Barred;
  /** Load and range together: the heaviest of the loads that leaves a useful range. */
  fit(card: PosedCard, request: Omit<FitRequest, 'movement' | 'body'>): Fit | NoFit;
  /** The heaviest of these loads at which the caps admit the whole movement (of steps: the tallest in the house), and what bars the next; no load for none. */
  heaviestInFull(
    card: PosedCard,
    loadsKg: readonly number[],
    caps: Caps,
    stepHeightsM: readonly number[],
  ): { readonly loadKg: number; readonly barredBy: RefusedLoad['barredBy'] | null };
  /** What bars lifting the weight from where it stands; null when nothing does, or it is handed over. */
  liftBarredBy(card: PosedCard, loadKg: number, caps: Caps): Barred['barredBy'] | null;
  gentleEnd(card: PosedCard): MovementEnd;
  /** Peaks and time integrals from the gentle end to `rangeDeg` of hip flexion (null: the whole movement); null when it cannot rest. */
  sweepTo(card: PosedCard, rangeDeg: number | null, loadKg: number, tempo: Tempo): Sweep | null;
  /** Of the same part the squeeze with the heels dragged in, body weights; null when it cannot rest. */
  verticalOnlyTo(card: PosedCard, rangeDeg: number | null, loadKg: number): number | null;
}

/** Models by library and body. */
export type Models = Map<string, Model>;

// A clinic's day has few bodies; more than this and the oldest answers are let go.
const MOST_BODIES = 64;

/** The model of a body under a library, made once. */
export function modelIn(models: Models, library: string, body: Body): Model {
  const key = `${library} ${body.heightM} ${body.massKg}`;
  const there = models.get(key) ?? modelOf(body);
  models.delete(key);
  models.set(key, there);
  for (const oldest of models.keys()) if (models.size > MOST_BODIES) models.delete(oldest);
  return there;
}

/** The model of one body, with the answers it has given before. */
export function modelOf(body: Body): Model {
  const ranges = new Map<string, AdmittedRange | Barred>();
  const fits = new Map<string, Fit | NoFit>();
  const lifts = new Map<string, Barred['barredBy'] | 'nothing'>();
  const sweeps = new Map<string, Sweep | null>();
  const verticals = new Map<string, number | null>();
  const ends = new Map<string, MovementEnd>();
  const gentleEnd: Model['gentleEnd'] = (card) =>
    known(ends, card.id, () => gentleEndOf(card.movement, body, 0));
  const stretchTo = (card: PosedCard, rangeDeg: number | null): Stretch =>
    stretchFrom(gentleEnd(card), distanceTo(card, rangeDeg, gentleEnd(card)));
  const fit: Model['fit'] = (card, request) =>
    known(fits, `${card.id} ${JSON.stringify(request)}`, () =>
      fitRangeAndLoad({ movement: card.movement, body, ...request }),
    );
  return {
    body,
    gentleEnd,
    fit,
    heaviestInFull: (card, loadsKg, caps, stepHeightsM) => {
      const bar = (loadKg: number) => {
        const whole = { caps, leastFraction: 1, stepHeightsM, pickUpHeightM: null };
        const answer = fit(card, { loadsKgDescending: [loadKg], ...whole });
        return answer.admitted ? null : (answer.refused[0]?.barredBy ?? 'pose');
      };
      const count = countUntil(loadsKg, (loadKg) => bar(loadKg) !== null);
      const next = loadsKg[count];
      return { loadKg: loadsKg[count - 1] ?? 0, barredBy: next === undefined ? null : bar(next) };
    },
    liftBarredBy: ({ pickUpHeightM }, loadKg, caps) => {
      if (pickUpHeightM === null || loadKg === 0 || isUncapped(caps)) return null;
      const barredBy = known(
        lifts,
        [pickUpHeightM, loadKg, ...Object.values(caps)].join(' '),
        () => liftBarredBy(pickUpHeightM, body, loadKg, caps) ?? 'nothing',
      );
      return barredBy === 'nothing' ? null : barredBy;
    },
    rangeAt: (card, loadKg, caps) =>
      known(ranges, [card.id, loadKg, ...Object.values(caps)].join(' '), () =>
        largestRange(card.movement, body, loadKg, caps),
      ),
    sweepTo: (card, rangeDeg, loadKg, tempo) =>
      known(sweeps, [card.id, rangeDeg, loadKg, ...Object.values(tempo)].join(' '), () =>
        sweep(card.movement, body, loadKg, stretchTo(card, rangeDeg), tempo),
      ),
    verticalOnlyTo: (card, rangeDeg, loadKg) =>
      known(verticals, [card.id, rangeDeg, loadKg].join(' '), () =>
        verticalOnlySqueezeBw(card.movement, body, loadKg, stretchTo(card, rangeDeg)),
      ),
  };
}

// Where nothing is capped, nobody is kept from picking up what can be carried at all.
function isUncapped({ hipFlexionDeg, compressionBw, tensionBw, demand }: Caps): boolean {
  return [hipFlexionDeg, compressionBw, tensionBw, demand].every((cap) => cap === null);
}

/** How many of ascending values come before the first that is barred, when every one after it is barred too. */
export function countUntil(ascending: readonly number[], isBarred: (value: number) => boolean): number {
  let [free, barred] = [0, ascending.length];
  while (free < barred) {
    const middle = (free + barred) >> 1;
    if (isBarred(ascending[middle] as number)) barred = middle;
    else free = middle + 1;
  }
  return free;
}

/** Whether a card has a pose, so that the model can be asked about it. */
export function isPosed(card: ExerciseCard): card is PosedCard {
  return card.movement !== null;
}

/** How far from the gentle end, 0 to 1, the hip is bent by so much; the whole way for null. */
export function distanceTo({ movement }: PosedCard, rangeDeg: number | null, gentleEnd: MovementEnd): number {
  if (rangeDeg === null) return 1;
  const fraction = fractionAtHip(movement, rangeDeg);
  if (fraction === null) return 1;
  return gentleEnd === 'start' ? fraction : 1 - fraction;
}

function known<T>(answers: Map<string, T>, question: string, ask: () => T): T {
  const before = answers.get(question);
  if (before !== undefined) return before;
  const answer = ask();
  answers.set(question, answer);
  return answer;
}
