/** The present step's exercises as the patient sees them. */
import { countedAs, doseSign, doseWords, BETWEEN_SESSIONS, sideText, COLUMN_WORDS } from './phrases/dose.ts';
import { altText, ANGLE_LEGEND, captionText, captionWithDegrees, showsAngle } from './phrases/figures.ts';
import { painfulSide, type Person } from './person.ts';
import type { Prescription } from './prescribe.ts';
import type { Cell, CellName, Exercise } from './programme.ts';

/** Facts that stand beside the big dose; how far stands with the picture. */
const FACTS: readonly CellName[] = ['loadKg', 'tempo', 'restSeconds', 'reserve', 'timesPerDay', 'days'];

/** In the order of the session; one entry for each prescription. */
export function exercisesOf(prescriptions: readonly Prescription[], { consult }: Person): Exercise[] {
  const explained = prescriptions.find(({ picture }) => picture !== null && showsAngle(picture.scene));
  return prescriptions.map((prescription) => {
    const { card, exercise, at, cells, howFar, picture } = prescription;
    const side = sideText(card.legs, card.legs === 'together' ? 'both' : painfulSide(consult));
    return {
      card: card.id,
      title: card.title,
      slot: exercise.slot.name,
      side,
      between:
        exercise.slot.when === 'between' ? { label: BETWEEN_SESSIONS, text: textOf(cells, 'days') } : null,
      dose: doseSign(at.dose),
      doseWords: doseWords(at.dose, countedAs(card)),
      figures:
        picture === null
          ? null
          : {
              scene: picture.scene,
              captions: picture.scene.frames.map(captionText),
              captionsWithDegrees: picture.scene.frames.map(captionWithDegrees),
              legend: prescription === explained ? ANGLE_LEGEND : null,
              alt: altText(card.title, side, picture.scene),
            },
      howFar,
      facts: FACTS.flatMap((name) => {
        const text = textOf(cells, name);
        return text === '' ? [] : [{ label: COLUMN_WORDS[name], text, cell: name }];
      }),
      body: card.body,
      cautions: card.cautions,
      cells,
    };
  });
}

function textOf(cells: readonly Cell[], name: CellName): string {
  return cells.find(({ cell }) => cell === name)?.text ?? '';
}
