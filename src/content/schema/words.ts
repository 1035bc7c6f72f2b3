/** The words and small shapes that several kinds of file share. */
import { z } from 'zod';
import { isoDate, type IsoDate } from '../../units/date.ts';
import { MARKS } from '../../units/source.ts';
import { WEEKDAYS } from '../../units/weekday.ts';

/** Puts the sentence for the author before the shape; it is shown by editors, in Problems and in the reference page. */
export function about<T extends z.ZodType>(sentence: string, shape: T): T {
  return shape.describe(sentence) as T;
}

export const ID_PATTERN = /^[a-z0-9][a-z0-9-]{0,63}$/;

export const id = z.string().regex(ID_PATTERN, 'an id: small letters, digits and hyphens, 1 to 64 of them');

/** One line of plain text for a reader. */
export const line = z.string().trim().min(1, 'some text').max(300, 'at most 300 characters');

export const title = z.string().trim().min(1, 'a title').max(200, 'at most 200 characters');

export const date = z
  .string('a date, YYYY-MM-DD')
  .refine((text) => isoDate(text) !== null, 'a date that exists, YYYY-MM-DD')
  .transform((text) => text as IsoDate);

/** `yes`/`no` or `true`/`false`: both are read as they stand, nothing else is. */
export const yesNo = z
  .union([z.boolean(), z.enum(['yes', 'no'])], 'yes or no')
  .transform((value) => value === true || value === 'yes');

export const pain = z.int('a whole number from 0 to 10').min(0, 'a whole number from 0 to 10').max(10, 'a whole number from 0 to 10');

export const weekday = z.enum(WEEKDAYS);

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
  cite: about('Where it stands: author, year, journal; or the words "house choice".', line),
  mark: about('How sure we are of it: read, secondary, memory, choice or common-practice.', mark),
});

export const tempo = z.strictObject({
  go: about('Seconds for the way out of the start position.', from(0, 30, 'seconds')),
  hold: about('Seconds of stillness at the gentle end; never at the squeezed end.', from(0, 60, 'seconds')),
  back: about('Seconds for the way back.', from(0, 30, 'seconds')),
});

/** A house number with its mark, so that the record can print where it comes from. */
export function setting<T extends z.ZodType>(value: T) {
  return z.strictObject({
    value: about('The number or word itself.', value),
    mark: about('How sure we are of it.', mark),
    cite: about('Where it stands, when it stands anywhere.', line).optional(),
  });
}

export const POSITIONS = [
  'lying', 'prone', 'raised-bridge', 'bridge', 'standing', 'hinge', 'squat', 'lunge', 'step', 'nordic', 'kneeling',
  'seated', 'ballistic', 'side-lying',
] as const;
export const position = z.enum(POSITIONS);
export type Position = (typeof POSITIONS)[number];

/** What a person may be unable to do; cards name what they need in the same words. */
export const CANNOT_DO = [
  'kneel', 'lie-prone', 'lie-supine', 'get-to-the-floor', 'grip', 'stand-on-one-leg', 'hip-replacement',
  'pregnant-or-postpartum', 'uncontrolled-blood-pressure', 'osteoporosis', 'dizziness',
] as const;
export const cannotDo = z.enum(CANNOT_DO);
export type CannotDo = (typeof CANNOT_DO)[number];

/** What a card may ask for. The first row stands in every home; the second must be in the consult's kit. */
export const HOUSEHOLD = ['floor', 'bed', 'chair', 'wall', 'table', 'towel', 'pillow', 'books', 'stairs'] as const;
export const KIT_WORDS = ['weight', 'dumbbell', 'kettlebell', 'bar', 'band', 'rucksack', 'bench', 'ball', 'step', 'strap', 'partner', 'machine'] as const;
export const equipment = z.enum([...HOUSEHOLD, ...KIT_WORDS]);
export type Equipment = z.output<typeof equipment>;
