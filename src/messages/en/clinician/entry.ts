/** How an exercise entered the stage and where it is gentler than what was tested, in sentences for the clinician. */
import type { Entry, Lowered } from '../../../decisions/candidates/entered.ts';
import type { Gentler, GentlerReason } from '../../../decisions/candidates/gentlerReason.ts';
import type { EntryRule, Quantity } from '../../../decisions/terms/entryRule.ts';
import type { TestedUnused } from '../../../decisions/session/testedUnused.ts';
import { cardLimitWords } from './cardLimits.ts';
import { listText, numberText } from '../plain.ts';

const QUANTITY_WORDS: Readonly<Record<Quantity, string>> = {
  compressionBw: 'peak squeeze',
  hipMomentNm: 'hip moment',
  compressionTimeBwS: 'squeeze over the session',
  tensionTimeBwS: 'pull over the session',
};

const BY_WORDS = { lastDone: 'done last', testedSet: 'tested', test: 'tried' } as const;

/** The rule by which a number was taken down. @example 'at most 1.3 times what was tested with Short bow (peak squeeze)' */
export function entryRule(entry: EntryRule, titleOf: (card: string) => string): string {
  const { basis, card, by, growth, quantity } = entry;
  if (basis === 'slight') return 'not tested, and light enough to begin without a weight';
  if (basis === 'nothing' || card === null || by === null)
    return 'none of its slot or ladder was tested or done before: its gentlest version';
  const most = growth === 1 ? 'no more than' : `at most ${numberText(growth)} times`;
  const what = quantity === null ? '' : ` (${QUANTITY_WORDS[quantity]})`;
  return `${most} what was ${BY_WORDS[by]} with ${titleOf(card)}${what}`;
}

/** Why a weight that is felt for is no heavier at first. @example 'nothing tested with this card: it is felt for, at first up to 1.3 times the exercise without a weight' */
export function feltRule(growth: number, isFelt: boolean): string {
  const most = `${numberText(growth)} times the exercise without a weight`;
  return isFelt
    ? `nothing tested with this card: it is felt for, at first up to ${most}`
    : `nothing tested with this card, and the lightest weight there is makes it more than ${most}`;
}

/** A line of the record for one exercise; null where nothing was taken down. */
export function entryText(title: string, entry: Entry, titleOf: (card: string) => string): string | null {
  if (entry.lowered.length === 0) return null;
  return `${title} enters gently, ${entryRule(entry, titleOf)}: ${listText(entry.lowered.map(loweredText))}.`;
}

function loweredText({ what, from, to }: Lowered): string {
  const [now, before] = [numberText(to), numberText(from)];
  switch (what) {
    case 'range':
      return `range ${now}° instead of ${before}°`;
    case 'load':
      return `weight ${now} kg instead of ${before} kg`;
    case 'feltLoad':
      return to === 0
        ? 'no weight instead of one that is felt for'
        : `a weight felt for up to ${now} kg instead of ${before} kg`;
    case 'repetitions':
      return `${now} repetitions instead of ${before}`;
    case 'holdSeconds':
      return `hold ${now} s instead of ${before} s`;
  }
}

const REASON_WORDS: Readonly<Record<GentlerReason, string>> = {
  cap: 'a cap of the stage',
  growth: 'the step from what was done or tested',
  pain: 'what hurt',
  kit: 'the weights in the house',
  effort: 'more repetitions than were tested, with the effort kept',
  unusable: 'the set says nothing of this dose, as its rule tells',
  longest: 'the longest hold of the protocol',
  screen: 'the screen',
  sudden: 'light after a sudden start',
  between: 'holds between sessions carry no weight',
  published: 'the dose as it is published',
  young: 'under 18',
  minutes: 'the minutes there are',
  clinician: "the clinician's own entry",
};

/** @example 'Gentler than tested: Short bow, 4 kg of 12 kg tested (33 %): the weights in the house.' */
export function gentlerText(title: string, { what, given, tested, reasons }: Gentler): string {
  const unit = { load: ' kg', hold: ' s', pull: ' body weights of pull' }[what];
  const share = Math.round((given / tested) * 100);
  return `Gentler than tested: ${title}, ${rounded(given)}${unit} of ${rounded(tested)}${unit} tested (${share} %): ${listText(reasons.map((reason) => REASON_WORDS[reason]))}.`;
}

/** @example 'Split squat was tested with 40 kg and is not in the session: … . Small split squat stands in its place.' */
export function testedUnusedText({ title, loadKg, why, instead }: TestedUnused): string {
  const tested = loadKg === 0 ? 'without a weight' : `with ${numberText(loadKg)} kg`;
  const place = instead === null ? '' : ` ${instead} stands in its place.`;
  return `${title} was tested ${tested} and is not in the session: ${cardLimitWords(why)}.${place}`;
}

function rounded(value: number): string {
  return numberText(Math.round(value * 100) / 100);
}

/** @example 'Tested sets contradict each other: Short bow, 8 kg hurt 5 and 12 kg hurt 2; the lighter one that hurt bounds the load.' */
export function contradictionText(
  title: string,
  painful: { readonly loadKg: number; readonly pain: number },
  painless: { readonly loadKg: number; readonly pain: number },
): string {
  const set = ({ loadKg, pain }: typeof painful) => `${numberText(loadKg)} kg hurt ${pain}`;
  return `Tested sets contradict each other: ${title}, ${set(painful)} and ${set(painless)}; the lighter one that hurt bounds the load. Test again.`;
}
