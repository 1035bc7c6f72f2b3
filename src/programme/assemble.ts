/** From one consult and the library to one finished programme, or to the refusals that stand against it. */
import type { Consult } from '../content/library.ts';
import type { Refusal } from '../units/refusal.ts';
import { decide, type Decided, type Workshop } from '../decisions/decide.ts';
import { languageOf } from '../content/language.ts';
import { messagesIn, type Messages } from '../messages/messages.ts';
import type { Refused } from '../decisions/terms/refusal.ts';
import { leafletOf } from './leaflet.ts';
import type { Log } from '../content/log/log.ts';
import { afterReview, reviewLogged } from './reviewed.ts';
import { earlierOf } from './earlier.ts';
import { worded } from './worded.ts';
import type { Earlier } from '../decisions/terms/earlier.ts';
import type { Review } from '../review/terms.ts';
import type { Programme } from './programme.ts';

export type { Workshop } from '../decisions/decide.ts';

export type Assembled = { readonly programme: Programme } | { readonly refusals: readonly Refusal[] };

/** What was written down of the revision before, and its consult. */
export interface LoggedBefore {
  readonly consult: Consult;
  readonly log: Log;
}

/** The revision before, null for the first, and its log, null where none was kept. */
export interface Before {
  readonly previous: Programme | null;
  readonly logged: LoggedBefore | null;
}

/**
 * First everything is decided, then everything is worded. `previous`: the revision before, for its step and what has
 * changed; null for the first. `logged`: its log, null where none was kept.
 * `say`: in which words, those of the consult's language.
 */
export function assembleProgramme(
  consult: Consult,
  previous: Programme | null,
  workshop: Workshop,
  logged: LoggedBefore | null = null,
  say: Messages = messagesIn(languageOf(consult, workshop.library.clinic)),
): Assembled {
  const { earlier, review } = startOf(consult, { previous, logged }, workshop);
  return assembleFrom(consult, decide(consult, earlier, workshop), { previous, review }, workshop, say);
}

/** What a programme starts from: the revision before as its review leaves it. */
export function startOf(
  { seenOn, protocol }: Pick<Consult, 'seenOn' | 'protocol'>,
  { previous, logged }: Before,
  { library }: Workshop,
): { readonly earlier: Earlier | null; readonly review: Review | null } {
  const before = earlierOf(previous);
  if (before === null || previous === null || logged === null) return { earlier: before, review: null };
  const review = reviewLogged({ ...logged, programme: previous }, seenOn, library);
  const checkDays = library.protocols.get(protocol)?.goingOn.checkDays.value ?? 0;
  return { earlier: afterReview(before, review, { checkDays, before: logged.consult, seenOn }), review };
}

/** What was decided, put into words: for those who look at the decisions themselves, too. */
export function assembleFrom(
  consult: Consult,
  decided: Decided | Refused,
  { previous, review }: { readonly previous: Programme | null; readonly review: Review | null },
  { library, loadleaf }: Workshop,
  say: Messages = messagesIn(languageOf(consult, library.clinic)),
): Assembled {
  if ('refusals' in decided)
    return { refusals: decided.refusals.map((one) => worded(one, library, consult.protocol, say)) };
  return { programme: frozen(leafletOf(say, decided, previous, review, loadleaf)) };
}

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}
