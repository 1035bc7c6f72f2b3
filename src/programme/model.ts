/** The body model asked for one body, each question once. */
import type { ExerciseCard } from '../content/library.ts';
import type { Tempo } from '../dose/dose.ts';
import type { Body } from '../mechanics/body.ts';
import type { Caps } from '../mechanics/cap.ts';
import type { Movement } from '../mechanics/movement.ts';
import { fitRangeAndLoad, type Fit, type FitRequest, type NoFit } from '../mechanics/fit.ts';
import { largestRange, type AdmittedRange, type Barred } from '../mechanics/range.ts';
import { stretchFrom, sweep, type Sweep } from '../mechanics/sweep.ts';
import { gentleEndOf, type MovementEnd } from '../mechanics/gentle.ts';
import { fractionAtHip } from '../mechanics/trajectory.ts';

/** A card that has a pose. */
export type PosedCard = ExerciseCard & { readonly movement: Movement };

export interface Model {
  readonly body: Body;
  /** The largest part of the movement admitted at any load up to this one. */
  rangeAt(card: PosedCard, loadKg: number, caps: Caps): AdmittedRange | Barred;
  /** Load and range together: the heaviest of the loads that leaves a useful range. */
  fit(card: PosedCard, request: Omit<FitRequest, 'movement' | 'body'>): Fit | NoFit;
  gentleEnd(card: PosedCard): MovementEnd;
  /** Peaks and time integrals from the gentle end to `rangeDeg` of hip flexion (null: the whole movement); null when it cannot rest. */
  sweepTo(card: PosedCard, rangeDeg: number | null, loadKg: number, tempo: Tempo): Sweep | null;
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

export function modelOf(body: Body): Model {
  const ranges = new Map<string, AdmittedRange | Barred>();
  const fits = new Map<string, Fit | NoFit>();
  const sweeps = new Map<string, Sweep | null>();
  const ends = new Map<string, MovementEnd>();
  const gentleEnd = (card: PosedCard) => known(ends, card.id, () => gentleEndOf(card.movement, body, 0));
  return {
    body,
    gentleEnd,
    rangeAt: (card, loadKg, caps) =>
      known(ranges, [card.id, loadKg, ...Object.values(caps)].join(' '), () =>
        largestRange(card.movement, body, loadKg, caps),
      ),
    fit: (card, request) =>
      known(fits, `${card.id} ${JSON.stringify(request)}`, () =>
        fitRangeAndLoad({ movement: card.movement, body, ...request }),
      ),
    sweepTo: (card, rangeDeg, loadKg, tempo) =>
      known(sweeps, [card.id, rangeDeg, loadKg, ...Object.values(tempo)].join(' '), () =>
        sweep(
          card.movement,
          body,
          loadKg,
          stretchFrom(gentleEnd(card), distanceTo(card, rangeDeg, gentleEnd(card))),
          tempo,
        ),
      ),
  };
}

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
