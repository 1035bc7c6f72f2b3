/** What goes to the patient by mail, calendar and link, and how the clinic wants it. */
import * as z from 'zod';
import { about, line, setting, wholeFrom, yesNo } from './words.ts';

// A mail box as RFC 5321 gives it, without quotes and comments; of ASCII only, since not every server takes more.
export const MAIL_ADDRESS =
  /^[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+(?:\.[A-Za-z0-9!#$%&'*+/=?^_`{|}~-]+)*@[A-Za-z0-9-]+(?:\.[A-Za-z0-9-]+)+$/;

const clock = z
  .string('an hour in quotes, such as "18:00"')
  .regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'an hour in quotes, such as "18:00"');

const calendar = z.strictObject({
  titles: about(
    'neutral says "Exercises" and "Run" only, since a calendar shows on a locked screen; telling says what is planned.',
    z.enum(['neutral', 'telling']),
  ).default('neutral'),
  exercisesAt: about('When exercises stand in the calendar, local time.', setting(clock)).default({
    value: '18:00',
    mark: 'choice',
  }),
  runsAt: about('When runs and races stand in the calendar, local time.', setting(clock)).default({
    value: '08:00',
    mark: 'choice',
  }),
  holdsMinutes: about(
    'How long a day with holds alone lasts in the calendar.',
    setting(wholeFrom(1, 120, 'minutes')),
  ).default({ value: 15, mark: 'choice' }),
  runMinutes: about(
    'How long a run lasts in the calendar where the plan gives kilometres.',
    setting(wholeFrom(1, 600, 'minutes')),
  ).default({ value: 60, mark: 'choice' }),
  alarmMinutes: about(
    'Minutes before it at which the phone reminds; none for no reminder.',
    setting(z.union([wholeFrom(0, 1440, 'minutes'), z.literal('none')])),
  ).default({ value: 15, mark: 'choice' }),
});

export const post = z.strictObject({
  from: about(
    'The mail address the message comes from; left out, the first one among the contact lines.',
    z.string().max(200).regex(MAIL_ADDRESS, 'a mail address, such as desk@larkfield.example'),
  ).optional(),
  subject: about('The subject of the message; nothing clinical in it.', line).optional(),
  attachPdf: about('Is the PDF attached to the message?', yesNo).default(true),
  attachPage: about('Is the page attached to the message?', yesNo).default(false),
  attachCalendar: about('Is the calendar attached to the message?', yesNo).default(true),
  calendar: about('How the dated plan stands in a calendar.', calendar).prefault({}),
  words: about('Does a sealed leaflet ask for five words too, which are told by telephone?', yesNo).default(
    false,
  ),
  fridge: about('Is the one-page sheet for the fridge made?', yesNo).default(false),
});

export type PostSettings = z.output<typeof post>;
