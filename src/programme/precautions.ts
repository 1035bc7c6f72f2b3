/** What the screen and the body ask to heed, as the patient must know it too (house rules 11.11 and 11.14). */
import type { Consult } from '../content/library.ts';
import type { ScreenItem } from '../content/schema/consult.ts';
import type { Maternity } from './maternity.ts';
import type { Person } from './person.ts';

/** `yes`: recorded so, cleared or not. `not-asked`: nobody knows, so it acts like yes. */
export type Known = 'yes' | 'not-asked';

/** Items that bear on a held breath. */
export type BreathItem = 'uncontrolledBloodPressure' | 'hernia';
/** Items that leave light holds at most. */
export type MedicineItem = 'oralSteroid' | 'fluoroquinolone' | 'recentInjection';

export interface Precautions {
  readonly breath: readonly { readonly item: BreathItem; readonly known: Known }[];
  /** Longest hold in seconds while they act; null when every one of them was cleared. */
  readonly holdAtMostSeconds: number | null;
  readonly medicines: readonly { readonly item: MedicineItem; readonly known: Known }[];
  readonly maternity: Maternity | null;
  /** Words such as strong or heavy would contradict what is heeded. */
  readonly gentle: boolean;
}

/** Empty lists and null where nothing has to be heeded. */
export function precautionsOf({ consult, effects, maternity, protocol }: Person): Precautions {
  const breath = known(['uncontrolledBloodPressure', 'hernia'] as const, consult);
  const medicines = known(['oralSteroid', 'fluoroquinolone', 'recentInjection'] as const, consult);
  const short = effects.shortHolds.length > 0;
  const early = maternity !== null && (!maternity.jumps || maternity.clearedBy !== null);
  return {
    breath,
    holdAtMostSeconds: short ? protocol.limits.screenedHoldSeconds.value : null,
    medicines,
    maternity,
    gentle: short || effects.lightHolds.length > 0 || early,
  };
}

function known<Item extends ScreenItem>(
  items: readonly Item[],
  { screen, cannotDo }: Consult,
): { item: Item; known: Known }[] {
  return items.flatMap((item) => {
    if (item === 'uncontrolledBloodPressure' && cannotDo.includes('uncontrolled-blood-pressure'))
      return [{ item, known: 'yes' as const }];
    const answer = screen[item];
    return answer === 'no'
      ? []
      : [{ item, known: answer === 'yes' ? ('yes' as const) : ('not-asked' as const) }];
  });
}
