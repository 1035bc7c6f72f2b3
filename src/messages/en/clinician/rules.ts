/** The rule behind a number of the dosage table, in words for the record. */
import type { DoseRule, LoadRule, RangeRule, Rule } from '../../../decisions/terms/rule.ts';
import type { EntryRule } from '../../../decisions/terms/entryRule.ts';
import { fittedTo } from '../patient/sessionLength.ts';
import { amountText } from '../patient/steps.ts';
import { entryRule, feltRule } from './entry.ts';
import { cardLimitWords } from './cardLimits.ts';
import { strainWord } from './screen.ts';
import { testedText } from './tested.ts';

type TitleOf = (card: string) => string;
type WordsOf<Union extends { readonly rule: string }> = {
  readonly [Member in Union as Member['rule']]: (rule: Member, titleOf: TitleOf) => string;
};

/** @example ruleText({ rule: 'hold-reserve' }, titleOf) // => 'a hold leaves 10 to 20 seconds in hand' */
export function ruleText(rule: Rule, titleOf: TitleOf): string {
  return WORDS[rule.rule](rule as never, titleOf);
}

const DOSE: WordsOf<DoseRule> = {
  slot: ({ slot }) => `dose of the slot ${slot}`,
  ladder: ({ eased, from, to }) =>
    `${eased ? 'taken down by a step of the ladder' : 'step of the ladder'}, from ${from === null ? '-' : amountText(from)} to ${to === null ? '-' : amountText(to)}`,
  'fit-minutes': ({ from, to, length }) => `less, ${fittedTo(length)}: ${to} instead of ${from}`,
  'few-at-first': ({ repetitions }) =>
    `few at first, as the card asks: ${repetitions} repetitions in all at most`,
  young: () => 'lighter under 18: a set less, a repetition more in hand',
  'held-share': () => 'share of the seconds that could be held, rounded down to 5',
  'held-untested': () => 'not tested: the shortest hold of the protocol, or what was held before',
  'held-longer': () => 'longer than the dose of the slot, so that it is not far below what was held',
  'held-longest': () => 'longest hold of the protocol',
  'short-holds': ({ bars }) => `short holds: ${bars.map(strainWord).join(', ')}`,
  'no-straining': ({ bars }) => `no straining: ${bars.map(strainWord).join(', ')}`,
  'card-tempo': () => 'pace of the card, no pause at the squeezed end',
  'hold-reserve': () => 'a hold leaves 10 to 20 seconds in hand',
  'recovery-clock': () => 'the week on one recovery clock',
  clinician: ({ reason }) => `clinician: ${reason}`,
};

const LOAD: WordsOf<LoadRule> = {
  'no-weight': () => 'the card carries no weight',
  'weighed-later': () => 'its weight is worked out when the stage has come',
  'light-holds': () => 'the screen allows light holds only, without a weight',
  'no-weight-in-house': () => 'there is no weight for it in the house',
  'sets-say-nothing': ({ tested }) => tested.map(testedText).join('; '),
  untested: () => 'nothing tested with this card, so no weight yet',
  'untested-sudden': () => 'nothing tested with this card, and light after a sudden start',
  felt: () => 'nothing tested with this card: it is felt for, by the repetitions in hand',
  'none-admitted': () => 'nothing tested with this card, and no weight is admitted over the whole movement',
  'bare-between': () => 'between sessions without a weight: the gentlest hold of the slot',
  'carried-on': () => 'carried on from the easier exercise, no heavier',
  'felt-first': ({ growth, isFelt }) => feltRule(growth, isFelt),
  tested: ({ tested, lightShare, hurtFromKg }) =>
    [
      testedText(tested),
      ...(lightShare === null ? [] : [`light after a sudden start: ${lightShare} of it`]),
      ...(hurtFromKg === null ? [] : [`a set with ${hurtFromKg} kg hurt, so it stays below that`]),
    ].join('; '),
  logged: ({ wanted, doneKg, on }, titleOf) =>
    `${ruleText(wanted, titleOf)}; as lifted by the log on ${on}: ${doneKg} kg`,
  lighter: ({ wanted, heavierKg, bar }, titleOf) =>
    `${ruleText(wanted, titleOf)}; lighter, for at ${heavierKg} kg ${cardLimitWords(bar)}`,
};

const SMALLEST = 'smallest of the cap, the model and what hurt, rounded to the gentle end';

const RANGE: WordsOf<RangeRule> = {
  'in-full': () => 'done in full: every limit holds along it',
  smallest: () => SMALLEST,
  provoked: () => `${SMALLEST}; here the angle that hurt, less the margin`,
  'tested-range': () => 'no further than the set that was tested with this load',
  'highest-step': () => 'the highest step in the house that every limit admits',
  'whole-range': () => 'the whole range of the card: every limit holds along it',
};

const ENTRY: WordsOf<EntryRule> = { entry: (rule, titleOf) => entryRule(rule, titleOf) };

const WORDS = { ...DOSE, ...LOAD, ...RANGE, ...ENTRY };
