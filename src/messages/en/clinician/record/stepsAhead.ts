/** The rest of the stage's ladder and the earliest dates, for the clinician. */
import type { Decided } from '../../../../decisions/decide.ts';
import { cardOf } from '../../../../decisions/person/person.ts';
import { countText } from '../../plain.ts';
import { paragraph, section, table, type Section } from '../../../shapes.ts';
import { limitText, openEndRemark } from '../remarks.ts';
import { countedAs } from '../../../../decisions/session/counted.ts';
import { amountText, changeText } from '../../patient/steps.ts';
import { CHANGE_KINDS, type ChangeKind } from '../../../../dosing/dose.ts';
import { amountOf, type Rung } from '../../../../dosing/rung.ts';

// More than a dozen weeks ahead nobody reads row by row; the review comes long before.
const MOST_ROWS = 12;

/** What the stage asks before the next, its remaining steps, and no stage earlier than it can be. */
export function stepsAhead({ person, course, session, step, outlook, bounds }: Decided): Section {
  const ahead = session.ladder.rungs.slice(step);
  const rows = ahead.slice(0, MOST_ROWS).map((rung) => [
    String(rung.step),
    changeText(rung, {
      titleOf: (slot) => slot,
      countedOf: (card) => countedAs(cardOf(person, card)),
      cardTitleOf: null,
    }),
    rung.changed
      .map(
        ({ exercise, from, to, stoppedBy }) =>
          `${exercise}: ${amountText(from)} to ${amountText(to)}${stoppedBy === null ? '' : ` (not more: ${limitText(stoppedBy)})`}`,
      )
      .join('; '),
  ]);
  const dates = outlook.dates.map(({ name, earliestOn, usuallyFrom, usuallyTo }) => [
    name === 'end' ? 'All stages done' : name,
    earliestOn,
    `${usuallyFrom} to ${usuallyTo}`,
  ]);
  return section('steps-ahead', 'Steps ahead', [
    paragraph(
      `The ladder of this stage has ${countText(session.ladder.rungs.length, 'step')} for this person.`,
    ),
    ...(course === 'treatment' ? [paragraph(`To go on from here: ${bounds.stage.exit.words}`)] : []),
    ...(rows.length === 0 ? [] : [table('Steps of the ladder', ['Step', 'Change', 'From and to'], rows)]),
    ...(ahead.length > rows.length
      ? [
          paragraph(
            `These are the next ${rows.length}; ${countText(ahead.length - rows.length, 'step')} more can follow, by small steps up to: ${restText(ahead, rows.length)}.`,
          ),
        ]
      : []),
    ...(outlook.openEnd === null ? [] : [paragraph(openEndRemark(outlook.openEnd))]),
    ...(dates.length < 2 || outlook.openEnd !== null
      ? []
      : [table('Earliest dates', ['Stage', 'Not before', 'Usually begins'], dates)]),
  ]);
}

const AMOUNT_WORDS: Readonly<Record<ChangeKind, string>> = {
  lever: '',
  load: ' kg',
  range: '°',
  repetitions: ' repetitions',
  hold: ' s',
  sets: ' sets',
  tempo: ' (pace)',
  days: ' days a week',
};

/** Where each exercise ends, as far as the steps that are not listed change it. @example 'Heavy bow 50 kg, 105°; Calf 20 repetitions' */
function restText(ahead: readonly Rung[], listed: number): string {
  const [from, to] = [ahead[listed - 1], ahead.at(-1)];
  return (to?.exercises ?? [])
    .flatMap((end, index) => {
      const before = from?.exercises[index];
      const amounts = CHANGE_KINDS.flatMap((change) => {
        const amount = amountOf(change, end);
        return amount === null || (before !== undefined && amountOf(change, before) === amount)
          ? []
          : [`${amountText(amount)}${AMOUNT_WORDS[change]}`];
      });
      return amounts.length === 0 ? [] : [`${end.exercise} ${amounts.join(', ')}`];
    })
    .join('; ');
}
