/** The one clock of the house. It judges review dates of cards and dates starters; no leaflet is ever dated by it. */
import { type IsoDate, isoDate } from '../../units/date.ts';
import type { Flags } from '../flags.ts';

/** The day of --on, or else today in Greenwich, the same for everybody who builds at one moment. */
export function onDay({ on }: Pick<Flags, 'on'>): IsoDate {
  const today = on ?? isoDate(new Date().toISOString().slice(0, 10));
  if (today === null) throw new Error('the clock of this machine shows no date');
  return today;
}
