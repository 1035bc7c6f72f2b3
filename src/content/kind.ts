/** The six kinds of file: where they stand, what their front matter must hold, which headings their body has. */
import type { Refusal } from '../units/refusal.ts';
import { adviceSchema } from './schema/advice.ts';
import { clinicSchema } from './schema/clinic.ts';
import { consultSchema } from './schema/consult.ts';
import { exerciseSchema } from './schema/exercise.ts';
import { pageSchema } from './schema/page.ts';
import { protocolSchema } from './schema/protocol.ts';

export type Kind = Refusal['kind'];

export const SCHEMAS = {
  exercise: exerciseSchema,
  advice: adviceSchema,
  protocol: protocolSchema,
  clinic: clinicSchema,
  consult: consultSchema,
  page: pageSchema,
} as const;

/** Folders below the content folder; the clinic file stands beside them. */
export const FOLDERS = {
  exercise: 'exercises',
  advice: 'advice',
  protocol: 'protocols',
  consult: 'consults',
  page: 'pages',
} as const;

export const CLINIC_FILE = 'clinic.md';
