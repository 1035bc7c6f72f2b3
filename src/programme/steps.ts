/** The present step as a table of cells, and of the next two what changes: a preview that the review must open. */
import { morningBands } from '../scheduling/morning.ts';
import {
  changeText,
  datedStepHeading,
  goOnTexts,
  partText,
  partWhenTexts,
  stepCaption,
  stepHeading,
  turnText,
} from './phrases/steps.ts';
import { COLUMN_WORDS } from './phrases/dose.ts';
import type { Decided } from './decide.ts';
import { goOnPain } from './goOnPain.ts';
import type { Shown } from './work.ts';
import type { FollowingPart } from './followingParts.ts';
import type { Prescription } from './prescribe.ts';
import type { CellName, StepTable } from './programme.ts';

/**
 * The present step with every exercise; of the next two only the exercises that change. Of a protocol that goes by weeks
 * its next rungs instead, in full and with their dates.
 */
export function stepTables(decided: Decided): StepTable[] {
  const { shown, following } = decided;
  if (following.length === 0) return ladderTables(decided);
  const [present] = ladderTables({ ...decided, shown: [shown[0]] });
  return [
    ...(present === undefined ? [] : [present]),
    ...following.map((part, index) => partTable(part, following[index - 1]?.shown ?? shown[0], decided)),
  ];
}

function ladderTables({ shown, person: { protocol, consult }, dated }: Decided): StepTable[] {
  // A step is the exercises' turn to grow, in a week in which nothing else does.
  const turns = dated.plan.weeks.filter(({ turn }) => turn.grows === 'exercises' && turn.because === 'turn');
  return shown.map((one, index) => {
    const { rung, prescriptions } = one;
    const present = index === 0;
    return {
      step: rung.step,
      heading: stepHeading(rung.step, present),
      columns: COLUMN_WORDS,
      caption: stepCaption(rung.step, present),
      change: present ? '' : rungText(one),
      // The second preview goes by the same rule as the first.
      goOnWhen:
        index === 1
          ? [
              ...goOnTexts(protocol, morningBands(consult.usualMorningPain, protocol.morningCheck).carryOnTo),
              turnText(turns.map(({ from }) => from)),
            ]
          : [],
      present,
      prescriptions: (present ? prescriptions : changedOn(one)).map((prescription) => ({
        ...printed(prescription),
        news: present ? [] : newsOf(prescription, shown[index - 1]?.prescriptions ?? []),
      })),
    };
  });
}

function partTable(part: FollowingPart, before: Shown, { person }: Decided): StepTable {
  const { protocol, consult } = person;
  const { step, from, name, enters, shown } = part;
  const checkAtMost = morningBands(consult.usualMorningPain, protocol.morningCheck).carryOnTo;
  return {
    step,
    heading: datedStepHeading(step, from),
    columns: COLUMN_WORDS,
    caption: stepCaption(step, false),
    change: partText(enters === null ? rungText(shown) : `${name}.`, step),
    goOnWhen:
      enters === null
        ? goOnTexts(protocol, checkAtMost)
        : partWhenTexts({
            sessions: enters.sessions,
            pain: goOnPain(consult, protocol, enters.painAtMost),
            checkAtMost: enters.settled ? checkAtMost : null,
            checkDays: protocol.goingOn.checkDays.value,
          }),
    present: false,
    // A new stage is printed in full, a further rung by what is new.
    prescriptions: (enters === null ? changedOn(shown) : shown.prescriptions).map((prescription) => ({
      ...printed(prescription),
      news: newsOf(prescription, before.prescriptions),
    })),
  };
}

function rungText({ rung, prescriptions }: Shown): string {
  return changeText(
    rung,
    (slot) => prescriptions.find(({ exercise }) => exercise.slot.name === slot)?.card.title ?? slot,
  );
}

function changedOn({ rung, prescriptions }: Shown): readonly Prescription[] {
  return prescriptions.filter(({ exercise: { slot } }) =>
    rung.changed.some(({ exercise }) => exercise === slot.name),
  );
}

function printed({ card, exercise, cells }: Prescription) {
  return { card: card.id, title: card.title, slot: exercise.slot.name, cells };
}

/** `before`: every exercise of the step before, also those it does not print. */
function newsOf({ card, exercise, cells }: Prescription, before: readonly Prescription[]): CellName[] {
  const last = before.find((one) => one.card.id === card.id && one.exercise.slot.name === exercise.slot.name);
  return cells
    .filter(({ cell, text }) => text !== '' && text !== last?.cells.find((one) => one.cell === cell)?.text)
    .map(({ cell }) => cell);
}
