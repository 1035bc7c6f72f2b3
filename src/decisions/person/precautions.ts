/** What the screen and the body ask to heed, as the patient must know it too (house rules 11.11 and 11.14). */
import type { Consult } from '../../content/library.ts';
import type { ScreenItem } from '../../content/schema/consult.ts';
import type { CannotDo } from '../../content/schema/words.ts';
import type { Maternity } from '../screen/maternity.ts';
import { limitsOf } from '../screen/painLimits.ts';
import { reserveAtLeast, shortHoldsBy, strainBarredBy } from './effort.ts';
import type { Person } from './person.ts';

/** `yes`: recorded so. `cleared`: so, and a decision lifts what it does. `not-asked`: nobody knows, so it acts like yes. */
export type Known = 'yes' | 'cleared' | 'not-asked';

/** Items that bear on a held breath. */
export type BreathItem = 'uncontrolledBloodPressure' | 'hernia';
/** Items that stop running and jumping, for a bone may not bear them. */
export type BoneItem = 'hopPain' | 'focalBonePain' | 'nightBonePain' | 'missedPeriods' | 'lowEnergy';
/** Items that leave light holds at most. */
export type MedicineItem = 'oralSteroid' | 'fluoroquinolone' | 'recentInjection';

/** What of the cannot-do list changes how the exercises that are left are done. */
export type BodyItem = Extract<CannotDo, 'dizziness' | 'osteoporosis' | 'hip-replacement'>;

export interface Precautions {
  readonly breath: readonly { readonly item: BreathItem; readonly known: Known }[];
  /** Longest hold in seconds while they act; null when every one of them was cleared. */
  readonly holdAtMostSeconds: number | null;
  /** Repetitions in hand at least; null where nobody must take care not to strain. */
  readonly reserveAtLeast: number | null;
  /** Only those that act: what was cleared stops no run. */
  readonly bone: readonly { readonly item: BoneItem; readonly known: Known }[];
  readonly medicines: readonly { readonly item: MedicineItem; readonly known: Known }[];
  readonly maternity: Maternity | null;
  readonly body: readonly BodyItem[];
  /** The first programme after a cleared sudden start. */
  readonly sudden: boolean;
  /** Words such as strong or heavy would contradict what is heeded. */
  readonly gentle: boolean;
}

const BONE = ['hopPain', 'focalBonePain', 'nightBonePain', 'missedPeriods', 'lowEnergy'] as const;

/** Empty lists and null where nothing has to be heeded. */
export function precautionsOf(person: Person): Precautions {
  const { consult, effects, maternity, protocol, sudden, cannotDo } = person;
  const breath = known(['uncontrolledBloodPressure', 'hernia'] as const, consult, effects.shortHolds);
  const medicines = known(
    ['oralSteroid', 'fluoroquinolone', 'recentInjection'] as const,
    consult,
    effects.lightHolds,
  );
  const bone = known(BONE, consult, effects.noRunning).filter((one) => one.known !== 'cleared');
  const { usualOnly } = limitsOf(consult, protocol);
  const short = effects.shortHolds.length > 0;
  const strains = strainBarredBy(person).length > 0;
  const early = maternity !== null && (!maternity.jumps || maternity.clearedBy !== null);
  return {
    breath,
    holdAtMostSeconds: shortHoldsBy(person).length > 0 ? protocol.limits.screenedHoldSeconds.value : null,
    reserveAtLeast: strains ? reserveAtLeast(person) : null,
    bone,
    medicines,
    maternity,
    body: (['dizziness', 'osteoporosis', 'hip-replacement'] as const).filter((item) =>
      cannotDo.includes(item),
    ),
    sudden: sudden !== null,
    gentle:
      short || effects.lightHolds.length > 0 || early || sudden !== null || usualOnly || effects.under18,
  };
}

/** `acting`: the items whose effect nothing lifts. */
function known<Item extends ScreenItem>(
  items: readonly Item[],
  { screen }: Consult,
  acting: readonly ScreenItem[],
): { item: Item; known: Known }[] {
  return items.flatMap((item): { item: Item; known: Known }[] => {
    if (acting.includes(item)) return [{ item, known: screen[item] === 'notAsked' ? 'not-asked' : 'yes' }];
    return screen[item] === 'yes' ? [{ item, known: 'cleared' }] : [];
  });
}
