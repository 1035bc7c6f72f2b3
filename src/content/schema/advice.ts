/** An advice card: one thing worth saying, and when to say it. */
import { z } from 'zod';
import { about, angle, source, title } from './words.ts';

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

export const adviceSchema = z.strictObject({
  title: about('The heading as the patient reads it.', title),
  showWhen: about(
    'When it stands on a leaflet; one of these is enough.',
    z.array(z.enum(SHOW_WHEN)).min(1, 'at least one occasion'),
  ),
  angle: about('For tendons that this joint angle squeezes; for all when left out.', angle).optional(),
  sources: about('What it rests on.', z.array(source).min(1, 'at least one source')),
});

export type AdviceFrontMatter = z.output<typeof adviceSchema>;
