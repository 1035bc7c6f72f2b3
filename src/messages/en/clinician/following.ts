/** What the record says of a protocol that goes by weeks: its dated rungs, where they end, with what pain to go on. */
import type { FollowingPart, StoppedAt } from '../../../decisions/days/followingParts.ts';
import { refusalWords } from './refusals.ts';
import type { GoOnPain } from '../../../decisions/screen/goOnPain.ts';

/** @example 'The plan goes on by weeks: Week 2 from 2026-12-01 (step 2); step 3 from 2026-12-08.' */
export function partsText(parts: readonly FollowingPart[]): string {
  const texts = parts.map(({ step, name, from, enters }) =>
    enters === null ? `step ${step} from ${from}` : `${name} from ${from} (step ${step})`,
  );
  return `The plan goes on by weeks: ${texts.join('; ')}.`;
}

/** A rung that cannot be made, and what stands against it. */
export function stoppedText(
  { from, name, step, refusals }: StoppedAt,
  testNameOf: (test: string) => string,
): string {
  const said = refusals.map(({ why }) => refusalWords(why, testNameOf));
  const why = said.map(({ found, expected }) => `${found}; asked for: ${expected}`).join(' ');
  return `The plan stays on step ${step} until the review: what comes next (${name}, due from ${from}) cannot be made for this person. ${why}`;
}

/** Why the leaflet asks for another pain than the protocol. */
export function goOnPainText({ atMost, usualOnly }: GoOnPain, painAtMost: number): string {
  return usualOnly
    ? `Going on: the protocol asks for pain of ${painAtMost} or less; by the rule of usual pain it is no more than usual here (${atMost}), settled by the evening.`
    : `Going on: the protocol asks for pain of ${painAtMost} or less; usual pain is ${atMost}, so it is ${atMost} here.`;
}
