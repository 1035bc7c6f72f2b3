/** Pain rule, morning check, flare, missed days and when to get help, with this person's own numbers worked out. */
import type { MorningBands } from '../../week/morning.ts';
import type { Section } from '../programme.ts';
import { countText, list, paragraph, section, table } from './plain.ts';

/** Pain 0-10 during exercise that is all right for this person. */
export interface PainLimits {
  readonly atMost: number;
  readonly neverAbove: number;
}

export function painRuleText({ atMost, neverAbove }: PainLimits): Section {
  return section('pain-rule', 'How much pain is all right', [
    paragraph(
      `While you exercise, pain up to ${atMost} out of 10 is all right. Above that, do less.`,
      'strong',
    ),
    list([
      atMost < neverAbove
        ? `At ${atMost + 1} to ${neverAbove}: finish the set, and do not add anything next time.`
        : 'Do not add anything next time if you reach that number.',
      `Above ${neverAbove}: stop that exercise for today.`,
      'Tingling or numbness down the leg: stop that exercise, and tell us.',
    ]),
    paragraph(
      'Sore is not the same as harmed. Bending is normal, and it comes back. For now we turn the volume down; it is not a ban.',
    ),
  ]);
}

export function morningCheckText(
  bands: MorningBands,
  task: string,
  repetitions: number,
  contactAfterDays: number,
  risingDays: number,
): Section {
  const { usual, carryOnTo, sameAgain, easeBackFrom } = bands;
  const score = (low: number, high: number) => (low === high ? `${low}` : `${low} to ${high}`);
  const rows: string[][] = [[score(0, carryOnTo), 'Carry on as planned.']];
  if (sameAgain !== null) {
    rows.push([
      score(...sameAgain),
      'Once: do the same again, add nothing. Two mornings running: ease back.',
    ]);
  }
  rows.push([`${easeBackFrom} or more`, 'Ease back: use the easier numbers.']);
  const parts = [
    paragraph(
      `Every morning at the same time, do this slowly ${repetitions} times: ${task}. Score the pain from 0 to 10. Your usual is ${usual}.`,
    ),
    table('What your score tells you', ['Score', 'What to do'], rows),
    paragraph('In the first week, just write the score down. That shows what is usual for you.'),
  ];
  return section('morning-check', 'Morning check', [
    ...parts,
    paragraph(
      `Get in touch if it has not settled within ${countText(contactAfterDays, 'day')}, or if it has been rising for ${countText(Math.round(risingDays / 7), 'week')}.`,
    ),
  ]);
}

/** Exercise, sets, weight and how far when easing back. */
export function easierText(rows: readonly (readonly string[])[]): Section {
  return section('easier', 'The easier numbers', [
    paragraph('Use these when the morning check or a flare tells you to ease back. Go up again when you are back to your usual.'),
    table('Your exercises, eased back', ['Exercise', 'Dose', 'Weight', 'How far'], rows),
  ]);
}

export function flareText(
  days: { from: number; to: number },
  holds: readonly string[],
  sittingMinutes: number | null,
  runs: boolean,
): Section {
  const lines = [
    holds.length > 0
      ? `For ${days.from} to ${days.to} days do only this: ${holds.join('; ')}.`
      : `For ${days.from} to ${days.to} days leave the exercises out, and keep gently on the move.`,
    ...(runs ? ['Walk instead of running.'] : []),
    sittingMinutes === null
      ? 'Sit as little as you can.'
      : `Sit for at most ${countText(sittingMinutes, 'minute')} at a time.`,
    'When the morning check is back to your usual, start again with the easier numbers.',
  ];
  return section('flare', 'If it flares up', [
    paragraph('A flare is a bad spell, not a step back to the start. It passes.'),
    list(lines),
  ]);
}

export function missedDaysText(sameUnder: number, oneBackUpTo: number): Section {
  return section('missed-days', 'If you miss days', [
    list([
      `Fewer than ${sameUnder} days: carry on where you were.`,
      `${sameUnder} to ${oneBackUpTo} days: start again with the easier numbers.`,
      `More than ${oneBackUpTo} days, or after a fever: get in touch before you start again.`,
    ]),
    paragraph('A late session moves the next one on. There is nothing to catch up.'),
  ]);
}

export function getHelpText(
  contact: readonly string[],
  risingDays: number,
  contactAfterDays: number,
): Section {
  return section('get-help', 'When to get in touch', [
    list([
      `The pain has not settled within ${countText(contactAfterDays, 'day')}, or has been rising for ${countText(Math.round(risingDays / 7), 'week')}.`,
      'Pain wakes you at night, or you have a fever.',
      'Tingling, numbness or weakness in the leg.',
      'One spot of bone hurts, or it hurts to hop.',
    ]),
    paragraph(contact.join(' · ')),
  ]);
}
