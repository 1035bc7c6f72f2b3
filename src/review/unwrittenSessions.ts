/** Planned sessions of which nobody wrote down whether they were done, and whether they hurt. */
import type { IsoDate } from '../units/date.ts';
import type { Period } from './facts.ts';

/**
 * Planned sessions of a card of which no line says anything, where fewer than `need` of its `triedOn` came after: one of
 * them may have been the last that hurt. One on another day, before the next was due, is the planned one moved.
 */
export function unwrittenSessions(
  card: string,
  triedOn: readonly IsoDate[],
  need: number,
  { earlier, entries, from, until }: Period,
): readonly IsoDate[] {
  const planned = earlier.plan
    .filter(({ on, sessions }) => on >= from && on < until && sessions.some((one) => asksFor(card, one)))
    .map(({ on }) => on);
  const written = new Set(
    entries
      .filter((one) => one.kind === 'session' && (one.card === card || one.card === ''))
      .map(({ date }) => date),
  );
  const moved = [...written].filter((on) => !planned.includes(on)).sort();
  return planned.filter((on, index) => {
    if (written.has(on)) return false;
    const nextOn = planned[index + 1] ?? until;
    const stand = moved.findIndex((one) => one > (planned[index - 1] ?? from) && one < nextOn);
    // Each stands for one.
    if (stand >= 0) moved.splice(stand, 1);
    return stand < 0 && triedOn.filter((one) => one >= nextOn).length < need;
  });
}

function asksFor(
  card: string,
  { exercises }: { readonly exercises: readonly { readonly card: string }[] },
): boolean {
  return exercises.some((one) => one.card === card);
}
