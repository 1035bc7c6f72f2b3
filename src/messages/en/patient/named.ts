/** Where the leaflet names an exercise that is not among the present ones. */
import { capital, listText } from '../plain.ts';

export type Where =
  { readonly kind: 'morning-check' | 'flare' } | { readonly kind: 'step'; readonly step: number };

export const NAMED_HEADING = 'Also named here';

/** @example whereText([{ kind: 'flare' }, { kind: 'step', step: 2 }]) // => 'In a flare, and in step 2, later' */
export function whereText(places: readonly Where[]): string {
  const steps = places.flatMap((place) => (place.kind === 'step' ? [place.step] : []));
  const words = [
    ...(places.some(({ kind }) => kind === 'morning-check') ? ['for the morning check'] : []),
    ...(places.some(({ kind }) => kind === 'flare') ? ['in a flare'] : []),
    ...(steps.length === 0 ? [] : [`later, from step ${Math.min(...steps)} on`]),
  ];
  return `${capital(listText(words))}.`;
}
