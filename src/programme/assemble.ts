/** From one consult and the library to one finished programme, or to the refusals that stand against it. */
import type { Consult } from '../content/library.ts';
import type { Refusal } from '../units/refusal.ts';
import { decide, type Workshop } from '../decisions/decide.ts';
import { languageOf } from '../content/language.ts';
import { messagesIn, type Messages } from '../messages/messages.ts';
import { leafletOf } from './leaflet.ts';
import { earlierOf } from './earlier.ts';
import { worded } from './worded.ts';
import type { Programme } from './programme.ts';

export type { Workshop } from '../decisions/decide.ts';

export type Assembled = { readonly programme: Programme } | { readonly refusals: readonly Refusal[] };

/** First everything is decided, then everything is worded. `previous`: the revision before, for its step and what has changed; null for the first. `say`: in which words, those of the consult's language. */
export function assembleProgramme(
  consult: Consult,
  previous: Programme | null,
  workshop: Workshop,
  say: Messages = messagesIn(languageOf(consult, workshop.library.clinic)),
): Assembled {
  const decided = decide(consult, earlierOf(previous), workshop);
  if ('refusals' in decided)
    return { refusals: decided.refusals.map((one) => worded(one, workshop.library, consult.protocol, say)) };
  return { programme: frozen(leafletOf(say, decided, previous, workshop.loadleaf)) };
}

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}
