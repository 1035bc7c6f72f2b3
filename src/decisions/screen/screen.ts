/** What each screen item does to the programme. One not asked acts like yes; nothing here is decided by the model. */
import type { Clinic, Consult } from '../../content/library.ts';
import type { ScreenPart } from '../../content/readScreen.ts';
import type { ScreenItem } from '../../content/schema/consult.ts';
import type { CannotDo } from '../../content/schema/words.ts';
import type { Refusal, Refused, ScreenStop } from '../terms/refusal.ts';

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

/** What an item does where it is answered yes, or was not asked. */
export function effectOf(item: ScreenItem): Effect {
  return EFFECTS[item];
}

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
export function screenEffects(consult: ScreenPart, clinic: Emergencies): ScreenEffects | Refused {
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
  const why = stopOf(item, consult, clinic);
  return why === null ? null : { code: 'screen-block', id: consult.id, path: ['screen', item], why };
}

function stopOf(item: ScreenItem, consult: ScreenPart, clinic: Emergencies | null): ScreenStop | null {
  const answer = consult.screen[item];
  const effect = EFFECTS[item];
  const wordsAlone = decided(item, consult) && !pictured(item, consult);
  if (effect === 'under18') {
    if (consult.ageYears >= 18 || cleared(item, consult)) return null;
    return wordsAlone ? { reason: 'no-picture', item, answer } : { reason: 'under-18', answer };
  }
  if (!acts(item, consult)) return null;
  if (wordsAlone && answer === 'yes') return { reason: 'no-picture', item, answer };
  if (effect === 'emergency' || (effect === 'block' && !cleared(item, consult)))
    return {
      reason: 'screen-stop',
      item,
      answer,
      effect,
      emergency: clinic?.emergency[consult.country] ?? null,
    };
  return effect === 'lightHolds' && !decided(item, consult)
    ? { reason: 'light-holds-undecided', item, answer }
    : null;
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
function needsImaging(item: ScreenItem, { screen, ageYears }: Pick<Consult, 'screen' | 'ageYears'>): boolean {
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
