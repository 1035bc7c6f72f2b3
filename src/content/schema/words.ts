/** The words and small shapes that several kinds of file share. */
import * as z from 'zod';
import type { ProblemCode } from '../problem.ts';
import { isoDate, type IsoDate } from '../../units/date.ts';
import { MARKS } from '../../units/source.ts';
import { WEEKDAYS } from '../../units/weekday.ts';

/** Puts the sentence for the author before the shape; it is shown by editors, in Problems and in the reference page. */
export function about<T extends z.ZodType>(sentence: string, shape: T): T {
  return shape.describe(sentence) as T;
}

// Ids become file names; the words after `?!` are devices on Windows and cannot.
export const ID_PATTERN = /^(?!(?:con|prn|aux|nul|com[0-9]|lpt[0-9])$)[a-z0-9][a-z0-9-]{0,63}$/;

/** Whether only that a system keeps the word for a device stands against it as an id. */
export function isDeviceName(word: string): boolean {
  return /^[a-z0-9]{3,4}$/.test(word) && !ID_PATTERN.test(word);
}

export const id = z.string().regex(ID_PATTERN, {
  error: ({ input }) =>
    isDeviceName(String(input))
      ? `another id: ${String(input)} is a device on Windows`
      : 'an id: small letters, digits and hyphens, 1 to 64 of them',
});

/** One line of plain text for a reader. */
export const line = oneLine('some text', 300);

export const title = oneLine('a title', 200);

export const date = z
  .string('a date, YYYY-MM-DD')
  .refine((text) => isoDate(text) !== null, {
    message: 'a date that exists, YYYY-MM-DD',
    params: { code: 'not-a-date' } satisfies WrongParams,
  })
  .meta({ format: 'date' })
  .transform((text) => text as IsoDate);

/** `yes`/`no` or `true`/`false`: both are read as they stand, nothing else is. */
export const yesNo = z
  .union([z.boolean(), z.enum(['yes', 'no'])], 'yes or no')
  .transform((value) => value === true || value === 'yes');

export const pain = z
  .int('a whole number from 0 to 10')
  .min(0, 'a whole number from 0 to 10')
  .max(10, 'a whole number from 0 to 10');

export const weekday = z.enum(WEEKDAYS);

/** The joint angle that squeezes a tendon. */
export const angle = z.enum(['hipFlexion', 'hipAdduction', 'ankleDorsiflexion', 'kneeFlexion']);

/** A positive count or amount with an upper bound that catches slips of the pen. */
export function from(low: number, high: number, unit: string) {
  const text = `a number from ${low} to ${high} ${unit}`.trimEnd();
  return z.number(text).min(low, text).max(high, text);
}

export function wholeFrom(low: number, high: number, unit = '') {
  const text = `a whole number from ${low} to ${high} ${unit}`.trimEnd();
  return z.int(text).min(low, text).max(high, text);
}

/** A cap that may be lifted: a number, or `none`. Read as null when lifted. */
export function capFrom(low: number, high: number, unit: string) {
  return z
    .union([from(low, high, unit), z.literal('none')], `a number from ${low} to ${high} ${unit}, or none`)
    .transform((value) => (value === 'none' ? null : value));
}

export const mark = z.enum(MARKS);

export const source = z.strictObject({
  // Long enough for a dose of which each number has a source of its own.
  cite: about(
    'Where it stands: author, year, journal; or the words "house choice".',
    oneLine('some text', 1500),
  ),
  mark: about('How sure we are of it: read, secondary, memory, choice or common-practice.', mark),
});

export const tempo = z.strictObject({
  go: about('Seconds for the way out of the start position.', from(0, 30, 'seconds')),
  hold: about('Seconds of stillness at the gentle end; never at the squeezed end.', from(0, 60, 'seconds')),
  back: about('Seconds for the way back.', from(0, 30, 'seconds')),
});

/** One line of plain text of at most so many characters. */
export function oneLine(least: string, most: number) {
  return z
    .string()
    .trim()
    .min(1, least)
    .max(most, `at most ${most} characters`)
    .regex(/^[^\n]*$/, 'one line of text');
}

