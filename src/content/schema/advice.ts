/** An advice card: one thing worth saying, and when to say it. */
import * as z from 'zod';
import { about, angle, CANNOT_DO, changed, line, source, title } from './words.ts';

/** When an advice card stands on a leaflet. */
export const SHOW_WHEN = [
  'always',
  'treatment',
  'runs',
  'sits',
  'stretches',
  'stage-1',
  'stage-2',
  'stage-3',
  'stage-4',
  'keep',
  'flare',
  'both-sides',
  'under-18',
  'drives',
  'no-weights',
  'prevention',
] as const;

/** What advice may have to give way to: a cannot-do word, or what holds for the person. */
export const CIRCUMSTANCES = [
  ...CANNOT_DO,
  'gentle',
  'no-weights',
  'no-running',
  'pregnant',
  'after-birth',
  'bends',
  'sudden',
] as const;
export type Circumstance = (typeof CIRCUMSTANCES)[number];
const circumstances = z.array(z.enum(CIRCUMSTANCES)).min(1, 'at least one word');

export const adviceSchema = z.strictObject({
  title: about('The heading as the patient reads it.', title),
  showWhen: about(
    'When it stands on a leaflet; one of these is enough.',
    z.array(z.enum(SHOW_WHEN)).min(1, 'at least one occasion'),
  ),
  angle: about('For tendons that this joint angle squeezes; for all when left out.', angle).optional(),
  notWhen: about(
    'People it is not for: a cannot-do word, or gentle (blood pressure, a medicine, pregnancy, the first weeks after birth), no-weights, no-running, pregnant, after-birth, bends (a stage that holds the hip bend small no more), sudden (it began in one moment).',
    circumstances,
  ).default([]),
  givesWay: about(
    'Sentences of the body that are not for everybody.',
    z.array(
      z.strictObject({
        entry: about('The paragraph or list entry, word for word.', line),
        when: about('For whom it is left out, in the words of notWhen.', circumstances),
        instead: about('What stands there instead; nothing when left out.', line).optional(),
      }),
    ),
  ).default([]),
  changed: about('What was changed when; the feed of the site tells of it.', changed),
  sources: about('What it rests on.', z.array(source).min(1, 'at least one source')),
});

export type AdviceFrontMatter = z.output<typeof adviceSchema>;
