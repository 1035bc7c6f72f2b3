/** The easier numbers of the present step, for after a flare, two bad mornings or missed days. */
import { easeBack } from '../../dosing/easeBack.ts';
import type { CellName } from '../terms/cell.ts';
import { howFar } from './howFar.ts';
import type { Person } from '../person/person.ts';
import { countedAs, doseWords, loadText } from '../../messages/en/patient/dose.ts';
import { LESS_FAR } from '../../messages/en/patient/landmarks.ts';
import { loadOf, type Prescription } from './prescribe.ts';

/** Exercise, dose, weight and how far, a row each. */
export function easierRows(prescriptions: readonly Prescription[], person: Person): string[][] {
  return prescriptions.map((one) => {
    const { card, at, byFeel, howFar: now } = one;
    const easier = easierOf(one, person);
    const weight = byFeel
      ? 'a lighter one than last time, or none'
      : loadText(easier.loadKg, loadOf({ card, at: easier }, person)?.made ?? null);
    const far =
      easier.rangeDeg === at.rangeDeg ? (now[0] ?? '') : lessFar(now, howFar(card, easier, person).texts);
    return [card.title, doseWords(easier.dose, countedAs(card)), weight, far];
  });
}

/** The cells that easing back changes, with their numbers. */
export interface EasedExercise {
  readonly card: string;
  readonly cells: Readonly<Partial<Record<CellName, number>>>;
}

/** The same as numbers, for a next revision that goes no step back. */
export function easedExercises(prescriptions: readonly Prescription[], person: Person): EasedExercise[] {
  return prescriptions.map((one) => {
    const { card, at, byFeel } = one;
    const { dose, loadKg, rangeDeg } = easierOf(one, person);
    return {
      card: card.id,
      cells: {
        ...(dose.sets === at.dose.sets ? {} : { sets: dose.sets }),
        ...(byFeel || loadKg === at.loadKg ? {} : { loadKg }),
        ...(rangeDeg === null || rangeDeg === at.rangeDeg
          ? {}
          : { [`${person.model.guardedBy}Deg`]: rangeDeg }),
      },
    };
  });
}

function easierOf({ exercise, card, at }: Prescription, { protocol }: Person): Prescription['at'] {
  const { setsFactor, loadFactor, rangeLessDeg } = protocol.easeBack;
  const ladderCard = exercise.ladder.cards.find((one) => one.card === card.id);
  if (ladderCard === undefined) return at;
  return easeBack(at, ladderCard, {
    setsFactor: setsFactor.value,
    loadFactor: loadFactor.value,
    rangeLessDeg: rangeLessDeg.value,
  });
}

// Rounded to whole pillows a shorter way may have the landmark of the longer one.
function lessFar([now]: readonly string[], [easier]: readonly string[]): string {
  return easier === undefined || easier === now ? LESS_FAR : easier;
}
