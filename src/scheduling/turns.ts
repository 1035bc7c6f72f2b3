/** What grows in which week: at most one thing, and at most one new stress (house rules 11.3). */
import type { NewStress, Stress } from './newStress.ts';

/** In the order in which they take turns: quicker steps come before longer ones, for they spare the tendon [choice]. */
const GROWS = ['exercises', 'stepRate', 'running', 'sitting'] as const;
export type Grows = (typeof GROWS)[number];

/** A week before it is known what grows in it. */
export interface WeekRoom {
  /** The protocol's next rung begins by its week. */
  readonly newRung: boolean;
  /** A race, the days before it or the easy days after it lie in it: nothing that loads the tendon grows. */
  readonly disturbed: boolean;
}

/** Something that may grow besides. `weeksApart`: from one growth to the next, and from the start to the first. */
export interface Waiting {
  readonly what: Grows;
  readonly times: number;
  readonly weeksApart: number;
}

export interface Turn {
  /** From 1. */
  readonly week: number;
  readonly grows: Grows | null;
  /** `race`: something would grow, were it not for a race near by. */
  readonly because: 'first-week' | 'rung' | 'begins' | 'turn' | 'race' | null;
  /** The stress that begins in this week. */
  readonly begins: Stress | null;
}

/**
 * A turn for every week. The first week of a programme and a new rung are growth of the exercises; then every new
 * stress has a week of its own, in the order given; what is left goes to what has grown least so far.
 */
export function takeTurns(
  weeks: readonly WeekRoom[],
  begins: readonly NewStress[],
  waiting: readonly Waiting[],
): Turn[] {
  const left = [...begins];
  const grown = new Map<Grows, number[]>(GROWS.map((what) => [what, []]));
  return weeks.map((room, index) => {
    const ready = (disturbed: boolean) => readyIn(waiting, grown, index, disturbed);
    const stopped = room.disturbed && (left.length > 0 || ready(false).length > 0);
    const turn = turnOf(room, index, left[0] ?? null, ready(room.disturbed), stopped);
    if (turn.begins !== null) left.shift();
    if (turn.grows !== null) grown.get(turn.grows)?.push(index);
    return turn;
  });
}

function turnOf(
  room: WeekRoom,
  index: number,
  next: NewStress | null,
  ready: readonly Grows[],
  stopped: boolean,
): Turn {
  const week = index + 1;
  const stress = room.disturbed ? null : next;
  const kind = stress === null ? null : stress.exercises.length > 0 ? 'exercises' : 'running';
  if (index === 0 || room.newRung) {
    const begins = kind === 'exercises' ? (stress?.stress ?? null) : null;
    return { week, grows: 'exercises', because: index === 0 ? 'first-week' : 'rung', begins };
  }
  if (stress !== null && kind !== null)
    return { week, grows: kind, because: 'begins', begins: stress.stress };
  const [first = null] = ready;
  return { week, grows: first, because: first !== null ? 'turn' : stopped ? 'race' : null, begins: null };
}

/** What may grow in a week, what has grown least first. */
function readyIn(
  waiting: readonly Waiting[],
  grown: ReadonlyMap<Grows, readonly number[]>,
  index: number,
  disturbed: boolean,
): Grows[] {
  // The first week is the start, not a turn: on equal terms the exercises go first, for they are the treatment.
  const turns = (what: Grows) => (grown.get(what) ?? []).filter((at) => at > 0).length;
  return waiting
    .filter(({ what, times, weeksApart }) => {
      const last = grown.get(what)?.at(-1) ?? 0;
      return turns(what) < times && index - last >= weeksApart && (!disturbed || what === 'sitting');
    })
    .map(({ what }) => what)
    .sort((a, b) => turns(a) - turns(b) || GROWS.indexOf(a) - GROWS.indexOf(b));
}
