/** The body model asked for one body, each question once. */
import type { ExerciseCard } from '../../content/library.ts';
import type { Tempo } from '../../dosing/dose.ts';
import type { Body } from '../../mechanics/body.ts';
import type { Caps } from '../../mechanics/cap.ts';
import type { Movement } from '../../mechanics/movement.ts';
import {
  fitRangeAndLoad,
  fitsInFull,
  type RangeAndLoad,
  type RangeAndLoadRequest,
  type NoRangeAndLoad,
  type RefusedLoad,
} from '../../mechanics/rangeAndLoad.ts';
import { liftBarredBy } from '../../mechanics/lift.ts';
import { largestRange, type AdmittedRange, type Barred } from '../../mechanics/range.ts';
import { intervalFrom, sweepsOf, verticalOnlySqueezeBw, type Sweep } from '../../mechanics/sweep.ts';
import { gentleEndOf, type MovementEnd, type Interval } from '../../mechanics/gentle.ts';
import { fractionAtAngle, type JointAngle } from '../../mechanics/jointAngle.ts';

/** A card that has a pose. */
export type PosedCard = ExerciseCard & { readonly movement: Movement };

export interface Model {
  readonly body: Body;
  /** The joint angle that guards the tendon: the protocol's, by which ranges are graded. */
  readonly guardedBy: JointAngle;
  /** The same body by least effort alone, without a least share of the hamstrings; itself where there is none. */
  leastEffort(): Model;
  /** The largest part of the movement admitted at any load up to this one. */
  rangeAt(card: PosedCard, loadKg: number, caps: Caps): AdmittedRange | Barred;
  /** Load and range together: the heaviest of the loads that leaves a useful range. */
  fit(
    card: PosedCard,
    request: Omit<RangeAndLoadRequest, 'movement' | 'body'>,
  ): RangeAndLoad | NoRangeAndLoad;
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
  /** Peaks and time integrals from the gentle end to `rangeDeg` of the guarded angle (null: the whole movement); null when it cannot rest. */
  sweepTo(card: PosedCard, rangeDeg: number | null, loadKg: number, tempo: Tempo): Sweep | null;
  /** The same for several loads at once, in their order. */
  sweepsTo(
    card: PosedCard,
    rangeDeg: number | null,
    loadsKg: readonly number[],
    tempo: Tempo,
  ): readonly (Sweep | null)[];
  /** Of the same part the squeeze with the heels dragged in, body weights; null when it cannot rest. */
  verticalOnlyTo(card: PosedCard, rangeDeg: number | null, loadKg: number): number | null;
}

/** Models by library and body. */
export type Models = Map<string, Model>;

// A clinic's day has few bodies; more than this and the oldest answers are let go.
const MOST_BODIES = 16;

/** The model of a body under a library, made once. */
export function modelIn(
  models: Models,
  library: string,
  body: Body,
  guardedBy: JointAngle = 'hipFlexion',
): Model {
  const key = `${library} ${guardedBy} ${JSON.stringify(body)}`;
  const there = models.get(key) ?? modelOf(body, guardedBy);
  models.delete(key);
  models.set(key, there);
  for (const oldest of models.keys()) if (models.size > MOST_BODIES) models.delete(oldest);
  return there;
}

