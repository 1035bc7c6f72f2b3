/** What is still held in a flare: the programme's own holds cut down, or the first hold of the gentlest stage. */
import type { ExerciseCard, Slot } from '../../content/library.ts';
import { flareDose, type FlareDose } from '../../dosing/flareDose.ts';
import { firstDose } from '../candidates/firstDose.ts';
import { isCardLimit } from '../candidates/candidate.ts';
import { firstHold } from '../candidates/morningTask.ts';
import type { Person } from '../person/person.ts';
import type { Prescription } from './prescribe.ts';

export interface FlareHold {
  readonly card: ExerciseCard;
  readonly dose: FlareDose;
  /** The present hold carries a weight, which is left out in a flare. */
  readonly withoutWeight: boolean;
}

/** The most important first, so many as the protocol leaves; empty when nothing less than the present dose is left. */
export function flareHolds(prescriptions: readonly Prescription[], person: Person): readonly FlareHold[] {
  const { setsFactor, holdFactor, holdsAtMost } = person.protocol.flare;
  const rules = { setsFactor: setsFactor.value, holdFactor: holdFactor.value };
  const held = prescriptions.filter(({ at }) => at.dose.holdSeconds !== null);
  if (held.length === 0) return fromTheBeginning(person, rules);
  return held
    .flatMap(({ card, at }) => {
      const dose = flareDose(at.dose, rules);
      return dose === null ? [] : [{ card, dose, withoutWeight: at.loadKg > 0 }];
    })
    .slice(0, holdsAtMost.value);
}

// Held as if it were the first day of all, and then cut down like any other hold.
function fromTheBeginning(person: Person, rules: Parameters<typeof flareDose>[1]): FlareHold[] {
  const found = firstHold(person);
  if (found === null) return [];
  const dose = firstHoldDose(found.slot, found.card, person, rules);
  return dose === null ? [] : [{ card: found.card, dose, withoutWeight: false }];
}

function firstHoldDose(
  slot: Slot,
  card: ExerciseCard,
  person: Person,
  rules: Parameters<typeof flareDose>[1],
): FlareDose | null {
  const first = firstDose(slot, card, person, false);
  return isCardLimit(first) ? null : flareDose(first.dose, rules);
}
