/** What the first screen says of a day. */
import { expect, it } from 'vitest';
import { todayWords } from '../../src/messages/en/patient/inUse.ts';
import type { Today } from '../../src/scheduling/today.ts';
import { isoDate } from '../../src/units/date.ts';

const on = (text: string) => isoDate(text)!;
const DATES = { startOn: on('2026-11-24'), reviewOn: on('2026-12-15'), gapDays: 2 };
const TODAY: Today = {
  on: on('2026-11-25'), kind: 'session', moved: null, done: false, lastDoneOn: null, missedOn: null, nextOn: on('2026-11-27'), nextIfDoneOn: null,
}; // prettier-ignore
const RUN = 'easy run on the flat, 5 km';
const NEXT = 'Your next session: Friday 27 November.';

it.each<[string, Partial<Today>, string, string, string[]]>([
  ['a session alone', {}, 'exercises', '', ['Today: exercises', 'Wednesday 25 November.', NEXT]],
  ['with a run', {}, `${RUN}; exercises`, RUN, ['Today: exercises', 'Wednesday 25 November. Easy run on the flat, 5 km; exercises.', NEXT]],
  ['a free day', { kind: 'free' }, '', '', ['Today: a free day', 'Wednesday 25 November. Nothing is planned.', NEXT]],
  ['holds', { kind: 'between' }, 'the holds', '', ['Today: between sessions', 'Wednesday 25 November. The holds.', NEXT]],
  ['before the start, the first day a session', { kind: 'before', on: on('2026-11-22'), nextOn: on('2026-11-24') }, 'exercises', '',
    ['Not begun yet', 'You begin on Tuesday 24 November. Exercises.', 'Today is Sunday 22 November.']],
  ['before the start, the first day a run', { kind: 'before', on: on('2026-11-23'), nextOn: on('2026-11-25') }, RUN, RUN,
    ['Not begun yet', 'You begin on Tuesday 24 November. Easy run on the flat, 5 km.', 'Your first session: Wednesday 25 November.', 'Today is Monday 23 November.']],
  ['the day of the review', { kind: 'after', on: on('2026-12-15'), nextOn: null }, '', '',
    ['Today: your review', 'Tuesday 15 December. Bring your log, or share it before. The plan of this sheet ends here.']],
  ['after it', { kind: 'after', on: on('2026-12-16'), nextOn: null }, '', '',
    ['This sheet has ended', 'Your review was on Tuesday 15 December. Ask for a new sheet before you go on.']],
  ['one that waits, on a day with a run', { kind: 'run', moved: 'waits', lastDoneOn: on('2026-11-24') }, `${RUN}; exercises`, RUN,
    ['Today: no exercises yet', `Wednesday 25 November. Your last session was on Tuesday 24 November, so the one planned for today waits. Leave one clear day between two sessions. Today you have: ${RUN}.`, NEXT]],
  ['one that was left out, and moves the next', { kind: 'free', moved: 'late', missedOn: on('2026-11-24'), nextOn: on('2026-11-26'), nextIfDoneOn: on('2026-11-27') }, '', '',
    ['Today: a free day', 'Wednesday 25 November. Nothing is planned.', 'The session of Tuesday 24 November is not in your log. If you did not do it, you can do it today; your next one is then on Friday 27 November. Leave one clear day between two sessions. Do not do two to catch up.', 'If you do not, your next session: Thursday 26 November.']],
  ['one that was left out, and moves nothing', { kind: 'free', moved: 'late', missedOn: on('2026-11-24'), nextIfDoneOn: on('2026-11-27') }, '', '',
    ['Today: a free day', 'Wednesday 25 November. Nothing is planned.', 'The session of Tuesday 24 November is not in your log. If you did not do it, you can do it today. Leave one clear day between two sessions. Do not do two to catch up.', NEXT]],
])('%s', (_, today, text, runText, [heading = '', ...lines]) => {
  expect(todayWords({ ...TODAY, ...today }, DATES, { text, runText })).toEqual({ heading, lines });
}); // prettier-ignore
