/** The easier numbers of the present step, for after a flare or two bad mornings. */
import { easeBack } from '../dose/easeBack.ts';
import { landmarks } from '../mechanics/landmark.ts';
import { stretchFrom } from '../mechanics/sweep.ts';
import { distanceTo, isPosed } from './model.ts';
import type { Person } from './person.ts';
import { doseWords } from './phrases/dose.ts';
import { madeText } from './phrases/kit.ts';
import { landmarkText } from './phrases/landmarks.ts';
import type { Prescription } from './prescribe.ts';
import type { Session } from './session.ts';

/** Exercise, dose, weight and how far, a row each. */
export function easierRows(
  session: Session,
  prescriptions: readonly Prescription[],
  person: Person,
): string[][] {
  const { setsFactor, loadFactor, rangeLessDeg } = person.protocol.easeBack;
  const rules = {
    setsFactor: setsFactor.value,
    loadFactor: loadFactor.value,
    rangeLessDeg: rangeLessDeg.value,
  };
  return prescriptions.map((one, index) => {
    const { at, card, choice } = one;
    const exercise = session.exercises[index];
    const ladderCard = exercise?.cards.find((candidate) => candidate.card === at.card);
    const easier = ladderCard === undefined ? at : easeBack(at, ladderCard, rules);
    const load = choice.fit.loads.find(({ loadKg }) => loadKg === easier.loadKg);
    const weight = choice.fit.load.byFeel ? 'a lighter one' : load === undefined ? '-' : madeText(load.made);
    return [card.title, doseWords(easier.dose), weight, farText(one, easier.rangeDeg, easier.loadKg, person)];
  });
}

function farText(
  { card, at, howFar }: Prescription,
  rangeDeg: number | null,
  loadKg: number,
  { body, model }: Person,
): string {
  if (!isPosed(card) || rangeDeg === at.rangeDeg) return howFar[0] ?? 'as now';
  const gentleEnd = model.gentleEnd(card);
  const [first] = landmarks(
    card.movement,
    body,
    loadKg,
    stretchFrom(gentleEnd, distanceTo(card, rangeDeg, gentleEnd)),
  );
  return first === undefined ? 'as now' : landmarkText(first);
}
