/** The one clock of the house. It judges review dates of cards; no leaflet is ever dated by it. */
import { isoDate, type IsoDate } from '../units/date.ts';
import { EXIT } from './exit.ts';
import { Stop } from './fault.ts';
import type { Flags } from './flags.ts';

export function onDay(flags: Flags): IsoDate {
  const text = flags.on ?? new Date().toISOString().slice(0, 10);
  const day = isoDate(text);
  if (day === null) throw new Stop(EXIT.usage, `--on ${text}: a date that exists, YYYY-MM-DD`);
  return day;
}
