/** The present step as a table of cells, and of the next two what changes: a preview that the review must open. */
import type { Messages } from '../messages/messages.ts';
import { morningBands } from '../scheduling/morning.ts';

import { CELLS, type CellName } from '../decisions/terms/cell.ts';
import { type Person, cardOf } from '../decisions/person/person.ts';

import { cellsInWords } from './cells.ts';

import { countedAs } from '../decisions/session/counted.ts';
import type { Decided } from '../decisions/decide.ts';
import type { Shown } from '../decisions/days/work.ts';
import type { FollowingPart } from '../decisions/days/followingParts.ts';
import type { Prescription } from '../decisions/session/prescribe.ts';
import { goOnPain } from '../decisions/screen/goOnPain.ts';
import type { StepTable } from './programme.ts';

/**
 * The present step with every exercise; of the next two only the exercises that change. Of a protocol that goes by weeks
 * its next rungs instead, in full and with their dates.
 */
export function stepTables(say: Messages, decided: Decided): StepTable[] {
  const { shown, following } = decided;
  if (following.length === 0) return ladderTables(say, decided);
  const [present] = ladderTables(say, { ...decided, shown: [shown[0]] });
  return [
    ...(present === undefined ? [] : [present]),
    ...following.map((part, index) => partTable(say, part, following[index - 1]?.shown ?? shown[0], decided)),
  ];
}

function ladderTables(say: Messages, { shown, person, dated }: Decided): StepTable[] {
  const { protocol, consult } = person;
  // A step is the exercises' turn to grow, in a week in which nothing else does.
  const turns = dated.plan.weeks.filter(({ turn }) => turn.grows === 'exercises' && turn.because === 'turn');
  return shown.map((one, index) => {
    const { rung, prescriptions } = one;
    const present = index === 0;
    return {
      step: rung.step,
      heading: say.stepHeading(rung.step, present),
      columns: say.columnsFor(person.model.guardedBy),
      caption: say.stepCaption(rung.step, present),
      change: present ? '' : rungText(say, one, person),
      // The second preview goes by the same rule as the first.
      goOnWhen:
        index === 1
          ? [
              ...say.goOnTexts(
                protocol,
                morningBands(consult.usualMorningPain, protocol.morningCheck).carryOnTo,
              ),
              say.turnText(turns.map(({ from }) => from)),
            ]
          : [],
      present,
      prescriptions: (present ? prescriptions : changedOn(one)).map((prescription) => ({
        ...printed(say, prescription, person),
        news: present ? [] : newsOf(say, prescription, shown[index - 1]?.prescriptions ?? []),
      })),
    };
  });
}

function partTable(say: Messages, part: FollowingPart, before: Shown, { person }: Decided): StepTable {
  const { protocol, consult } = person;
  const { step, from, name, enters, shown } = part;
  const checkAtMost = morningBands(consult.usualMorningPain, protocol.morningCheck).carryOnTo;
  return {
    step,
    heading: say.datedStepHeading(step, from),
    columns: say.columnsFor(person.model.guardedBy),
    caption: say.stepCaption(step, false),
    change: say.partText(enters === null ? rungText(say, shown, person) : `${name}.`, step),
    goOnWhen:
      enters === null
        ? say.goOnTexts(protocol, checkAtMost)
        : say.partWhenTexts({
            sessions: enters.sessions,
            pain: goOnPain(consult, protocol, enters.painAtMost),
            checkAtMost: enters.settled ? checkAtMost : null,
            checkDays: protocol.goingOn.checkDays.value,
          }),
    present: false,
    // A new stage is printed in full, a further rung by what is new.
    prescriptions: (enters === null ? changedOn(shown) : shown.prescriptions).map((prescription) => ({
      ...printed(say, prescription, person),
      news: newsOf(say, prescription, before.prescriptions),
    })),
  };
}

function rungText(say: Messages, { rung, prescriptions }: Shown, person: Person): string {
  return say.changeText(rung, {
    titleOf: (slot) => prescriptions.find(({ exercise }) => exercise.slot.name === slot)?.card.title ?? slot,
    countedOf: (card) => countedAs(cardOf(person, card)),
    cardTitleOf: (card) => cardOf(person, card).title,
  });
}

function changedOn({ rung, prescriptions }: Shown): readonly Prescription[] {
  return prescriptions.filter(({ exercise: { slot } }) =>
    rung.changed.some(({ exercise }) => exercise === slot.name),
  );
}

function printed(say: Messages, one: Prescription, person: Person) {
  const { card, exercise } = one;
  return {
    card: card.id,
    title: card.title,
    slot: exercise.slot.name,
    cells: cellsInWords(say, one, person),
  };
}

/** `before`: every exercise of the step before, also those it does not print. */
function newsOf(say: Messages, one: Prescription, before: readonly Prescription[]): CellName[] {
  const last = before.find(
    ({ card, exercise }) => card.id === one.card.id && exercise.slot.name === one.exercise.slot.name,
  );
  const [texts, old] = [say.cellTexts(one), last === undefined ? null : say.cellTexts(last)];
  return CELLS.filter((cell) => texts[cell] !== '' && texts[cell] !== old?.[cell]);
}
