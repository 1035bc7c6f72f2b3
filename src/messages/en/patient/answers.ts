/** What an entry of the log means by the leaflet's own rules, beside pain and morning scores of exercises. */
import type { PainGate } from '../../../scheduling/morning.ts';
import { countText, numberText } from '../plain.ts';

/** Pain on a run. @example '6: stop the run for today, and walk home.' */
export function runPainAnswer(pain: number, { allowed, stop, next }: PainGate): string {
  if (stop) return `${pain}: stop the run for today, and walk home.`;
  if (!allowed) return `${pain}: go no further than planned. Next time do the same again, add nothing.`;
  return next === 'carry-on'
    ? `${pain}: all right.`
    : `${pain}: all right. Next time do the same again, add nothing.`;
}

/** Pain while sitting. */
export function sittingPainAnswer(pain: number, { allowed, next }: PainGate): string {
  if (!allowed) return `${pain}: too much for so long a time. Stand up sooner next time.`;
  return next === 'carry-on' ? `${pain}: all right.` : `${pain}: all right. Do not sit longer next time.`;
}

/** Minutes sat, against up to how many are given. @example '40: over your 30 minutes. Stand up and walk a little sooner.' */
export function satAnswer(minutes: number, uprightMinutes: number, hardMinutes: number): string {
  const said = numberText(minutes);
  if (minutes > uprightMinutes)
    return `${said}: over your ${countText(uprightMinutes, 'minute')}. Stand up and walk a little sooner.`;
  return minutes > hardMinutes
    ? `${said}: all right upright on a cushion. On a hard seat, up to ${countText(hardMinutes, 'minute')}.`
    : `${said}: all right.`;
}

/** Kilometres of a day against the plan's. */
export function kmAnswer(km: number, plannedKm: number): string {
  return km > plannedKm
    ? `${numberText(km)} km: more than the ${numberText(plannedKm)} km of the plan. Keep to the plan next time.`
    : `${numberText(km)} km: within the plan.`;
}

export const ANSWERS = {
  morePlanned: 'That is more than planned. Keep to the numbers of this sheet: they grow one at a time.',
  yes: 'Done. Note the pain too: it says how to go on.',
  part: 'A part counts. Carry on with the next session as planned.',
  no: 'Left out. Do not do two to catch up.',
  noRun: 'Left out. Do not run further to catch up.',
} as const;
