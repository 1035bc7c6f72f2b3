/** What each screen item does to the programme. One not asked acts like yes; nothing here is decided by the model. */
import type { Clinic, Consult } from '../../content/library.ts';
import type { ScreenPart } from '../../content/readScreen.ts';
import type { ScreenItem } from '../../content/schema/consult.ts';
import type { CannotDo } from '../../content/schema/words.ts';
import type { Refusal } from '../../units/refusal.ts';
import { blockText, lightHoldsText, noPictureText, under18Text } from '../../messages/en/clinician/screen.ts';

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
}

/**
 * The effects of the screen, or one refusal for every item that stops the programme.
 * A clearance lifts an item only when it was asked and answered; an emergency is never lifted in the file.
 */
export function screenEffects(
  consult: ScreenPart,
  clinic: Emergencies,
): ScreenEffects | { readonly refusals: readonly Refusal[] } {
  const refusals = (Object.keys(EFFECTS) as ScreenItem[]).flatMap(
    (item) => stopsWith(item, consult, clinic) ?? [],
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
  };
}

type Emergencies = Pick<Clinic, 'emergency'>;

/** Why one item stops every programme of this person; null when it does not. */
export function stopsWith(item: ScreenItem, consult: ScreenPart, clinic: Emergencies | null): Refusal | null {
  const words = stopWords(item, consult, clinic);
  if (words === null) return null;
  const found = consult.screen[item];
  return {
    code: 'screen-block',
    kind: 'consult',
    id: consult.id,
    path: ['screen', item],
    found,
    ...words,
  };
}

function stopWords(
  item: ScreenItem,
  consult: ScreenPart,
  clinic: Emergencies | null,
): Pick<Refusal, 'expected' | 'fix'> | null {
  const answer = consult.screen[item];
  const effect = EFFECTS[item];
  const wordsAlone = decided(item, consult) && !pictured(item, consult);
  if (effect === 'under18')
    return consult.ageYears < 18 && !cleared(item, consult) ? under18Text(answer, wordsAlone) : null;
  if (!acts(item, consult)) return null;
  if (wordsAlone && answer === 'yes') return noPictureText(item);
  if (effect === 'emergency' || (effect === 'block' && !cleared(item, consult)))
    return blockText(item, answer, effect, clinic?.emergency[consult.country]);
  return effect === 'lightHolds' && !decided(item, consult) ? lightHoldsText(item, answer) : null;
}

function acts(item: ScreenItem, consult: ScreenPart): boolean {
  if (EFFECTS[item] === 'under18') return false;
  return consult.screen[item] !== 'no' || cannotDo(item, consult);
}

// The cannot-do list may name what the screen asks for; it speaks of today, so no clearance lifts it.
const SAME_THING: Partial<Record<ScreenItem, CannotDo>> = {
  uncontrolledBloodPressure: 'uncontrolled-blood-pressure',
};

function cannotDo(item: ScreenItem, consult: ScreenPart): boolean {
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

const pictured = (item: ScreenItem, consult: ScreenPart) =>
  !needsImaging(item, consult) ||
  consult.clearances.some(({ flag, imaging }) => flag === item && imaging !== undefined);

const decided = (item: ScreenItem, consult: ScreenPart) =>
  consult.clearances.some((clearance) => clearance.flag === item);

// An item that was never asked cannot have been cleared.
const cleared = (item: ScreenItem, consult: ScreenPart) =>
  decided(item, consult) &&
  pictured(item, consult) &&
  !cannotDo(item, consult) &&
  (consult.screen[item] !== 'notAsked' || EFFECTS[item] === 'under18');
