/** What stands around a review at the desk; the review's own sentences are in `clinician/review.ts`. */

export const REVIEW_TITLE = 'Review';
export const REVIEW_ON = 'Seen on';
export const REVIEW_LEAD =
  'A proposal from what was written down. Today’s tests and you decide; stage and step of the draft can be changed.';
export const REVIEW_NONE = 'The review comes once the consult has its programme.';
export const TO_ASK = 'To ask';

/** @example nextRevisionText(2) // => 'Write revision 2 as a draft' */
export function nextRevisionText(revision: number): string {
  return `Write revision ${revision} as a draft`;
}

export function draftLiesText(file: string, before: string): string {
  return `${file} lies on the desk as a draft, not saved yet. Ask what is empty, then take the draft mark out. ${before} stays as it was.`;
}

/** A screen item of a draft, or all of them. */
export function notAskedYet(path: string) {
  return { path, found: 'notAsked', expected: 'no or yes', fix: 'ask, and press no or yes' };
}

/** Once everything of a draft has been asked. */
export const STILL_DRAFT = {
  path: 'draft',
  found: 'yes',
  expected: 'taken out when everything has been asked',
  fix: 'press no, or take it out',
} as const;