/** The model of one body, with the answers it has given before. */
export function modelOf(body: Body, guardedBy: JointAngle = 'hipFlexion'): Model {
  const ranges = new Map<string, AdmittedRange | Barred>();
  const fits = new Map<string, RangeAndLoad | NoRangeAndLoad>();
  const inFull = new Map<string, boolean>();
  const lifts = new Map<string, Barred['barredBy'] | 'nothing'>();
  const sweeps = new Map<string, Sweep | null>();
  const verticals = new Map<string, number | null>();
  const ends = new Map<string, MovementEnd>();
  const gentleEnd: Model['gentleEnd'] = (card) =>
    known(ends, card.id, () => gentleEndOf(card.movement, body, 0, guardedBy));
  const intervalTo = (card: PosedCard, rangeDeg: number | null): Interval =>
    intervalFrom(gentleEnd(card), distanceTo(card, rangeDeg, { guardedBy, gentleEnd }));
  const fit: Model['fit'] = (card, request) =>
    known(fits, `${card.id} ${JSON.stringify(request)}`, () =>
      fitRangeAndLoad({ movement: card.movement, body, ...request }),
    );
  const sweepsTo: Model['sweepsTo'] = (card, rangeDeg, loadsKg, tempo) => {
    const at = once(() => sweepsOf(card.movement, body, intervalTo(card, rangeDeg), tempo, guardedBy));
    return loadsKg.map((loadKg) =>
      known(sweeps, [card.id, rangeDeg, loadKg, ...Object.values(tempo)].join(' '), () => at()(loadKg)),
    );
  };
  const alone = once(() => modelOf(withoutShare(body), guardedBy));
  const model: Model = {
    body,
    guardedBy,
    leastEffort: () => (body.muscles?.leastHamstringShare ? alone() : model),
    gentleEnd,
    fit,
    heaviestInFull: (card, loadsKg, caps, stepHeightsM) => {
      const home = { caps, stepHeightsM };
      const fits = (loadKg: number) =>
        known(inFull, `${card.id} ${loadKg} ${JSON.stringify(home)}`, () =>
          fitsInFull({ movement: card.movement, body, ...home }, loadKg),
        );
      const count = countUntil(loadsKg, (loadKg) => !fits(loadKg));
      const [loadKg = 0, next] = [loadsKg[count - 1], loadsKg[count]];
      if (next === undefined) return { loadKg, barredBy: null };
      const whole = { ...home, leastFraction: 1, pickUpHeightM: null };
      const { refused } = fit(card, { loadsKgDescending: [next], ...whole });
      return { loadKg, barredBy: refused[0]?.barredBy ?? 'pose' };
    },
    liftBarredBy: ({ pickUpHeightM }, loadKg, caps) => {
      if (pickUpHeightM === null || isFree(loadKg, caps)) return null;
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
    sweepTo: (card, rangeDeg, loadKg, tempo) => sweepsTo(card, rangeDeg, [loadKg], tempo)[0] ?? null,
    sweepsTo,
    verticalOnlyTo: (card, rangeDeg, loadKg) =>
      known(verticals, [card.id, rangeDeg, loadKg].join(' '), () =>
        verticalOnlySqueezeBw(card.movement, body, loadKg, intervalTo(card, rangeDeg)),
      ),
  };
  return model;
}

function withoutShare({ muscles, ...size }: Body): Body {
  return muscles === undefined ? size : { ...size, muscles: { ...muscles, leastHamstringShare: 0 } };
}

// Where nothing is capped, nobody is kept from picking up what can be carried at all.
function isFree(loadKg: number, { angleDeg, compressionBw, tensionBw, demand }: Caps): boolean {
  return loadKg === 0 || [angleDeg, compressionBw, tensionBw, demand].every((cap) => cap === null);
}

/** How many of ascending values come before the first that is barred, when every one after it is barred too. */
export function countUntil(ascending: readonly number[], isBarred: (value: number) => boolean): number {
  let [free, barred] = [0, ascending.length];
  // Mostly none is barred, and one question settles it.
  if (barred > 0 && !isBarred(ascending[barred - 1] as number)) return barred;
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

/** How far from the gentle end, 0 to 1, the guarded joint has so many degrees; the whole way for null. */
export function distanceTo(
  card: PosedCard,
  rangeDeg: number | null,
  { guardedBy, gentleEnd }: Pick<Model, 'guardedBy' | 'gentleEnd'>,
): number {
  if (rangeDeg === null) return 1;
  const fraction = fractionAtAngle(card.movement, guardedBy, rangeDeg);
  if (fraction === null) return 1;
  return gentleEnd(card) === 'start' ? fraction : 1 - fraction;
}

/** An answer that is worked out when it is first wanted. */
function once<T>(ask: () => T): () => T {
  let answer: { readonly is: T } | null = null;
  return () => (answer ??= { is: ask() }).is;
}

function known<T>(answers: Map<string, T>, question: string, ask: () => T): T {
  const before = answers.get(question);
  if (before !== undefined) return before;
  const answer = ask();
  answers.set(question, answer);
  return answer;
}
