/** From one consult and the library to one finished programme, or to the refusals that stand against it. */
import type { Consult } from '../content/library.ts';
import type { Refusal } from '../units/refusal.ts';
import { decide, type Decided, type Workshop } from '../decisions/decide.ts';
import type { Refused } from '../decisions/terms/refusal.ts';
import { leafletOf } from './leaflet.ts';
import { earlierOf } from './earlier.ts';
import { worded } from './worded.ts';
import type { Programme } from './programme.ts';

export type { Workshop } from '../decisions/decide.ts';

export type Assembled = { readonly programme: Programme } | { readonly refusals: readonly Refusal[] };

/** First everything is decided, then everything is worded. `previous`: the revision before, for its step and what has changed; null for the first. */
export function assembleProgramme(
  consult: Consult,
  previous: Programme | null,
  workshop: Workshop,
): Assembled {
  return assembleFrom(consult, decide(consult, earlierOf(previous), workshop), previous, workshop);
}

/** What was decided, put into words: for those who look at the decisions themselves, too. */
export function assembleFrom(
  { protocol }: Consult,
  decided: Decided | Refused,
  previous: Programme | null,
  { library, loadleaf }: Workshop,
): Assembled {
  if ('refusals' in decided)
    return { refusals: decided.refusals.map((one) => worded(one, library, protocol)) };
  return { programme: frozen(leafletOf(decided, previous, loadleaf)) };
}

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}