/** What a rule of our own may say beside its message, which reads after "must be". */
export interface WrongParams {
  /** The key is not there and must be. */
  readonly missing?: boolean;
  /** When it is not the code `does-not-fit`. */
  readonly code?: ProblemCode;
  readonly fix?: string;
  /** The key beside it that brought the rule about; a slip in that key's name or value then explains this Problem too. */
  readonly because?: string;
  /** The same for a key elsewhere, by its way from where the rule stands. */
  readonly besides?: readonly PropertyKey[];
}

export type Wrong = (path: readonly PropertyKey[], message: string, params?: WrongParams) => void;

/**
 * The shape with a rule across its keys. The rule runs even when single keys are wrong, so that all Problems come in
 * one run; it must therefore bear keys that are missing or hold anything at all.
 */
export function across<T extends z.ZodObject>(
  shape: T,
  rule: (value: { readonly [K in keyof z.output<T>]?: unknown }, wrong: Wrong) => void,
): T {
  return shape.superRefine(
    (value, context) =>
      rule(value, (path, message, params = {}) =>
        context.addIssue({
          code: 'custom',
          path: [...path],
          message,
          params: { ...params, ...(params.besides && { depth: path.length }) },
        }),
      ),
    { when: ({ value }) => typeof value === 'object' && value !== null && !Array.isArray(value) },
  );
}

/** The value when it is a date that exists, for rules that compare dates. */
export function dateOrNull(value: unknown): IsoDate | null {
  return typeof value === 'string' ? isoDate(value) : null;
}

/** A house number with its mark, so that the record can print where it comes from. */
export function setting<T extends z.ZodType>(value: T) {
  return z.strictObject({
    value: about('The number or word itself.', value),
    mark: about('How sure we are of it.', mark),
    cite: about('Where it stands, when it stands anywhere.', line).optional(),
  });
}

/** What was changed in a file when, newest or oldest first. */
export const changed = z
  .array(
    z.strictObject({ on: about('The day.', date), what: about('What was changed, in a sentence.', line) }),
  )
  .default([]);

export const POSITIONS = [
  'lying',
  'prone',
  'raised-bridge',
  'bridge',
  'standing',
  'hinge',
  'squat',
  'lunge',
  'step',
  'nordic',
  'kneeling',
  'seated',
  'ballistic',
  'side-lying',
] as const;
export const position = z.enum(POSITIONS);
export type Position = (typeof POSITIONS)[number];

/** What a person may be unable to do; cards name what they need in the same words. */
export const CANNOT_DO = [
  'kneel',
  'lie-prone',
  'lie-supine',
  'get-to-the-floor',
  'grip',
  'stand-on-one-leg',
  'hip-replacement',
  'pregnant-or-postpartum',
  'uncontrolled-blood-pressure',
  'osteoporosis',
  'dizziness',
] as const;
export const cannotDo = z.enum(CANNOT_DO);
export type CannotDo = (typeof CANNOT_DO)[number];

/** What a card may ask for. The first row stands in every home; the second must be in the consult's kit. */
export const HOUSEHOLD = [
  'floor',
  'bed',
  'chair',
  'wall',
  'table',
  'towel',
  'pillow',
  'books',
  'stairs',
] as const;
export const KIT_WORDS = [
  'weight',
  'dumbbell',
  'kettlebell',
  'bar',
  'band',
  'rucksack',
  'bench',
  'ball',
  'step',
  'strap',
  'partner',
  'machine',
] as const;
export const equipment = z.enum([...HOUSEHOLD, ...KIT_WORDS]);
export type Equipment = z.output<typeof equipment>;

/** Muscle groups an exercise is used for, in the trade's words. */
export const MUSCLES = [
  'hamstrings',
  'gluteus-maximus',
  'gluteus-medius',
  'adductors',
  'quadriceps',
  'calf',
  'hip-flexors',
  'trunk',
] as const;
export const muscle = z.enum(MUSCLES);
export type Muscle = (typeof MUSCLES)[number];
/** The languages a leaflet may be written in. */
export const LANGUAGES = ['en'] as const;
export type Language = (typeof LANGUAGES)[number];
