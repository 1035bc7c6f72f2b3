/** What each screen item does to the programme. One not asked acts like yes; nothing here is decided by the model. */
import type { Clinic, Consult } from '../content/library.ts';
import type { ScreenItem } from '../content/schema/consult.ts';
import type { CannotDo } from '../content/schema/words.ts';
import type { Refusal } from '../units/refusal.ts';
import { blockText, lightHoldsText, noPictureText, under18Text } from './phrases/screen.ts';

/** House rules 2. `emergency`: no entry in the file lifts it. */
const EFFECTS: Readonly<Record<ScreenItem, Effect>> = {
  saddleNumbness: 'emergency',
  bladderBowel: 'emergency',
  bothLegWeakness: 'emergency',
  worseningWeakness: 'emergency',
  footDrop: 'emergency',
  clotSigns: 'emergency',
  fever: 'block',
  weightLoss: 'block',
  cancerNightPain: 'block',
  popBruise: 'block',
  suspectedFracture: 'block',
  hopPain: 'noRunning',
  focalBonePain: 'noRunning',
  nightBonePain: 'noRunning',
  missedPeriods: 'noRunning',
  lowEnergy: 'noRunning',
  fluoroquinolone: 'lightHolds',
  oralSteroid: 'lightHolds',
  recentInjection: 'lightHolds',
  uncontrolledBloodPressure: 'shortHolds',
  hernia: 'shortHolds',
  suddenOnsetUnder18: 'under18',
};

export type Effect = 'emergency' | 'block' | 'noRunning' | 'lightHolds' | 'shortHolds' | 'under18';

/** The items behind each effect that holds for this person; empty lists when none does. */
export interface ScreenEffects {
  readonly noRunning: readonly ScreenItem[];
  /** Light holds at most: no weight, no running, the caps of the first stage. */
  readonly lightHolds: readonly ScreenItem[];
  readonly shortHolds: readonly ScreenItem[];
  /** Lighter dose, no maximum, no model caps. */
  readonly under18: boolean;
  /** A sudden start with a new picture: light loads in the first programme after it. */
  readonly lightLoads: readonly ScreenItem[];
}

/**
 * The effects of the screen, or one refusal for every item that stops the programme.
 * A clearance lifts an item only when it was asked and answered; an emergency is never lifted in the file.
 */
export function screenEffects(
  consult: Consult,
  clinic: Clinic,
): ScreenEffects | { readonly refusals: readonly Refusal[] } {
  const refusals = (Object.keys(EFFECTS) as ScreenItem[]).flatMap((item) =>
    refusalFor(item, consult, clinic),
  );
  if (refusals.length > 0) return { refusals };
  const holding = (effect: Effect) =>
    (Object.keys(EFFECTS) as ScreenItem[]).filter((item) => EFFECTS[item] === effect && acts(item, consult));
  const uncleared = (effect: Effect) => holding(effect).filter((item) => !cleared(item, consult));
  return {
    noRunning: uncleared('noRunning'),
    lightHolds: holding('lightHolds'),
    shortHolds: uncleared('shortHolds'),
    under18: consult.ageYears < 18,
    lightLoads: [],
  };
}

function refusalFor(item: ScreenItem, consult: Consult, clinic: Clinic): Refusal[] {
  const place = {
    code: 'screen-block',
    kind: 'consult',
    id: consult.id,
    path: ['screen', item],
    found: consult.screen[item],
  } as const;
  const effect = EFFECTS[item];
  const noPicture = decided(item, consult);
  if (effect === 'under18')
    return consult.ageYears < 18 && !cleared(item, consult)
      ? [{ ...place, ...under18Text(consult.screen[item], noPicture) }]
      : [];
  if (!acts(item, consult)) return [];
  if (noPicture && needsImaging(item, consult) && consult.screen[item] === 'yes' && !cleared(item, consult))
    return [{ ...place, ...noPictureText(item) }];
  if (effect === 'emergency' || (effect === 'block' && !cleared(item, consult))) {
    return [
      { ...place, ...blockText(item, consult.screen[item], effect, clinic.emergency[consult.country]) },
    ];
  }
  if (effect === 'lightHolds' && !decided(item, consult))
    return [{ ...place, ...lightHoldsText(item, consult.screen[item]) }];
  return [];
}

function acts(item: ScreenItem, consult: Consult): boolean {
  if (EFFECTS[item] === 'under18') return false;
  return consult.screen[item] !== 'no' || cannotDo(item, consult);
}

// The cannot-do list may name what the screen asks for; it speaks of today, so no clearance lifts it.
const SAME_THING: Partial<Record<ScreenItem, CannotDo>> = {
  uncontrolledBloodPressure: 'uncontrolled-blood-pressure',
};

function cannotDo(item: ScreenItem, consult: Consult): boolean {
  const word = SAME_THING[item];
  return word !== undefined && consult.cannotDo.includes(word);
}

/** Items whose clearance must hold a picture: free text lifts neither (house rules 11.6). Not asked acts like yes. */
export function needsImaging(
  item: ScreenItem,
  { screen, ageYears }: Pick<Consult, 'screen' | 'ageYears'>,
): boolean {
  if (screen[item] === 'no') return false;
  return item === 'popBruise' || (item === 'suddenOnsetUnder18' && ageYears < 18);
}

const pictured = (item: ScreenItem, consult: Consult) =>
  !needsImaging(item, consult) ||
  consult.clearances.some(({ flag, imaging }) => flag === item && imaging !== undefined);

const decided = (item: ScreenItem, consult: Consult) =>
  consult.clearances.some((clearance) => clearance.flag === item);

// An item that was never asked cannot have been cleared.
const cleared = (item: ScreenItem, consult: Consult) =>
  decided(item, consult) &&
  pictured(item, consult) &&
  !cannotDo(item, consult) &&
  (consult.screen[item] !== 'notAsked' || EFFECTS[item] === 'under18');
