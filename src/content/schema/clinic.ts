/** The clinic file: who sends the leaflet, what to call in an emergency, and local defaults. */
import * as z from 'zod';
import { plausible } from './plausible.ts';
import { about, from, id, LANGUAGES, line, setting, wholeFrom, yesNo } from './words.ts';
import { post } from './post.ts';

// Greatest forces of a body and the least of the hamstrings: what mechanics takes as MuscleSettings.
const muscles = z.strictObject({
  baseMassKg: about(
    'Body mass whose muscles have the published greatest forces; those of others go by their mass over this.',
    setting(from(50, 100, 'kg')),
  ).default({
    value: 75,
    mark: 'secondary',
    cite: 'Handsfield 2014, J Biomech 47:631-638: muscle volume follows mass times height; that force then follows mass is our own step',
  }),
  massFromKg: about('Whoever weighs less counts as of this mass there.', setting(from(30, 75, 'kg'))).default(
    { value: 45, mark: 'choice' },
  ),
  massToKg: about('Whoever weighs more counts as of this mass there.', setting(from(75, 250, 'kg'))).default({
    value: 100,
    mark: 'choice',
  }),
  leastHamstringShare: about(
    "Share of the hip's turning effect that the hamstrings take at the least, however the model would spare them; 0 for none.",
    setting(from(0, 0.9, '')),
  ).default({ value: 0.2, mark: 'choice' }),
});

// Things of a house by which a patient sees how far.
const landmarks = z.strictObject({
  seatAtMostCm: about(
    'The highest thing to sit on that a house has, cushions on it; hips that stay above it are told by another landmark.',
    setting(from(30, 100, 'cm')),
  ).default({ value: 60, mark: 'choice' }),
});

export const clinicSchema = z.strictObject({
  name: about('The name of the clinic.', line),
  contact: about(
    'How to reach it, a line each.',
    z.array(line).min(1, 'at least one way to reach the clinic'),
  ),
  logo: about(
    'A PNG or JPEG file beside this one.',
    z.string().regex(/^[A-Za-z0-9][A-Za-z0-9._-]*\.(png|jpe?g)$/i, 'a PNG or JPEG file name'),
  ).optional(),
  over: about(
    'Write shipped to lay this folder over the library that comes with the program, nothing for a library of its own.',
    z.enum(['shipped', 'nothing']),
  ).optional(),
  languages: about('Languages of leaflets; en is the one there is.', z.array(z.enum(LANGUAGES)).min(1)),
  paper: about('A4 or Letter.', z.enum(['A4', 'Letter'])),
  bodyTypePt: about(
    'Size of running text on paper, points: 11, or 12 for larger.',
    wholeFrom(11, 12),
  ).default(11),
  emergency: about(
    'Emergency wording by two-letter country code.',
    z.record(
      z.string().regex(/^[A-Z]{2}$/, 'a two-letter country code in capitals'),
      z.strictObject({
        country: about('The name of the country.', line),
        emergencyNumber: about(
          'The number for an emergency.',
          z.string().regex(/^[0-9 ]{2,20}$/, 'digits and spaces'),
        ),
        urgentAdvice: about('Whom to ask when it is urgent but no emergency.', line),
        department: about('What people there call the place to go at once.', line),
        foreign: about(
          'Words of these texts in another language than the leaflet, by language tag: they are read aloud in their own.',
          z.record(z.string().regex(/^[a-z]{2,3}(-[A-Z]{2})?$/, 'a language tag such as de'), z.array(line)),
        ).default({}),
      }),
    ),
  ),
  site: about(
    'Where the public folder is published; without it there is no sitemap and no feed, whose addresses must be whole.',
    z.strictObject({
      url: about(
        'The address of the site, https:// and a name.',
        z
          .string()
          .regex(/^https:\/\/[a-z0-9.-]+(:[0-9]+)?$/, 'https:// and the name of a site, no slash behind it'),
      ),
      pathPrefix: about(
        'The folder of that site it lies in, with a slash before and behind.',
        z.string().regex(/^\/([A-Za-z0-9._~-]+\/)*$/, 'a path with a slash before and behind'),
      ).default('/'),
      feedEntries: about('Entries of the feed at most, the newest.', wholeFrom(1, 500)).default(50),
    }),
  ).optional(),
  defaults: about(
    'Local defaults.',
    z.strictObject({
      oneRepetitionMaximum: about('epley or brzycki.', z.enum(['epley', 'brzycki'])),
      dumbbellsUsedInPairs: about('Are two equal dumbbells used together?', yesNo),
      adviceAtMost: about('Advice cards on one leaflet at most.', wholeFrom(0, 12)).default(3),
      bandNewtons: about(
        'Bands by name with the force the clinic measured, newtons.',
        z.record(id, from(1, 1000, 'N')),
      ),
      country: about(
        'The country a new consult begins with at the desk.',
        z.string().regex(/^[A-Z]{2}$/, 'a two-letter country code in capitals'),
      ).optional(),
      clinician: about('The clinician the desk offers for a new consult.', line).optional(),
      reviewAfterWeeks: about(
        'Weeks to the review that the desk offers.',
        wholeFrom(1, 26, 'weeks'),
      ).optional(),
      minutesPerDay: about('Minutes a day that the desk offers.', from(5, 180, 'minutes')).optional(),
      setUpSeconds: about('Seconds to get ready for an exercise.', from(0, 600, 'seconds')),
      sideChangeSeconds: about('Seconds to change sides.', from(0, 120, 'seconds')),
    }),
  ),
  muscles: about('How strong the body model takes the muscles of a person to be.', muscles).prefault({}),
  landmarks: about('What a house has to see by how far to go.', landmarks).prefault({}),
  post: about('What goes to the patient by mail and calendar.', post).prefault({}),
  plausible: about(
    'Where a value of a consult stops being plausible: beyond it is an error until the consult confirms it.',
    plausible,
  ).prefault({}),
});

/** The muscles of a folder without a clinic file. */
export const HOUSE_MUSCLES = muscles.parse({});

export type ClinicFrontMatter = z.output<typeof clinicSchema>;
