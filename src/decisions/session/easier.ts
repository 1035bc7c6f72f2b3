/** The easier numbers of the present step, for after a flare, two bad mornings or missed days. */
import { easeBack } from '../../dosing/easeBack.ts';
import { howFar } from './howFar.ts';
import type { Person } from '../person/person.ts';
import { countedAs, doseWords, loadText } from '../../messages/en/patient/dose.ts';
import { LESS_FAR } from '../../messages/en/patient/landmarks.ts';
import { loadOf, type Prescription } from './prescribe.ts';

/** Exercise, dose, weight and how far, a row each. */
export function easierRows(prescriptions: readonly Prescription[], person: Person): string[][] {
  const { setsFactor, loadFactor, rangeLessDeg } = person.protocol.easeBack;
  const rules = {
    setsFactor: setsFactor.value,
    loadFactor: loadFactor.value,
    rangeLessDeg: rangeLessDeg.value,
  };
  return prescriptions.map(({ exercise, card, at, byFeel, howFar: now }) => {
    const ladderCard = exercise.ladder.cards.find((one) => one.card === card.id);
    const easier = ladderCard === undefined ? at : easeBack(at, ladderCard, rules);
    const weight = byFeel
      ? 'a lighter one than last time, or none'
      : loadText(easier.loadKg, loadOf({ card, at: easier }, person)?.made ?? null);
    const far =
      easier.rangeDeg === at.rangeDeg ? (now[0] ?? '') : lessFar(now, howFar(card, easier, person).texts);
    return [card.title, doseWords(easier.dose, countedAs(card)), weight, far];
  });
}

// In whole centimetres a shorter way may have the landmark of the longer one.
function lessFar([now]: readonly string[], [easier]: readonly string[]): string {
  return easier === undefined || easier === now ? LESS_FAR : easier;
}
