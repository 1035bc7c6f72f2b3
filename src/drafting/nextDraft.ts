/** The file of the next revision, as a draft. */
import type { Nameable } from '../content/library.ts';
import { lastingPaths } from '../content/plausible/lasting.ts';
import type { IsoDate } from '../units/date.ts';
import { nextRevision, type LastRevision } from './nextRevision.ts';
import { withReview, type Reviewed } from './reviewedDraft.ts';
import { fileOf } from './starter.ts';

export interface DraftWish {
  readonly revision: number;
  readonly today: IsoDate;
  /** The way from the file to its JSON Schema. */
  readonly schema: string;
  /** What a review led to; null without one. */
  readonly reviewed: Reviewed | null;
}

export function nextDraft(last: LastRevision, known: Nameable, wish: DraftWish): string {
  const { revision, today, schema, reviewed } = wish;
  const plain = nextRevision(last, revision, today, lastingPaths(last.consult, known));
  const content = reviewed === null ? plain : withReview(plain, reviewed, last.consult);
  return fileOf('consult', content, schema);
}
