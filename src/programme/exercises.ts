/** The present step's exercises as the patient sees them. */
import type { Messages } from '../messages/messages.ts';
import type { Slot } from '../content/library.ts';
import type { Dose } from '../dosing/dose.ts';
import type { IsoDate } from '../units/date.ts';
import { beginsOn } from '../decisions/days/beginning.ts';
import type { Decided } from '../decisions/decide.ts';

import { countedAs, type Counted } from '../decisions/session/counted.ts';

import { cellsInWords } from './cells.ts';
import { figureText } from './figureText.ts';
import { cardWords } from './cardWords.ts';

import { painfulSide, type Person } from '../decisions/person/person.ts';
import type { Prescription } from '../decisions/session/prescribe.ts';
import type { Cell, Exercise } from './programme.ts';
import type { CellName } from '../decisions/terms/cell.ts';

/** Facts that stand beside the big dose; how far stands with the picture. */
const FACTS: readonly CellName[] = ['loadKg', 'tempo', 'restSeconds', 'reserve', 'timesPerDay', 'days'];

/**
 * In the order of the session, one entry for each prescription; then what later rungs of a protocol by weeks bring that
 * is not among them, so that nothing on the leaflet is without its picture and words.
 */
export function exercisesOf(say: Messages, { person, shown, following, dated }: Decided): Exercise[] {
  const [{ prescriptions }] = shown;
  const begins = ({ exercise: { slot } }: Prescription) =>
    slot.when === 'session' ? beginsOn(dated, slot.name) : null;
  const there = new Set(prescriptions.map(({ card }) => card.id));
  const later = following.flatMap((part) => {
    const fresh = part.shown.prescriptions.filter(({ card }) => !there.has(card.id));
    fresh.forEach(({ card }) => there.add(card.id));
    return exerciseTexts(say, fresh, person, () => part.from);
  });
  return [...exerciseTexts(say, prescriptions, person, begins), ...later];
}

function exerciseTexts(
  say: Messages,
  prescriptions: readonly Prescription[],
  person: Person,
  beginsOnOf: (one: Prescription) => IsoDate | null,
): Exercise[] {
  const explained = prescriptions.find(({ picture }) => picture !== null && say.showsAngle(picture.scene));
  return prescriptions.map((one) => {
    const { card, exercise, at, byFeel, howFar, picture } = one;
    const cells = cellsInWords(say, one, person);
    const side = say.sideText(card, card.legs === 'together' ? 'both' : painfulSide(person.consult));
    return {
      card: card.id,
      title: card.title,
      slot: exercise.slot.name,
      side,
      between: besideOf(say, exercise.slot.when, textOf(cells, 'days'), beginsOnOf(one)),
      ...doseOf(say, at.dose, countedAs(card)),
      figures: figureText(say, card.title, side, picture, one === explained),
      howFar: howFar.map(say.howFarText),
      facts: FACTS.flatMap((name) => {
        const text = textOf(cells, name);
        return text === '' ? [] : [{ label: say.COLUMN_WORDS[name], text, cell: name }];
      }),
      ...cardWords(say, card, byFeel || at.loadKg > 0),
      cells,
    };
  });
}

/** The dose in big type and in words, whole and by its parts. */
function doseOf(
  say: Messages,
  dose: Dose,
  counted: Counted,
): Pick<Exercise, 'dose' | 'doseSign' | 'doseWords' | 'doseParts'> {
  const sign = say.doseSign(dose, counted);
  return {
    dose: `${sign.figures}${sign.sign}${sign.unit}`,
    doseSign: sign,
    doseWords: say.doseWords(dose, counted),
    doseParts: say.doseParts(dose, counted),
  };
}

/** What an exercise that is no part of the next session says of its days. */
function besideOf(
  say: Messages,
  when: Slot['when'],
  days: string,
  begins: IsoDate | null,
): Exercise['between'] {
  if (begins !== null) return { label: say.BEGINS, text: say.weekdayAndDay(begins) };
  return when === 'between' ? { label: say.BETWEEN_SESSIONS, text: days } : null;
}

function textOf(cells: readonly Cell[], name: CellName): string {
  return cells.find(({ cell }) => cell === name)?.text ?? '';
}
